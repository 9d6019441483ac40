import { guardFields, guardList, guardText } from '../judging/internal.js';
import { capital } from '../pages/index.js';
import { RebuildInputError } from '../quantities/index.js';
import { didYouMean } from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { SECTIONS } from '../shed/internal.js';
import { guardHoldsWith } from './guard-holds-with.js';
import { guardMustBuild } from './guard-must-build.js';
import { currencyOf, inThousandths } from './money.js';
import type { PlanOptions } from './plan-options.js';

const FIELDS = [
  'atMost',
  'buying',
  'mostPerEngine',
  'reserved',
  'mustBuild',
  'holdsWith',
  'timeLimit',
  'onProgress',
  'solver',
] as const;

/** Checked options with their defaults. */
export type PlanRequest = ReturnType<typeof guardPlanOptions>;

/** Checks the options of a plan against its shed. */
export function guardPlanOptions(shed: Shed, options: PlanOptions) {
  guardFields('options', options, FIELDS);
  const {
    atMost,
    buying = true,
    mostPerEngine,
    holdsWith,
    timeLimit,
    onProgress,
    solver,
  } = options;
  if (atMost !== undefined) guardCount('options.atMost', atMost);
  guardBoolean('options.buying', buying);
  if (timeLimit !== undefined) guardTime('options.timeLimit', timeLimit);
  const reserved = namesOf(shed, 'options.reserved', options.reserved, SECTIONS);
  const mustBuild = namesOf(shed, 'options.mustBuild', options.mustBuild, ['blocks']);
  guardMustBuild(shed, mustBuild, reserved);
  return {
    reserved,
    mustBuild,
    buying,
    ...(atMost !== undefined && { atMost }),
    ...(mostPerEngine !== undefined && { mostPerEngine: guardCap(shed, mostPerEngine) }),
    ...(holdsWith !== undefined && { holdsWith: guardHoldsWith(shed, holdsWith) }),
    ...(timeLimit !== undefined && { timeLimit }),
    ...(onProgress !== undefined && { onProgress: guardCallback(onProgress) }),
    ...(solver !== undefined && { solver: guardSolver(solver) }),
  };
}

function guardCount(parameter: string, value: number): void {
  if (Number.isInteger(value) && value >= 0) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a whole number of engines, 0 or more',
    hint: 'Leave it out to build as many as possible.',
  });
}

function guardBoolean(parameter: string, value: boolean): void {
  if (typeof value === 'boolean') return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'true or false',
    hint: 'Leave it out to allow purchases.',
  });
}

function guardTime(parameter: string, value: number): void {
  if (Number.isFinite(value) && value > 0 && value <= 1e6) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'a time above 0, up to 11 days [s]',
    hint: 'Leave it out to search until the plan is proven, or wrap it in its unit, e.g. second(60).',
  });
}

function guardCap(shed: Shed, cap: NonNullable<PlanOptions['mostPerEngine']>): number {
  guardFields('options.mostPerEngine', cap, ['amount', 'currency']);
  const { amount, currency } = cap;
  if (!(Number.isFinite(amount) && amount >= 0 && amount <= 1e9)) {
    throw new RebuildInputError({
      parameter: 'options.mostPerEngine.amount',
      value: amount,
      expected: 'an amount of money, 0 or more',
      hint: 'Give it as a number, e.g. { amount: 400, currency: "EUR" }.',
    });
  }
  const known = currencyOf(shed);
  if (typeof currency !== 'string' || !/^[A-Z]{3}$/.test(currency)) {
    throw new RebuildInputError({
      parameter: 'options.mostPerEngine.currency',
      value: currency,
      expected: 'the three letters of a currency',
      hint: 'For example { amount: 400, currency: "EUR" }.',
    });
  }
  if (known !== undefined && currency !== known) {
    throw new RebuildInputError({
      parameter: 'options.mostPerEngine.currency',
      value: currency,
      expected: `${known}, the currency of the shed's prices`,
      hint: 'Amounts of two currencies cannot be compared.',
    });
  }
  return inThousandths(cap);
}

function namesOf(
  shed: Shed,
  parameter: string,
  names: readonly string[] = [],
  sections: readonly (typeof SECTIONS)[number][],
): readonly string[] {
  guardList(parameter, names, 0, 'names');
  const known = sections.flatMap((section) => [
    ...(shed[section] ?? []).map(({ name }) => name),
    ...(shed.toBuy?.[section] ?? []).map(({ name }) => name),
  ]);
  names.forEach((name, i) => {
    guardText(`${parameter}[${i}]`, name);
    if (known.includes(name)) return;
    const near = didYouMean(name, known);
    throw new RebuildInputError({
      parameter: `${parameter}[${i}]`,
      value: name,
      expected:
        sections.length === 1 ? `the name of one of the ${sections[0]}` : 'the name of a part',
      hint: near
        ? capital(near)
        : `Known names: ${known.slice(0, 12).join(', ')}${known.length > 12 ? ' …' : ''}.`,
    });
  });
  return names;
}

function guardCallback(onProgress: NonNullable<PlanOptions['onProgress']>) {
  if (typeof onProgress === 'function') return onProgress;
  throw new RebuildInputError({
    parameter: 'options.onProgress',
    value: onProgress,
    expected: 'a function that receives the progress of the search',
    hint: 'Leave it out if you do not need it.',
  });
}

function guardSolver(solver: NonNullable<PlanOptions['solver']>) {
  if (typeof solver?.createModel === 'function') return solver;
  throw new RebuildInputError({
    parameter: 'options.solver',
    value: solver,
    expected: 'the HiGHS solver, started',
    hint: 'Await what the package highs exports: solver: await start().',
  });
}
