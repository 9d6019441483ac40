/** Every option, as `parseArgs` of Node takes them. */
export const OPTIONS = {
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
  units: { type: 'string' },
  json: { type: 'boolean' },
  readings: { type: 'string' },
  'build-sheet': { type: 'boolean' },
  markdown: { type: 'boolean' },
  'at-most': { type: 'string' },
  'no-buying': { type: 'boolean' },
  'most-per-engine': { type: 'string' },
  reserve: { type: 'string' },
  'must-build': { type: 'string' },
  'time-limit': { type: 'string' },
} as const;

/** The name of an option, without its dashes. */
export type OptionName = keyof typeof OPTIONS;

/** What each command takes besides its operand; help and version are taken everywhere. */
export const TAKES = {
  report: ['units', 'json', 'readings'],
  plan: [
    'units',
    'json',
    'readings',
    'build-sheet',
    'markdown',
    'at-most',
    'no-buying',
    'most-per-engine',
    'reserve',
    'must-build',
    'time-limit',
  ],
  schema: [],
} as const satisfies Record<string, readonly OptionName[]>;

/** Options that may be given more than once. */
export const REPEATED: readonly OptionName[] = ['reserve', 'must-build'];

/** Options that say how the output looks and do not go together. */
export const APART: readonly (readonly [OptionName, OptionName])[] = [
  ['json', 'units'],
  ['json', 'build-sheet'],
];
