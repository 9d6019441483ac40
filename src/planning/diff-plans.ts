import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording, sayDistance } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { Section } from '../shed/index.js';
import { named, SECTIONS } from '../shed/internal.js';
import type { Cost } from './cost.js';
import { sayEngines } from './describe-proof.js';
import { planDifferenceLayout, planLayout } from './layouts.js';
import type { Build, Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';

/** What differs between two plans for one shed. */
export interface PlanDifference {
  /** How many engines each builds. */
  readonly engines: {
    /** The older plan [-]. */
    readonly before: number;
    /** The newer one [-]. */
    readonly after: number;
  };
  /** What each costs. */
  readonly cost: {
    /** The older plan. */
    readonly before: Cost;
    /** The newer one. */
    readonly after: Cost;
  };
  /** The smallest margin of each; absent where no clearance is judged. */
  readonly smallestMargin: {
    /** Of the older plan [m]. */
    readonly before?: Length;
    /** Of the newer one [m]. */
    readonly after?: Length;
  };
  /** The engines that are built now and were not before, by their blocks. */
  readonly builtNow: readonly string[];
  /** The engines that were built before and are not now. */
  readonly builtNoMore: readonly string[];
  /** Engines of both plans that are built of other parts now. */
  readonly ofOtherParts: readonly EngineDifference[];
}

/** An engine of two plans that is built of other parts in the newer one. */
export interface EngineDifference {
  /** The engine, by its block. */
  readonly engine: string;
  /** What it takes now and did not take before, or not so many of. */
  readonly takes: readonly PartTaken[];
  /** What it took before and does not take now, or not so many of. */
  readonly insteadOf: readonly PartTaken[];
}

/** Parts that an engine takes. */
export interface PartTaken {
  /** Their section of the shed. */
  readonly section: Section;
  /** Their name. */
  readonly name: string;
  /** How many [-]. */
  readonly count: number;
}

/**
 * What differs between two plans for one shed: the engines, their cost, the smallest margin, and the parts they are
 * built of.
 *
 * @param older - what `planBuilds` gave for the older shed
 * @param newer - the same for the newer one
 * @returns what differs
 * @throws {RebuildInputError} when a plan is not what `planBuilds` gives
 * @example
 * ```ts
 * const plan = await planBuilds(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * }));
 * diffPlans(plan, plan).engines; // { before: 0, after: 0 }
 * ```
 */
export function diffPlans(older: Plan, newer: Plan): PlanDifference {
  guardLayout('older', older, planLayout, 'planBuilds');
  guardLayout('newer', newer, planLayout, 'planBuilds');
  const [was, is] = [partsOfBuilds(older), partsOfBuilds(newer)];
  const [before, after] = [older.smallestMargin, newer.smallestMargin];
  return {
    engines: { before: older.builds.length, after: newer.builds.length },
    cost: { before: older.cost, after: newer.cost },
    smallestMargin: {
      ...(before !== undefined && { before }),
      ...(after !== undefined && { after }),
    },
    builtNow: [...is.keys()].filter((name) => !was.has(name)),
    builtNoMore: [...was.keys()].filter((name) => !is.has(name)),
    ofOtherParts: [...is].flatMap(([engine, now]) => {
      const then = was.get(engine) ?? now;
      const [takes, insteadOf] = [moreIn(now, then), moreIn(then, now)];
      return takes.length + insteadOf.length === 0 ? [] : [{ engine, takes, insteadOf }];
    }),
  };
}

/** The parts of every engine, by its name. */
const partsOfBuilds = ({ builds }: Plan): ReadonlyMap<string, Build['parts']> =>
  new Map(builds.map(({ name, parts }) => [name, parts]));

/** The parts of which an engine takes more than another. */
const moreIn = (parts: Build['parts'], others: Build['parts']): readonly PartTaken[] =>
  parts.flatMap(({ section, name, count }) => {
    const there = others.find((each) => each.section === section && each.name === name)?.count ?? 0;
    return count > there ? [{ section, name, count: count - there }] : [];
  });

/** `block B (rod A2 and rod E1 instead of rods B; also washer 1)`. */
function sayEngine({ engine, takes, insteadOf }: EngineDifference): string {
  const names = (parts: readonly PartTaken[], section: Section) =>
    parts
      .filter((part) => part.section === section)
      .map(({ name, count }) => named(name, count))
      .join(' and ');
  const moved = SECTIONS.flatMap((section) => {
    const [now, then] = [names(takes, section), names(insteadOf, section)];
    if (now === '' && then === '') return [];
    if (then === '') return [`also ${now}`];
    return [now === '' ? `without ${then}` : `${now} instead of ${then}`];
  });
  return `${engine} (${moved.join('; ')})`;
}

/**
 * Describes what differs between two plans.
 *
 * @param difference - what `diffPlans` gave
 * @param wording - the units to print in
 * @returns one sentence for each thing that differs, and at least one
 * @throws {RebuildInputError} when the difference is not what `diffPlans` gives, or the unit system is unknown
 * @example
 * ```ts
 * const plan = await planBuilds(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * }));
 * describePlanDifference(diffPlans(plan, plan), { units: 'inch' });
 * // ["The plan is the same: no complete engine."]
 * ```
 */
export function describePlanDifference(
  difference: PlanDifference,
  wording: Wording,
): readonly string[] {
  guardLayout('difference', difference, planDifferenceLayout, 'diffPlans');
  guardWording(wording);
  const { engines, cost, smallestMargin, builtNow, builtNoMore, ofOtherParts } = difference;
  const said = (text: string, isSaid: boolean) => (isSaid ? [text] : []);
  const { before, after } = smallestMargin;
  const [was, is] = [sayCost(cost.before), sayCost(cost.after)];
  const margin = (size: Length | undefined) =>
    size === undefined ? 'not judged' : sayDistance(size, 'length', wording.units);
  const all = [
    ...said(
      `The plan makes ${sayEngines(engines.after)}; before, ${sayEngines(engines.before)}.`,
      engines.before !== engines.after,
    ),
    ...said(`It costs ${is}; before, ${was}.`, was !== is),
    ...said(
      `Its smallest margin is ${margin(after)}; before, ${margin(before)}.`,
      margin(before) !== margin(after),
    ),
    ...said(`Built now: ${builtNow.join(', ')}.`, builtNow.length > 0),
    ...said(`No longer built: ${builtNoMore.join(', ')}.`, builtNoMore.length > 0),
    ...said(
      `Built of other parts: ${ofOtherParts.map(sayEngine).join(', ')}.`,
      ofOtherParts.length > 0,
    ),
  ];
  return all.length === 0 ? [`The plan is the same: ${sayEngines(engines.after)}.`] : all;
}
