import { recommendedOilClearance } from '../bearings/index.js';
import { wallsToSuit } from '../bearings/internal.js';
import type { Limits, Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { Made, Shed } from '../shed/index.js';
import { type Kind, type Member, NO_LIMIT } from './kinds.js';
import { inThousandths, type PricedJob } from './money.js';

// Parts that are made to suit one place. They count as home-made: proper parts come first where all else is equal.

/** The kinds of shells that can be made. */
export function shellsToMake({ toMake }: Shed): readonly Kind<{
  readonly fits: 'rods' | 'mains';
  readonly toSuit: Span<Length>;
}>[] {
  return (toMake?.shells ?? []).map((made) => ({
    ...kindOf('shells', made),
    ready: { fits: made.fits, toSuit: made.wall },
  }));
}

/** The kinds of thrust washers that can be made. */
export function washersToMake({
  toMake,
}: Shed): readonly Kind<{ readonly toSuit: Span<Length> }>[] {
  return (toMake?.thrustWashers ?? []).map((made) => ({
    ...kindOf('thrustWashers', made),
    ready: { toSuit: made.thickness },
  }));
}

function kindOf(section: 'shells' | 'thrustWashers', { name, material, price }: Made) {
  const cost = inThousandths(price);
  const member: Member = {
    name,
    count: NO_LIMIT,
    places: [],
    price: cost,
    homeMade: true,
    ...(material !== undefined && { material }),
  };
  const kind: Omit<Kind<unknown>, 'ready'> = {
    section,
    members: [member],
    count: NO_LIMIT,
    cost,
    repairs: [],
    mustBuild: false,
    made: true,
  };
  return kind;
}

/** Sleeves as they are made for a way of boring. */
export interface SleevesToMake {
  readonly name: string;
  readonly material?: string;
  readonly wall: Span<Length>;
  /** Price of one [thousandths]. */
  readonly price: number;
}

/**
 * Adds the sleeves to a way with sleeved cylinders: the cheapest on the list. Without any on the list they count as
 * the shop's. If nothing may be bought, cylinders that need a sleeve from the list cannot be sleeved.
 */
export function withSleeves<
  W extends { readonly jobs: readonly PricedJob[]; readonly cost: number },
>(
  way: W,
  { toMake }: Shed,
  buying: boolean,
): (W & { readonly sleeves?: SleevesToMake }) | undefined {
  const count = sleevedIn(way.jobs);
  const [sleeve] = [...(toMake?.sleeves ?? [])].sort((a, b) => a.price.amount - b.price.amount);
  if (sleeve === undefined || count === 0) return way;
  if (!buying) return undefined;
  const { name, material, wall } = sleeve;
  const price = inThousandths(sleeve.price);
  const sleeves = { name, wall, price, ...(material !== undefined && { material }) };
  return { ...way, sleeves, cost: way.cost + count * price };
}

const sleevedIn = (jobs: readonly PricedJob[]): number =>
  jobs.reduce((sum, { work, places }) => sum + (work === 'sleeve' ? places.length : 0), 0);

/**
 * The wall to make shells with, for one bearing: what gives the middle of the clearance limits, as near as it can be
 * made. A limit that is not given is that of the rule of thumb.
 */
export function wallToMake(
  { min: least, max: most }: Span<Length>,
  housing: Span<Length>,
  journal: Span<Length>,
  { min, max }: Limits<Length>,
): Length {
  const usual = recommendedOilClearance(journal.max).limits as Span<Length>;
  const both = {
    min: min ?? (Math.min(usual.min, max ?? Infinity) as Length),
    max: max ?? (Math.max(usual.max, min ?? 0) as Length),
  };
  const { min: thin = 0, max: thick = 0 } = wallsToSuit(housing, journal, both);
  return Math.min(most, Math.max(least, (thin + thick) / 2)) as Length;
}

/**
 * The thickness to make a washer with that gives the middle of the end play, as near as it can be made; undefined if
 * there is no room for one.
 */
export function thicknessToMake(
  { min: least, max: most }: Span<Length>,
  without: Length,
  { min = 0 as Length, max = min }: Limits<Length>,
): Length | undefined {
  const wanted = Math.min(most, Math.max(least, without - (min + max) / 2));
  return wanted < without ? (wanted as Length) : undefined;
}
