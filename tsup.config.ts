import { rmSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { HEAVY, LIGHT } from './scripts/entries.js';

rmSync('dist', { recursive: true, force: true });

const entryOf = (rooms: readonly string[]) =>
  Object.fromEntries(rooms.map((room) => [room, `src/${room}/index.ts`]));

export default defineConfig([
  {
    entry: { index: 'src/index.ts', core: 'src/core.ts', ...entryOf(HEAVY) },
    format: ['esm', 'cjs'],
    dts: { entry: { index: 'src/index.ts', ...entryOf([...LIGHT, ...HEAVY]) } },
    target: 'node20',
    platform: 'neutral',
    splitting: true,
    treeshake: false,
  },
  {
    entry: { crankwright: 'src/command/main.ts' },
    format: ['esm'],
    target: 'node20',
    platform: 'node',
    splitting: false,
  },
]);
