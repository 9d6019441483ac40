import commonjs from '@rollup/plugin-commonjs';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import * as esbuild from 'esbuild';
import { type RollupLog, rollup } from 'rollup';
import * as vite from 'vite';
import webpack from 'webpack';

/** What a bundler makes of an entry file, put into a folder, and what it warned of. */
type Bundler = (project: string, entry: string, out: string) => Promise<readonly string[]>;

/** As each comes: no option but what is bundled, for a browser, as modules, and where to. */
export const bundlers: Readonly<Record<string, Bundler>> = {
  async esbuild(_, entry, out) {
    const { warnings } = await esbuild.build({
      entryPoints: [entry],
      outdir: out,
      bundle: true,
      format: 'esm',
      platform: 'browser',
      logLevel: 'silent',
    });
    return warnings.map(({ text }) => text);
  },
  async rollup(_, entry, out) {
    const warnings: string[] = [];
    // What other packages write in their own files is not ours to mend.
    const theirs = ['CIRCULAR_DEPENDENCY', 'INVALID_ANNOTATION'];
    const onLog = (_level: string, { code = '', message }: RollupLog) => {
      if (!theirs.includes(code) || message.includes('crankwright')) warnings.push(message);
    };
    const plugins = [nodeResolve({ browser: true }), commonjs()];
    const bundle = await rollup({ input: entry, plugins, onLog });
    await bundle.write({ dir: out, format: 'esm' });
    return warnings;
  },
  async vite(project, entry, out) {
    const warnings: string[] = [];
    const warn = (message: string) => warnings.push(message);
    const customLogger = { ...vite.createLogger('warn'), warn, warnOnce: warn };
    await vite.build({
      root: project,
      configFile: false,
      logLevel: 'warn',
      customLogger,
      build: {
        outDir: out,
        emptyOutDir: true,
        lib: { entry, formats: ['es'] },
        chunkSizeWarningLimit: 10_000,
      },
    });
    return warnings;
  },
  webpack: (project, entry, out) =>
    new Promise((resolve, reject) => {
      const settings: webpack.Configuration = {
        context: project,
        mode: 'production',
        target: 'web',
        entry,
        output: { path: out, library: { type: 'module' } },
        experiments: { outputModule: true },
        performance: false,
        optimization: { minimize: false },
      };
      webpack(settings, (failure, stats) => {
        const { errors = [], warnings = [] } = stats?.toJson() ?? {};
        if (failure || errors.length > 0) reject(failure ?? new Error(errors[0]?.message));
        else resolve(warnings.map(({ message }) => message));
      });
    }),
};
