import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { build } from 'esbuild';
import { publint } from 'publint';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundlers } from './bundlers.js';
import { compiles } from './compiles.js';
import { type Packed, pack, putBeside, run, write } from './packed.js';
import { bundlesWhole } from './whole-bundle.js';

const script = `
const clearance = oilClearance({
  housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125),
});
console.log(format(clearance, thou), convert(2.1248, 'in', 'mm'));
const sheet = readSheet({ version: 1, engine: 'pump set', units: 'inch' });
console.log(report(inspect(sheet)).split('\\n')[0]);
console.log(evaluateCard('dripFlow', { n: 12, t: 60, V_d: 5e-8 }));
const text = (name) => readFileSync('node_modules/crankwright/examples/' + name, 'utf8');
const shed = readShed(text('pump-set-shed.json'), text('pump-set-shed-readings.csv'));
planBuilds(shed).then(({ builds, proof }) => console.log(builds.length, proof.outcome));
`;
const printed = '2.0 thou 53.96992\nINSPECTION: pump set\n1e-8\n2 optimal\n';

describe('the packed tarball', () => {
  let packed: Packed;
  beforeAll(() => {
    packed = pack();
  }, 300_000);

  const textOf = (file: string) => readFileSync(`${packed.packageDir}/dist/${file}`, 'utf8');
  /** The files that an entry point loads, itself included. */
  const filesBehind = (entry: string): readonly string[] => {
    const met = new Set<string>([entry]);
    for (const file of met) {
      for (const [, path = ''] of textOf(file).matchAll(
        /(?:from|^import) ["']\.\/([^"']+)["']/gm,
      )) {
        met.add(path);
      }
    }
    return [...met];
  };

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
    expect(files.filter((file) => !/\.(js|cjs|d\.ts|d\.cts)$/.test(file)).sort()).toEqual([
      'shed.schema.json',
      'sheet.schema.json',
      'third-party-licences.txt',
      'work.schema.json',
    ]);
    // A barrel of hundreds starts ten times slower: the core is one file, what stands above it a few.
    expect(filesBehind('index.js')).toEqual(['index.js']);
    expect(filesBehind('oil.js')).toEqual(['oil.js']);
    expect(filesBehind('planning.js').length).toBeLessThan(8);
  });

  it('leads from its readme, guides and lessons to nothing that is not in it', () => {
    const texts = readdirSync(packed.packageDir, { recursive: true, encoding: 'utf8' }).filter(
      (name) => name.endsWith('.md') && !name.startsWith('dist'),
    );
    expect(texts).toContain('docs/lessons/one-crankshaft.md');
    const astray = texts.flatMap((name) => {
      const text = readFileSync(join(packed.packageDir, name), 'utf8');
      return [...text.matchAll(/\]\((?![a-z]+:|#)([^)#\s]+)/g)]
        .map(([, path = '']) => join(dirname(name), path))
        .filter((path) => !existsSync(join(packed.packageDir, path)))
        .map((path) => `${name} leads to ${path}`);
    });
    expect(astray).toEqual([]);
  });

  it('gives one room without the maps of the film, which are large', () => {
    const mapsIn = (entry: string) =>
      filesBehind(entry).filter((file) => /(film|mobility)MapData = /i.test(textOf(file)));
    expect(mapsIn('bearings.js')).toHaveLength(1);
    const rooms = [
      'quantities',
      'crankshaft',
      'cylinders',
      'motion',
      'oil',
      'valves',
      'fits',
      'fasteners',
      'timing',
    ];
    for (const room of rooms) {
      expect(mapsIn(`${room}.js`), room).toEqual([]);
    }
  });

  it('gives the same from every entry point, imported or required', () => {
    const { exports } = JSON.parse(readFileSync(`${packed.packageDir}/package.json`, 'utf8'));
    const names = Object.keys(exports).filter((name) => !name.endsWith('.json'));
    expect(names.length).toBeGreaterThan(13);
    const file = write(
      packed.project,
      'every.mjs',
      `import { createRequire } from 'node:module';
       const require = createRequire(import.meta.url);
       for (const name of ${JSON.stringify(names)}) {
         const path = 'crankwright' + name.slice(1);
         const [imported, required] = [await import(path), require(path)];
         if (String(Object.keys(imported).sort()) !== String(Object.keys(required).sort())) throw path;
         if (Object.values(imported).includes(undefined)) throw path;
       }
       // Each entry point holds its own copy of what it needs, and they work together.
       const { RebuildInputError, format, mm } = await import('crankwright');
       const refusal = (run) => { try { run(); } catch (error) { return error; } };
       const [{ pistonClearance }, { FileError, readShed }, { oilClearance }] = [
         await import('crankwright/cylinders'), await import('crankwright/shed'), require('crankwright'),
       ];
       const errors = [pistonClearance, readShed, oilClearance].map((run) => refusal(() => run({})));
       console.log(errors.map((error) => error instanceof RebuildInputError));
       console.log(errors.map((error) => error instanceof FileError));
       console.log(new RangeError() instanceof RebuildInputError, undefined instanceof RebuildInputError);
       console.log(format(require('crankwright/quantities').mm(2), mm), (await import('crankwright/sheet')).FileError === FileError);`,
    );
    expect(run('node', [file], packed.project)).toBe(
      '[ true, true, true ]\n[ false, true, false ]\nfalse false\n2.000 mm true\n',
    );
  });

  it('satisfies publint', async () => {
    const { messages } = await publint({ pkgDir: packed.packageDir, strict: true });
    expect(messages).toEqual([]);
  });

  it('runs from ESM', () => {
    const file = write(
      packed.project,
      'use.mjs',
      `import { readFileSync } from 'node:fs';
       import { convert, format, inch, oilClearance, thou } from 'crankwright';
       import { planBuilds } from 'crankwright/planning';
       import { readShed } from 'crankwright/shed';
       import { inspect, readSheet, report } from 'crankwright/sheet';
       import { evaluateCard } from 'crankwright/teaching';${script}`,
    );
    expect(run('node', [file], packed.project)).toBe(printed);
  });

  it('runs from CJS, without require of ESM', () => {
    const file = write(
      packed.project,
      'use.cjs',
      `const { readFileSync } = require('node:fs');
       const { convert, format, inch, oilClearance, thou } = require('crankwright');
       const { planBuilds } = require('crankwright/planning');
       const { readShed } = require('crankwright/shed');
       const { inspect, readSheet, report } = require('crankwright/sheet');
       const { evaluateCard } = require('crankwright/teaching');${script}`,
    );
    const args = ['--no-experimental-require-module', file];
    expect(run('node', args, packed.project)).toBe(printed);
  });

  it('ships the licence of all that is bundled, and asks nobody to install mathjs', () => {
    const licences = textOf('third-party-licences.txt');
    for (const name of ['mathjs', 'decimal.js', 'complex.js', 'fraction.js', 'typed-function']) {
      expect(licences).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(`, 'm'));
    }
    expect(licences).toContain('Apache License');
    const { dependencies } = JSON.parse(readFileSync(`${packed.packageDir}/package.json`, 'utf8'));
    expect(Object.keys(dependencies)).not.toContain('mathjs');
  });

  it('works out sizes, with mathjs and without', () => {
    const file = `${packed.packageDir}/dist/crankwright.js`;
    expect(run('node', [file, 'calc', '2-1/8 in to mm'], packed.project)).toBe('53.975 mm\n');
    expect(run('node', [file, 'calc', '2 in * 3 + 1 mm'], packed.project)).toBe('6.0394 in\n');
    expect(() => run('node', [file, 'calc', '2 in + 3 s'], packed.project)).toThrow('one kind');
  });

  it('brings the command, which ends with its exit code', () => {
    const { bin } = JSON.parse(readFileSync(`${packed.packageDir}/package.json`, 'utf8'));
    const file = `${packed.packageDir}/${bin.crankwright}`;
    expect(readFileSync(file, 'utf8').split('\n')[0]).toBe('#!/usr/bin/env node');
    const shed = `${packed.packageDir}/examples/pump-set-shed`;
    const words = [`${shed}.json`, '--readings', `${shed}-readings.csv`];
    expect(run('node', [file, 'plan', ...words], packed.project)).toContain(
      '2 complete engines can be built',
    );
    expect(run('node', [file, 'schema', 'shed'], packed.project)).toBe(
      readFileSync(`${packed.packageDir}/dist/shed.schema.json`, 'utf8'),
    );
    expect(() => run('node', [file, 'report', 'nowhere.json'], packed.project)).toThrow(
      'nowhere.json',
    );
  });

  it('gives its measures without convert-units, and asks for no version of it', () => {
    const { peerDependencies } = JSON.parse(
      readFileSync(`${packed.packageDir}/package.json`, 'utf8'),
    );
    // npm would refuse crankwright beside convert-units 2, even to those who use only the core.
    expect(Object.keys(peerDependencies ?? {})).not.toContain('convert-units');
    const inches = `console.log(exactMeasures.length.systems.imperial.in.to_anchor);`;
    const file = write(
      packed.project,
      'measures.mjs',
      `import { exactMeasures } from 'crankwright/convert-units';${inches}`,
    );
    expect(run('node', [file], packed.project)).toBe('127000000\n');
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

  it.each(['esbuild', 'rollup', 'vite', 'webpack'] as const)(
    'bundles whole for a browser: %s',
    (name) => bundlesWhole(packed, bundlers[name]),
    120_000,
  );

  it.each(['bundler', 'nodenext'] as const)(
    'compiles in a strict TypeScript project that has no convert-units (%s)',
    (resolution) => compiles(packed, resolution),
    120_000,
  );

  it('has types that are right for every way it is resolved', async () => {
    const analysis = await checkPackage(createPackageFromTarballData(packed.tarball));
    if (!analysis.types) throw new Error('no types were found');
    // Resolution of Node 10 knows no subpaths; the package asks for Node 20.
    const problems = analysis.problems.filter(
      (problem) => !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
    );
    expect(problems).toEqual([]);
  }, 120_000);

  describe('beside convert-units', () => {
    beforeAll(() => putBeside(packed.project, 'convert-units'));

    it('serves it from ESM and CJS', () => {
      const use = `const convert = configureMeasurements(exactMeasures);
         console.log(convert(2.1248).from('in').to('mm'));`;
      const esm = write(
        packed.project,
        'convert-units.mjs',
        `import configureMeasurements from 'convert-units';
         import { exactMeasures } from 'crankwright/convert-units';${use}`,
      );
      const cjs = write(
        packed.project,
        'convert-units.cjs',
        `const { default: configureMeasurements } = require('convert-units');
         const { exactMeasures } = require('crankwright/convert-units');${use}`,
      );
      expect(run('node', [esm], packed.project)).toBe('53.96992\n');
      const args = ['--no-experimental-require-module', cjs];
      expect(run('node', args, packed.project)).toBe('53.96992\n');
    });

    it('compiles (nodenext)', () => {
      const code = `import configureMeasurements from 'convert-units';
        import type { UnitSymbol } from 'crankwright';
        import { exactMeasures } from 'crankwright/convert-units';
        const convert = configureMeasurements(exactMeasures);
        export const units: readonly UnitSymbol[] = convert().possibilities();`;
      compiles(packed, 'nodenext', { 'measures.mts': code, 'measures.cts': code });
    }, 120_000);
  });
});
