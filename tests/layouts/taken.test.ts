import { RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { pathsIn, replaced, showPath } from '../fuzz/hostile.js';
import { registry } from '../fuzz/registry.js';

/** Functions that take what another function made, and what they call it. */
const TAKEN: Readonly<Record<string, string>> = {
  actionsFrom: 'inspection',
  afterMachining: 'shed',
  buildBoxes: 'plan',
  buildSheet: 'plan',
  chancesReport: 'chances',
  check: 'problem',
  clearancesOf: 'inspection',
  describeAction: 'action',
  describeBorePlan: 'plan',
  describeClearance: 'explanation',
  describeCompressionRatio: 'compression',
  describeGrindPlan: 'plan',
  describePart: 'part',
  describePlanDifference: 'difference',
  describeShedDifference: 'difference',
  describeStandDown: 'standDown',
  describeTighteningPlan: 'plan',
  describeTimingCard: 'card',
  describeTorqueSetting: 'setting',
  diffPlans: 'older',
  diffSheds: 'older',
  engineChances: 'shed',
  inspect: 'sheet',
  measureFirstPicture: 'plan',
  planBuilds: 'shed',
  planPage: 'plan',
  planPicture: 'plan',
  planReport: 'plan',
  printWorksheet: 'sheet',
  report: 'inspection',
  reportPage: 'sheet',
  solution: 'problem',
  triage: 'shed',
  triagePage: 'triage',
  triageReport: 'triage',
  workedMarkdown: 'working',
  workedMathml: 'working',
  workedText: 'working',
  writeShed: 'shed',
};
const calls = Object.entries(TAKEN).flatMap(([name, parameter]) =>
  (registry[name]?.sound ?? []).map((args, i) => ({ name, parameter, i, args })),
);
const runOf = (name: string) => registry[name]?.run as (args: readonly unknown[]) => unknown;

it('is told of every function that takes what another made', () => {
  const made = Object.entries(registry).filter(([, { madeBy }]) => madeBy !== undefined);
  expect(made.map(([name]) => name).sort()).toEqual(Object.keys(TAKEN));
});

describe.each(calls)('$name, call $i', ({ name, parameter, args }) => {
  const run = runOf(name);
  const [made, ...others] = args;

  it('gives the same for what has been through JSON', async () => {
    const again = JSON.parse(JSON.stringify(made));
    expect(await run([again, ...others])).toEqual(await run(args));
  });

  it.each<[what: string, value: unknown, refused: string]>([
    ['nothing', undefined, parameter],
    ['text', 'made', parameter],
    ['a list', [made], parameter],
    ['a field too many', { ...(made as object), stranger: 1 }, `${parameter}.stranger`],
  ])('refuses %s by its name', async (_, value, refused) => {
    const error = await refusal(run, [value, ...others]);
    expect(error.parameter).toBe(refused);
  });

  it('refuses a number, word or text of the wrong kind, at its whole path', async () => {
    // One path of each form, whatever its indices: rods.bearings[].findings[].value.
    const leaves = new Map(
      pathsIn(made)
        .filter((path) => isLeaf(path.reduce<unknown>(inner, made)))
        .map((path) => [showPath(path).replace(/\[\d+\]/g, '[]'), path]),
    );
    expect(leaves.size).toBeGreaterThan(1);
    for (const path of leaves.values()) {
      const error = await refusal(run, [replaced(made, path, Number.NaN), ...others]);
      expect(error.parameter).toBe(`${parameter}${showPath(path)}`);
    }
  });
});

const isLeaf = (value: unknown): boolean => typeof value !== 'object';
const inner = (value: unknown, key: string | number): unknown =>
  (value as Record<string | number, unknown>)[key];

async function refusal(
  run: (args: readonly unknown[]) => unknown,
  args: readonly unknown[],
): Promise<RebuildInputError> {
  try {
    await run(args);
  } catch (error) {
    if (error instanceof RebuildInputError) return error;
    throw error;
  }
  throw new Error('It is taken.');
}
