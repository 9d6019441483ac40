import type { RollupLog } from 'rollup';
import type { Configuration } from 'webpack';

/** What a bundler makes of an entry file, put into a folder, and what it warned of. */
export type Bundler = (project: string, entry: string, out: string) => Promise<readonly string[]>;

/** As each comes: no option but what is bundled, for a browser, as modules, and where to. Each is loaded when used. */
export const bundlers: Readonly<Record<'esbuild' | 'rollup' | 'vite' | 'webpack', Bundler>> = {
  async esbuild(_, entry, out) {
    const { build } = await import('esbuild');
    const { warnings } = await build({
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
    const { rollup } = await import('rollup');
    const { nodeResolve } = await import('@rollup/plugin-node-resolve');
    const { default: commonjs } = await import('@rollup/plugin-commonjs');
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
    const vite = await import('vite');
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
  async webpack(project, entry, out) {
    const { default: webpack } = await import('webpack');
    return new Promise((resolve, reject) => {
      const settings: Configuration = {
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
    });
  },
};
