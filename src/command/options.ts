/** All options, in the form that Node's `parseArgs` takes. */
export const OPTIONS = {
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
  units: { type: 'string' },
  json: { type: 'boolean' },
  why: { type: 'boolean' },
  readings: { type: 'string' },
  'old-readings': { type: 'string' },
  html: { type: 'string' },
  boxes: { type: 'string' },
  'build-sheet': { type: 'boolean' },
  markdown: { type: 'boolean' },
  'at-most': { type: 'string' },
  'no-buying': { type: 'boolean' },
  'most-per-engine': { type: 'string' },
  reserve: { type: 'string' },
  'must-build': { type: 'string' },
  'holds-with': { type: 'string' },
  chances: { type: 'boolean' },
  'time-limit': { type: 'string' },
  name: { type: 'string' },
  cylinders: { type: 'string' },
  mains: { type: 'string' },
  'rod-journal': { type: 'string' },
  'main-journal': { type: 'string' },
  bore: { type: 'string' },
  lubrication: { type: 'string' },
  cores: { type: 'string' },
  csv: { type: 'boolean' },
  output: { type: 'string' },
  force: { type: 'boolean' },
} as const;

/** The name of an option, without its dashes. */
export type OptionName = keyof typeof OPTIONS;

/** The options of each command; every command also takes help and version. */
export const TAKES = {
  report: ['units', 'json', 'why', 'readings', 'html', 'force'],
  plan: [
    'units',
    'json',
    'why',
    'readings',
    'html',
    'force',
    'build-sheet',
    'boxes',
    'markdown',
    'at-most',
    'no-buying',
    'most-per-engine',
    'reserve',
    'must-build',
    'holds-with',
    'chances',
    'time-limit',
  ],
  done: ['readings', 'output', 'force'],
  diff: ['units', 'json', 'readings', 'old-readings'],
  schema: [],
  new: [
    'name',
    'units',
    'cylinders',
    'mains',
    'rod-journal',
    'main-journal',
    'bore',
    'lubrication',
    'cores',
    'csv',
    'output',
    'force',
  ],
} as const satisfies Record<string, readonly OptionName[]>;

/** Options that can be repeated. */
export const REPEATED: readonly OptionName[] = ['reserve', 'must-build'];

/** Pairs of options that cannot be combined. */
export const APART: readonly (readonly [OptionName, OptionName])[] = [
  ['json', 'units'],
  ['json', 'build-sheet'],
  ['json', 'why'],
  ['json', 'boxes'],
  ['json', 'chances'],
  ['build-sheet', 'chances'],
  ['boxes', 'chances'],
  ['build-sheet', 'boxes'],
  ['why', 'boxes'],
  ['why', 'build-sheet'],
  ['html', 'json'],
  ['html', 'build-sheet'],
  ['html', 'boxes'],
  ['html', 'chances'],
];
