import type { PlanOptions } from '../../src/planning/plan-options.js';
import type { Section } from '../../src/shed/sections.js';
import type { Shed as AnyShed } from '../../src/shed/shed.js';
import { enginesOn } from './brute-engines.js';
import { guardsOf } from './brute-guard.js';
import { search } from './brute-search.js';
import { groupsOf, ofGroup, stockOf, thousandths } from './brute-stock.js';
import type { Shed } from './full.js';

/** The best that a shed makes. */
export interface BruteAnswer {
  readonly engines: number;
  /** Machining and buying, in thousandths. */
  readonly cost: number;
  /** Smallest margin, in nanometres; undefined if no clearance is judged. */
  readonly margin: number | undefined;
}

/** One of each of these. */
const EVERY_ENGINE_TAKES = ['blocks', 'crankshafts', 'pistonSets', 'ringSets'] as const;

/** The best builds of a small shed by trying everything. What happened to donors stands in the history. */
export function bruteForce(
  given: AnyShed,
  options: PlanOptions = {},
  historyOf: AnyShed = given,
): BruteAnswer {
  // Every part of it was measured.
  const [shed, history] = [given, historyOf] as [Shed, Shed];
  const stock = stockOf(shed, options);
  const inStock = (section: Section) => stock[section].reduce((sum, { count }) => sum + count, 0);
  const guards = guardsOf(shed, options);
  const byGroup = groupsOf(stock).map((group) =>
    enginesOn(shed, ofGroup(stock, group), history, guards),
  );
  const { engines, cost, margin } = search({
    byBlock: stock.blocks.map(({ id }) => byGroup.flatMap((engines) => engines.get(id) ?? [])),
    musts: stock.blocks.map(({ part }) => options.mustBuild?.includes(part.name) ?? false),
    counts: Object.values(stock)
      .flat()
      .map(({ count }) => count),
    atMost: Math.min(options.atMost ?? Infinity, ...EVERY_ENGINE_TAKES.map(inStock)),
    mostPerEngine: options.mostPerEngine ? thousandths(options.mostPerEngine) : Infinity,
  });
  return { engines, cost, margin: margin === Infinity ? undefined : margin };
}
