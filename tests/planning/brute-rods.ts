import type { Length, SizeOrSpan, Span } from 'crankwright';
import type { StatedLimits } from '../../src/reading/stated-limits.js';
import { mayHaveSeized, repairsOf, testsOf } from './brute-faults.js';
import { type Bin, taking, testsCost, worksCost } from './brute-stock.js';
import { NOTHING, together, type Way } from './brute-ways.js';
import type { HousingPlace, RodsPart, Shed } from './full.js';

/** The rods of an engine. */
export interface RodWay extends Way {
  readonly housings: readonly Span<Length>[];
}

export const spanOf = (size: SizeOrSpan<Length>): Span<Length> =>
  typeof size === 'number' ? { min: size, max: size } : size;

/** Every choice of rods for one engine: a set, or as many single rods. */
export function rodWays(
  shed: Shed,
  bins: readonly Bin<RodsPart>[],
  history: Shed,
): readonly RodWay[] {
  const { cylinders } = shed.engine;
  const mended = bins.flatMap((bin) => mendedRods(shed, bin, history) ?? []);
  const sets = mended.filter(({ housings }) => housings.length === cylinders);
  if (cylinders === 1) return sets;
  const singles = mended.filter(({ housings }) => housings.length === 1);
  return [...sets, ...choose(singles, cylinders)];
}

/** Every choice of so many single rods. */
function choose(singles: readonly RodWay[], count: number): readonly RodWay[] {
  if (count === 0) return [{ ...NOTHING, housings: [] }];
  return singles.flatMap((single, i) =>
    choose(singles.slice(i + 1), count - 1).map((others) => ({
      ...together(single, others),
      housings: [...single.housings, ...others.housings],
    })),
  );
}

function mendedRods(shed: Shed, bin: Bin<RodsPart>, history: Shed): RodWay | undefined {
  const { part } = bin;
  if (mayHaveSeized(part, history)) return undefined;
  const repairs = repairsOf('rods', part);
  // Rods that were not measured are a set, of housings of any size.
  const rods = part.rods ?? Array<HousingPlace>(shed.engine.cylinders).fill({} as never);
  const resized = resizing(rods, shed.engine.rodHousing, repairs.has('resize housings'));
  if (resized === undefined) return undefined;
  const cost = worksCost(shed, [
    ['straighten', repairs.has('straighten') ? 1 : 0],
    ['resize housings', resized.count],
  ]);
  if (cost === undefined) return undefined;
  const worked = repairs.size > 0 || resized.count > 0;
  const tests = testsCost(shed, testsOf('rods', part, worked, history));
  const way = taking(bin);
  const work = (repairs.has('straighten') ? 1 : 0) + resized.count;
  return { ...way, cost: way.cost + cost + tests, work, housings: resized.housings };
}

/** Housings as they will be, and how many are resized; undefined if one should be and cannot. */
export function resizing(
  places: readonly HousingPlace[],
  limits: StatedLimits<'length'> | undefined,
  spun: boolean,
) {
  const { min, max } = limits ?? {};
  const before = places.map(({ housingBore }) => housingBore && spanOf(housingBore));
  const bad = before.map(
    (bore) =>
      bore !== undefined &&
      (spun ||
        (min !== undefined && bore.min < min - 1e-9) ||
        (max !== undefined && bore.max > max + 1e-9)),
  );
  const count = bad.filter(Boolean).length;
  if (count > 0 && (min === undefined || max === undefined)) return undefined;
  const housings = before.map((bore, i) => (bad[i] ? ({ min, max } as Span<Length>) : bore));
  return { housings, count };
}
