import type { PlanOptions } from '../../src/planning/plan-options.js';
import type { Section } from '../../src/shed/sections.js';
import type { Shed as AnyShed } from '../../src/shed/shed.js';
import { enginesOn } from './brute-engines.js';
import { withAllGroups } from './brute-groups.js';
import { guardsOf } from './brute-guard.js';
import { search } from './brute-search.js';
import { groupsOf, ofGroup, stockOf, thousandths } from './brute-stock.js';
import type { Outlay } from './brute-ways.js';
import type { Shed } from './full.js';

/** The best that a shed makes. */
export interface BruteAnswer {
  readonly engines: number;
  /** Machining and buying, in thousandths. */
  readonly cost: number;
  /** Smallest margin, in nanometres; undefined if no clearance is judged. */
  readonly margin: number | undefined;
}

/** The best that a shed makes, by all that plans without a limit for each engine are compared by. */
export interface BruteBest extends Outlay {
  readonly engines: number;
}

/** One of each of these. */
const EVERY_ENGINE_TAKES = ['blocks', 'crankshafts', 'pistonSets', 'ringSets'] as const;

/** The best builds of a small shed by trying everything. What happened to donors stands in the history. */
export function bruteForce(
  shed: AnyShed,
  options: PlanOptions = {},
  history: AnyShed = shed,
): BruteAnswer {
  const { engines, cost, margins } = bruteBest(shed, options, history);
  return { engines, cost, margin: margins[0] };
}

/** The same, with all that they are compared by. */
export function bruteBest(
  given: AnyShed,
  options: PlanOptions = {},
  historyOf: AnyShed = given,
): BruteBest {
  // Every part of it was measured.
  const shed = withAllGroups(given as Shed);
  const history = historyOf as Shed;
  const stock = stockOf(shed, options);
  const inStock = (section: Section) => stock[section].reduce((sum, { count }) => sum + count, 0);
  const guards = guardsOf(shed, options);
  const byGroup = groupsOf(stock).map((group) =>
    enginesOn(shed, ofGroup(stock, group), history, guards),
  );
  const { engines, cost, margins, work, strangers } = search({
    byBlock: stock.blocks.map(({ id }) => byGroup.flatMap((engines) => engines.get(id) ?? [])),
    musts: stock.blocks.map(({ part }) => options.mustBuild?.includes(part.name) ?? false),
    counts: Object.values(stock)
      .flat()
      .map(({ count }) => count),
    atMost: Math.min(options.atMost ?? Infinity, ...EVERY_ENGINE_TAKES.map(inStock)),
    mostPerEngine: options.mostPerEngine ? thousandths(options.mostPerEngine) : Infinity,
  });
  return { engines, cost, margins, work, strangers };
}
