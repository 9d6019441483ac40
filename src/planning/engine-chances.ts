import { guardFields, guardLayout, guardWhole } from '../judging/internal.js';
import { randomBits, uniform } from '../numerics/index.js';
import type { Ratio } from '../quantities/index.js';
import { guardKind } from '../reading/index.js';
import type { Part, Shed } from '../shed/index.js';
import { needsOf, SECTIONS, withCoreParts } from '../shed/internal.js';
import { shedLayout } from '../shed/layouts.js';
import { batchesOf } from './batches.js';
import type { EngineChances, LeftOutOfChances, OddsOfPart } from './chance-types.js';
import { TimeUp } from './clock.js';
import type { Draft } from './draft.js';
import { FitTable } from './fit-table.js';
import { formulate } from './formulate.js';
import { guardCounts } from './guard-counts.js';
import type { Kind, Member } from './kinds.js';
import { kindsIn } from './kinds-in.js';
import { loadSolver } from './load-solver.js';
import { type Row, sumOfTerms } from './model.js';
import { oddsIn } from './odds.js';
import { openPointsOf } from './open-points.js';
import type { PlanOptions } from './plan-options.js';
import { guardPlanOptions, type PlanRequest } from './plan-request.js';
import type { Unproven } from './proof-types.js';
import type { Solver } from './solver.js';
import { type Stock, stockOf } from './stock.js';
import { testingOf } from './testing.js';

/** Options of `engineChances`. */
export interface ChanceOptions
  extends Pick<
    PlanOptions,
    'atMost' | 'buying' | 'reserved' | 'timeLimit' | 'onProgress' | 'solver'
  > {
  /** How many cases are drawn where there are too many to try; by default 400. */
  readonly draws?: number;
  /** The seed of the draws: the same one gives the same answer; by default 1. */
  readonly seed?: number;
}

/** The most parts that are not known of which every case is tried: 256 cases. */
const MOST_TRIED = 8;
const DRAWS = 400;
const SEED = 1;

/**
 * How likely each number of complete engines is, where parts were not measured. Every part that is not known is good or
 * not, each on its own, with its owner's odds, or by a rule of thumb of ours: 80 % of an engine that ran, 60 % of one that turns,
 * 30 % of one that has seized or had an accident, 50 % of any other. A part that is known counts so too if its owner gives odds of it: what
 * no micrometer finds may be wrong with it. Good means that it measures up to whatever it is to go with, so the
 * chances are no better than the odds, and no plan counts on them. What the engines take without verdict, test or
 * odds of the owner is in `notIn`: the chances leave that out.
 *
 *     chance(n) = sum of the chances of all cases whose most engines are n
 *
 * @param shed - the parts, as `readShed` gives them
 * @param options - the most engines, whether to buy, parts to keep back, and how cases are drawn
 * @returns the chance of every number of engines that there may be, fewest first, and the odds it comes from
 * @throws {RebuildInputError} when the shed is not what `readShed` gives, or an option is unknown or impossible
 * @see Source: enumeration of all cases, or seeded draws; worked by hand in tests/planning/engine-chances.test.ts
 * @example
 * ```ts
 * const chances = await engineChances(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 *   cores: [],
 * }));
 * chances.chances; // [{ engines: 0, chance: 1 }]
 * ```
 */
export async function engineChances(
  shed: Shed,
  options: ChanceOptions = {},
): Promise<EngineChances> {
  guardKind('shed', shed);
  guardLayout('shed', shed, shedLayout, 'readShed');
  guardCounts(shed);
  guardFields('options', options, [
    'atMost',
    'buying',
    'reserved',
    'timeLimit',
    'onProgress',
    'solver',
    'draws',
    'seed',
  ]);
  const { draws = DRAWS, seed = SEED, ...others } = options;
  guardWhole('options.draws', draws, [1, 100_000], 'Leave it out for 400 cases.');
  guardWhole('options.seed', seed, [0, 1e9], 'Any such number will do.');
  const request = guardPlanOptions(shed, others);
  return chancesWith(shed, request, await loadSolver(request), { draws, seed });
}

/** A part that is not known, with its odds. */
interface Uncertain {
  readonly kind: Kind<unknown>;
  readonly member: Member;
  readonly odds: OddsOfPart;
}

function chancesWith(
  shed: Shed,
  request: PlanRequest,
  solver: Solver,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): EngineChances {
  const { shed: all, inCore } = withCoreParts(shed);
  const { engine } = shed;
  const stock = stockOf(all, { ...request, unknown: true, inCore });
  const open = uncertainIn(stock, all);
  const odds = open.map((each) => each.odds);
  const tried = open.length <= MOST_TRIED;
  const how = tried ? { how: 'every case' as const } : { how: 'draws' as const, draws, seed };
  const unknown = { chances: [], ...how, odds, notIn: [] };
  try {
    const draft = formulate({
      ...{ engine, stock, needed: needsOf(shed), clock: solver.clock },
      fits: new FitTable(engine, stock.shells),
      batches: batchesOf(stock),
      least: -Infinity,
    });
    const { mostIn, taken } = counting(draft, open, request.atMost ?? Infinity, solver);
    const cases = tried ? everyCase(open) : drawnCases(open, draws, seed);
    const found = new Map<number, number>();
    for (const { good, chance } of cases) {
      const engines = mostIn(good);
      if (typeof engines === 'string') return { ...unknown, ended: engines };
      found.set(engines, (found.get(engines) ?? 0) + chance);
    }
    const chances = [...found]
      .sort(([a], [b]) => a - b)
      .map(([engines, chance]) => ({ engines, chance: chance as Ratio }));
    return { chances, ...how, odds, notIn: leftOutOf(all, taken, odds) };
  } catch (error) {
    if (!(error instanceof TimeUp)) throw error;
    return { ...unknown, ended: 'time limit' };
  }
}

/** The parts that are not known, and those that are but have odds of their owner: one entry of the shed each. */
function uncertainIn(stock: Stock, shed: Shed): readonly Uncertain[] {
  const parts = SECTIONS.flatMap((section): readonly Part[] => [
    ...(shed[section] ?? []),
    ...(shed.toBuy?.[section] ?? []),
  ]);
  const oddsOf = oddsIn(shed);
  return kindsIn(stock).flatMap((kind) =>
    kind.members.flatMap((member): readonly Uncertain[] => {
      const { section, unknown } = kind;
      const { name } = member;
      const part = parts.find((each) => each.name === name);
      if (part === undefined) return [];
      const odds = { section, name, ...oddsOf(part) };
      return unknown !== undefined || odds.by === 'owner' ? [{ kind, member, odds }] : [];
    }),
  );
}

/** What is not known of the parts that the engines take and the odds do not tell. The owner's odds speak for a whole part. */
function leftOutOf(
  shed: Shed,
  taken: ReadonlySet<Kind<unknown>>,
  odds: readonly OddsOfPart[],
): readonly LeftOutOfChances[] {
  const testing = testingOf(shed);
  const told = odds.filter(({ by }) => by === 'owner').map(({ name }) => name);
  return [...taken].flatMap(({ section, members }) =>
    members.flatMap(({ name }): readonly LeftOutOfChances[] => {
      const all: readonly Part[] = [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])];
      const part = all.find((each) => each.name === name);
      if (part === undefined || told.includes(name)) return [];
      const points = openPointsOf(shed, section, name, testing(section, part, []));
      return points.untested || points.notJudged ? [{ section, name, ...points }] : [];
    }),
  );
}

/** One case: which of the parts are good, and how likely that is. */
interface Case {
  readonly good: readonly boolean[];
  readonly chance: number;
}

function everyCase(open: readonly Uncertain[]): readonly Case[] {
  return Array.from({ length: 2 ** open.length }, (_, bits) => {
    const good = open.map((__, i) => (bits & (1 << i)) !== 0);
    const chance = open.reduce(
      (product, { odds: { odds } }, i) => product * (good[i] ? odds : 1 - odds),
      1,
    );
    return { good, chance };
  }).filter(({ chance }) => chance > 0);
}

function drawnCases(open: readonly Uncertain[], draws: number, seed: number): readonly Case[] {
  const bits = randomBits(seed);
  return Array.from({ length: draws }, () => ({
    good: open.map(({ odds: { odds } }) => uniform(bits) < odds),
    chance: 1 / draws,
  }));
}

/**
 * Tells the most engines if some of the parts are good, and gathers the kinds of parts that any of these engines take.
 * Cases with as many good parts of every kind are solved once.
 */
function counting(draft: Draft, open: readonly Uncertain[], atMost: number, solver: Solver) {
  const kinds = [...new Set(open.map(({ kind }) => kind))];
  const known = new Map<string, number>();
  const taken = new Set<Kind<unknown>>();
  const mostIn = (good: readonly boolean[]): number | Unproven['outcome'] => {
    const counts = kinds.map((kind) =>
      open.reduce(
        (left, each, i) => (each.kind === kind && !good[i] ? left - each.member.count : left),
        kind.count,
      ),
    );
    const key = counts.join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const rows = kinds.flatMap((kind, i): readonly Row[] => {
      const terms = draft.taken.get(kind);
      return terms ? [{ terms, min: 0, max: counts[i] ?? 0 }] : [];
    });
    const where = [...rows, { terms: draft.engines, min: 0, max: atMost }];
    const of = draft.engines;
    const { status, values } = solver.solve('measure first', draft.model, {
      goal: 'most',
      of,
      where,
    });
    if (status === 'time limit' || status === 'solver failure') return status;
    const engines = sumOfTerms(of, values);
    known.set(key, engines);
    for (const [kind, terms] of draft.taken) if (sumOfTerms(terms, values) > 0) taken.add(kind);
    return engines;
  };
  return { mostIn, taken };
}
