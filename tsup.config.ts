import { rmSync } from 'node:fs';
import { defineConfig, type Options } from 'tsup';
import { licences, oneFileOfMathjs, piecesOfCommand } from './scripts/third-party.js';

/** Entry points of the core: each is one file, whole, since a program that starts waits for every file. */
const CORE = [
  'quantities',
  'judging',
  'measuring',
  'crankshaft',
  'bearings',
  'cylinders',
  'fits',
  'oil',
  'motion',
  'valves',
  'fasteners',
  'timing',
  'convert-units',
] as const;
/** Entry points above the core, which share what they have in common. */
const ABOVE = ['sheet', 'shed', 'planning', 'build-sheet', 'plots', 'teaching', 'mathjs'] as const;

rmSync('dist', { recursive: true, force: true });

const entryOf = (rooms: readonly string[]) =>
  Object.fromEntries(rooms.map((room) => [room, `src/${room}/index.ts`]));
const typesOf = (rooms: readonly string[]) =>
  Object.fromEntries([
    ['index', '.types/index.d.ts'],
    ...rooms.map((room) => [room, `.types/${room}/index.d.ts`] as const),
  ]);
const library: Options = {
  format: ['esm', 'cjs'],
  target: 'node20',
  platform: 'neutral',
  treeshake: false,
  esbuildOptions: (options) => {
    options.mainFields = ['module', 'main'];
  },
  esbuildPlugins: [oneFileOfMathjs, licences],
};

const command: Options = {
  format: ['esm'],
  target: 'node20',
  platform: 'node',
  esbuildPlugins: [oneFileOfMathjs, piecesOfCommand, licences],
};

export default defineConfig([
  { ...library, entry: { index: 'src/index.ts', ...entryOf(CORE) }, splitting: false },
  { ...library, entry: entryOf(ABOVE), splitting: true },
  {
    ...library,
    // `tsc` writes the types of every file first, which takes it a third of the time it takes here; they are only put
    // together. Those of `require` are written from these by `scripts/types-of-require.ts`.
    entry: typesOf([...CORE, ...ABOVE]),
    format: ['esm'],
    dts: { only: true },
  },
  {
    entry: { 'bundled-mathjs': 'scripts/mathjs-entry.ts' },
    format: ['esm', 'cjs'],
    target: 'node20',
    platform: 'browser',
    splitting: false,
    minify: true,
    esbuildPlugins: [licences],
  },
  // The command stands in pieces, so that a calculation loads no planner, and a plan no mathjs.
  { ...command, entry: { crankwright: 'src/command/main.ts' }, splitting: false },
  { ...command, entry: { 'command-files': 'src/command/run-on-files.ts' }, splitting: false },
  { ...command, entry: { 'command-worksheet': 'src/command/worksheet.ts' }, splitting: false },
  { ...command, entry: { 'command-calc': 'src/command/calc.ts' }, splitting: false },
  {
    ...command,
    entry: {
      'command-session': 'src/command/run-session.ts',
      'command-repl': 'src/command/prompt/repl.ts',
    },
    splitting: true,
  },
]);
