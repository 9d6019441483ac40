import { beforeAll, describe, inject, it } from 'vitest';
import { bundlers } from './bundlers.js';
import { compiles } from './compiles.js';
import { type Packed, pack } from './packed.js';
import { bundlesWhole } from './whole-bundle.js';

// `npm test` tries esbuild and one way to resolve, in `package.test.ts`; what is left takes long and seldom changes.
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
});
