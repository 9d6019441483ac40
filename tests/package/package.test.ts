import { readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { build } from 'esbuild';
import { publint } from 'publint';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Packed, pack, run, tsc, write } from './packed.js';

const script = `
const clearance = oilClearance({
  housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125),
});
console.log(format(clearance, thou), convert(2.1248, 'in', 'mm'));
const sheet = readSheet({ version: 1, engine: 'pump set', units: 'inch' });
console.log(report(inspect(sheet)).split('\\n')[0]);
console.log(evaluateCard('dripFlow', { n: 0.2, V_d: 5e-8 }));
`;
const printed = '2.0 thou 53.96992\nINSPECTION: pump set\n1e-8\n';

describe('the packed tarball', () => {
  let packed: Packed;
  beforeAll(() => {
    packed = pack();
  }, 120_000);

  it('holds the build, the licence, the readme and the changelog, and nothing else', () => {
    expect(readdirSync(packed.packageDir).sort()).toEqual([
      'CHANGELOG.md',
      'LICENSE',
      'README.md',
      'dist',
      'docs',
      'examples',
      'package.json',
    ]);
    const files = readdirSync(`${packed.packageDir}/dist`);
    expect(files.filter((file) => !/\.(js|cjs|d\.ts|d\.cts)$/.test(file))).toEqual([]);
    expect(files.length).toBeLessThan(24);
  });

  it('satisfies publint', async () => {
    const { messages } = await publint({ pkgDir: packed.packageDir, strict: true });
    expect(messages).toEqual([]);
  });

  it('has types that are right for every way it is resolved', async () => {
    const analysis = await checkPackage(createPackageFromTarballData(packed.tarball));
    if (!analysis.types) throw new Error('no types were found');
    // Resolution of Node 10 knows no subpaths; the package asks for Node 20.
    const problems = analysis.problems.filter(
      (problem) => !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
    );
    expect(problems).toEqual([]);
  });

  it('runs from ESM', () => {
    const file = write(
      packed.project,
      'use.mjs',
      `import { convert, format, inch, oilClearance, thou } from 'crankwright';
       import { inspect, readSheet, report } from 'crankwright/shelf';
       import { evaluateCard } from 'crankwright/teaching';${script}`,
    );
    expect(run('node', [file], packed.project)).toBe(printed);
  });

  it('runs from CJS, without require of ESM', () => {
    const file = write(
      packed.project,
      'use.cjs',
      `const { convert, format, inch, oilClearance, thou } = require('crankwright');
       const { inspect, readSheet, report } = require('crankwright/shelf');
       const { evaluateCard } = require('crankwright/teaching');${script}`,
    );
    const args = ['--no-experimental-require-module', file];
    expect(run('node', args, packed.project)).toBe(printed);
  });

  it.each(['nodenext', 'bundler'])('compiles in a strict TypeScript project (%s)', (resolution) => {
    write(packed.project, 'package.json', '{ "type": "module" }');
    write(
      packed.project,
      'use.ts',
      `import { convert, inch, newtonMetre, oilClearance, type Length } from 'crankwright';
       import { inspect, readSheet } from 'crankwright/shelf';
       import { cards } from 'crankwright/teaching';
       const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
       export const clearance: Length = oilClearance(sizes);
       export const smallest: Length | undefined = inspect(readSheet('{}')).rods?.bearings[0]?.shape.smallest;
       export const source: string = cards.oilClearance.source;
       // @ts-expect-error a torque is not a length
       oilClearance({ ...sizes, journal: newtonMetre(20) });
       // @ts-expect-error inches are no kilograms
       convert(1, 'in', 'kg');
       // @ts-expect-error a bare number has no unit
       oilClearance({ ...sizes, journal: 2.125 });
      `,
    );
    const compilerOptions = {
      strict: true,
      noUncheckedIndexedAccess: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      target: 'es2022',
      module: resolution === 'nodenext' ? 'nodenext' : 'esnext',
      moduleResolution: resolution,
      types: [],
    };
    write(packed.project, 'tsconfig.json', JSON.stringify({ compilerOptions, files: ['use.ts'] }));
    run('node', [tsc, '-p', '.'], packed.project);
  });

  it('gives a browser oilClearance alone in at most 1.5 kB', async () => {
    const stdin = {
      contents: `export { oilClearance } from 'crankwright'`,
      resolveDir: packed.project,
    };
    const options = { bundle: true, minify: true, write: false, format: 'esm' } as const;
    const { outputFiles } = await build({ ...options, stdin, platform: 'browser' });
    expect(gzipSync(outputFiles[0]?.contents ?? '').length).toBeLessThanOrEqual(1500);
  });

  it('bundles the core for a browser without Node or any dependency', async () => {
    const stdin = { contents: `export * from 'crankwright'`, resolveDir: packed.project };
    const options = { bundle: true, write: false, format: 'esm', metafile: true } as const;
    const { metafile } = await build({ ...options, stdin, platform: 'browser' });
    const outside = Object.keys(metafile.inputs).filter((path) => !/crankwright|stdin/.test(path));
    expect(outside).toEqual([]);
  });
});
