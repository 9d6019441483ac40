import type { PlanOptions } from '../../src/planning/plan-options.js';
import type { Price } from '../../src/reading/price.js';
import type { Part } from '../../src/shed/part.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import type { Work } from '../../src/shed/works.js';
import { isScrap, repairsOf } from './brute-faults.js';
import type { Way } from './brute-ways.js';
import type { Parts, PistonSetPart, Shed, ShellPart } from './full.js';

/** Parts all alike that engines may take, in the shed or to be bought. */
export interface Bin<P extends Part = Part> {
  /** No two bins share it. */
  readonly id: number;
  readonly part: P;
  /** How many there are; Infinity for as many as are wanted. */
  readonly count: number;
  /** What one costs, in thousandths; 0 in the shed. */
  readonly price: number;
  /** How many pieces of work it needs in any case, whose cost is in its price. */
  readonly work?: number;
}

/** Every bin of every section. */
export type Stock = { readonly [S in Section]: readonly Bin<Parts[S][number]>[] };

/** The groups that engines of a stock may be of; a nameless one where no part belongs to any. */
export function groupsOf(stock: Stock): readonly string[] {
  const named = Object.values(stock).flatMap((bins: readonly Bin[]) =>
    bins.flatMap(({ part }) => part.interchange ?? []),
  );
  return named.length === 0 ? [''] : [...new Set(named)];
}

/** The bins of a stock whose parts go into engines of a group. */
export function ofGroup(stock: Stock, group: string): Stock {
  const goesIn = ({ part }: Bin) => part.interchange?.includes(group) ?? true;
  return Object.fromEntries(
    Object.entries(stock).map(([section, bins]) => [section, bins.filter(goesIn)]),
  ) as never;
}

/** The way that takes one from a bin. */
export const taking = ({ id, price, work }: Bin): Way => ({
  takes: [id],
  cost: price,
  margins: [],
  work: work ?? 0,
  strangers: 0,
});

/** A price in thousandths, which are whole. */
export const thousandths = ({ amount }: Price): number => Math.round(amount * 1000);

/** Everything that engines may take: neither scrap nor kept back. */
export function stockOf(shed: Shed, options: PlanOptions): Stock {
  const offers = options.buying === false ? {} : (shed.toBuy ?? {});
  let id = 0;
  const binsOf = (section: Section): readonly Bin[] =>
    [
      ...(shed[section] ?? []).map((part) => ({ part, count: countOf(part, 1), price: 0 })),
      ...(offers[section] ?? []).map((part) => ({
        part,
        count: isCounted(section) ? countOf(part, Infinity) : 1,
        price: thousandths(part.price),
      })),
    ]
      .filter(
        ({ part }) =>
          !options.reserved?.includes(part.name) &&
          part.reserved === undefined &&
          part.builtInto === undefined &&
          !isScrap(section, part, shed.engine),
      )
      .flatMap(({ price, ...bin }) => {
        // Valves need no other work than refacing, so it is a part of their price.
        const refaced = section === 'valveSets' && repairsOf(section, bin.part).size > 0;
        const work = workCost(shed, 'reface valves', refaced ? 1 : 0);
        return work === undefined
          ? []
          : [{ id: id++, ...bin, price: price + work, work: refaced ? 1 : 0 }];
      });
  const made = (options.buying === false ? {} : shed.toMake) ?? {};
  const madeOf = (section: Section): readonly Bin[] =>
    (section === 'shells' || section === 'thrustWashers' ? (made[section] ?? []) : []).map(
      ({ price, ...part }) => ({ id: id++, part, count: Infinity, price: thousandths(price) }),
    );
  return Object.fromEntries(
    SECTIONS.map((section) => [section, [...binsOf(section), ...madeOf(section)]]),
  ) as never;
}

const isCounted = (section: Section) =>
  !['blocks', 'crankshafts', 'rods', 'heads', 'otherParts'].includes(section);

function countOf(part: Part, otherwise: number): number {
  const { pairs, count } = part as Partial<ShellPart & PistonSetPart>;
  return pairs ?? count ?? otherwise;
}

/** What so much work costs in thousandths, at the cheapest shop; undefined if none does it. */
export function workCost(shed: Shed, work: Work, times: number): number | undefined {
  if (times === 0) return 0;
  const prices = (shed.machining ?? [])
    .filter((offer) => offer.work === work)
    .map(({ price }) => thousandths(price));
  return prices.length === 0 ? undefined : times * Math.min(...prices);
}

/** What tests cost in thousandths; nothing where nobody offers them. */
export const testsCost = (
  shed: Shed,
  tests: readonly (readonly [test: Work, times: number])[],
): number => tests.reduce((sum, [test, times]) => sum + (workCost(shed, test, times) ?? 0), 0);

/** What it costs to mend a crack; undefined if nobody stitches or welds. */
export function mendCost(shed: Shed, times: number): number | undefined {
  const prices = [workCost(shed, 'stitch', times), workCost(shed, 'weld', times)].filter(
    (cost) => cost !== undefined,
  );
  return prices.length === 0 ? undefined : Math.min(...prices);
}

/** What so many sleeves cost: the cheapest that can be made, or nothing where none is on the list. */
export function sleevesCost({ toMake }: Shed, count: number): number {
  const prices = (toMake?.sleeves ?? []).map(({ price }) => thousandths(price));
  return count === 0 || prices.length === 0 ? 0 : count * Math.min(...prices);
}

/** What several works cost together; undefined if no shop does one of them. */
export function worksCost(
  shed: Shed,
  works: readonly (readonly [work: Work, times: number])[],
): number | undefined {
  let sum = 0;
  for (const [work, times] of works) {
    const cost = workCost(shed, work, times);
    if (cost === undefined) return undefined;
    sum += cost;
  }
  return sum;
}
