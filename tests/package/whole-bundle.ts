import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Bundler } from './bundlers.js';
import { type Packed, run, write } from './packed.js';

/** Bundles every entry point together, and runs the bundle where no package can be found. */
export async function bundlesWhole(packed: Packed, bundle: Bundler): Promise<void> {
  const { exports } = JSON.parse(readFileSync(`${packed.packageDir}/package.json`, 'utf8'));
  const names = Object.keys(exports).filter((name) => !name.endsWith('.json'));
  const lines = names.map((name, i) => `export * as e${i} from 'crankwright${name.slice(1)}';`);
  const entry = write(packed.project, 'every-entry.mjs', lines.join('\n'));
  const alone = mkdtempSync(join(tmpdir(), 'bundle-'));
  expect(await bundle(packed.project, entry, alone)).toEqual([]);
  // All of it loads but the solver, which a page gives.
  const main = readdirSync(alone).find((file) => /^(?:every-entry|main)\.m?js$/.test(file));
  const highs = new URL('../../node_modules/highs/build/highs.mjs', import.meta.url).href;
  const example = (name: string) =>
    readFileSync(`${packed.packageDir}/examples/pump-set-shed${name}`, 'utf8');
  write(alone, 'package.json', '{ "type": "module" }');
  const script = write(
    alone,
    'run.js',
    `const { format, inch, oilClearance, planBuilds, readShed, thou } = Object.assign(
       {}, ...Object.values(await import('./${main}')));
     const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
     console.log(format(oilClearance(sizes), thou));
     const shed = readShed(${example('.json')}, ${JSON.stringify(example('-readings.csv'))});
     await planBuilds(shed).catch(({ name }) => console.log(name));
     const { default: start } = await import('${highs}');
     console.log((await planBuilds(shed, { solver: await start() })).builds.length);`,
  );
  expect(run('node', [script], alone)).toBe('2.0 thou\nSolverNotLoaded\n2\n');
}
