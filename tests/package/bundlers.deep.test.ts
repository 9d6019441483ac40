import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { beforeAll, describe, expect, inject, it } from 'vitest';
import { bundlers } from './bundlers.js';
import { compiles } from './compiles.js';
import { type Packed, pack, putBeside } from './packed.js';
import { bundlesWhole } from './whole-bundle.js';

describe.runIf(inject('deep'))('the packed tarball', () => {
  let packed: Packed;
  beforeAll(() => {
    packed = pack();
  }, 300_000);

  it.each(['rollup', 'vite', 'webpack'] as const)(
    'bundles whole for a browser: %s',
    (name) => bundlesWhole(packed, bundlers[name]),
    120_000,
  );

  it.each(['bundler', 'nodenext'] as const)(
    'compiles in a strict TypeScript project that has no convert-units (%s)',
    (resolution) => compiles(packed, resolution),
    120_000,
  );

  it('compiles beside convert-units (nodenext)', () => {
    putBeside(packed.project, 'convert-units');
    const code = `import configureMeasurements from 'convert-units';
      import type { UnitSymbol } from 'crankwright';
      import { exactMeasures } from 'crankwright/convert-units';
      const convert = configureMeasurements(exactMeasures);
      export const units: readonly UnitSymbol[] = convert().possibilities();`;
    compiles(packed, 'nodenext', { 'measures.mts': code, 'measures.cts': code });
  }, 120_000);

  it('has types that are right for every way it is resolved', async () => {
    const analysis = await checkPackage(createPackageFromTarballData(packed.tarball));
    if (!analysis.types) throw new Error('no types were found');
    // Resolution of Node 10 knows no subpaths; the package asks for Node 20.
    const problems = analysis.problems.filter(
      (problem) => !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
    );
    expect(problems).toEqual([]);
  }, 120_000);
});
