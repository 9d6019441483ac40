import { readFileSync } from 'node:fs';

/** The rooms of `src/core.ts`. */
export const LIGHT: readonly string[] = [
  ...readFileSync(new URL('../src/core.ts', import.meta.url), 'utf8').matchAll(
    /'\.\/([\w-]+)\/index\.js'/g,
  ),
].map(([, room = '']) => room);

/** Rooms with an entry point that is built by itself. */
export const HEAVY: readonly string[] = [
  'bearings',
  'sheet',
  'shed',
  'planning',
  'build-sheet',
  'teaching',
  'convert-units',
];
