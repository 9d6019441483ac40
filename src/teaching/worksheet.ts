import { guardFields, guardWhole } from '../judging/internal.js';
import { randomBits, uniform } from '../numerics/index.js';
import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { type CardName, cards } from './cards.js';
import { cardsAbout } from './cards-about.js';
import { exercise } from './exercise.js';
import type { Exercise } from './exercise-types.js';
import { likenessOf } from './likeness.js';
import { systemOr } from './worked-options.js';

/** What a worksheet is to be. */
export interface WorksheetRequest {
  /** A topic such as `'bearings'`, or words such as `'ring gap'`. */
  readonly about: string;
  /** Which worksheet, a whole number from 0 on: the same seed gives the same sheet [-]. */
  readonly seed: number;
  /** The units that the shop reads; by default `'inch'`. */
  readonly units?: UnitSystem;
  /** How many problems, 10 without it. */
  readonly count?: number;
}

/** A sheet of problems. */
export interface Worksheet {
  /** What it is about. */
  readonly about: string;
  /** The seed that it was drawn with. */
  readonly seed: number;
  /** The units that the shop reads. */
  readonly units: UnitSystem;
  /** The problems. */
  readonly problems: readonly Exercise[];
}

const REQUEST = ['about', 'seed', 'units', 'count'] as const;
/** Seeds of the problems of two worksheets lie this far apart, so that no two have one in common. */
const APART = 1009;

/**
 * Draws a worksheet: problems on a topic, each on another formula as long as there are others. Formulas that are worked
 * alike, such as the least clearance and the most, follow one another as late as they can.
 *
 * @param request - what about, which, in what units, and how many
 * @returns the problems, with their answers
 * @throws {RebuildInputError} when a field is misspelt, no card is about the words, the seed is not a whole number from
 * 0 to 4 000 000, the unit system is unknown or the count is not a whole number from 1 to 100
 * @example
 * ```ts
 * const { problems } = worksheet({ about: 'bearings', seed: 7, units: 'inch', count: 3 });
 * problems.length; // 3
 * ```
 */
export function worksheet(request: WorksheetRequest): Worksheet {
  guardFields('request', request, REQUEST);
  const { about, seed, count = 10 } = request;
  guardWhole(
    'request.seed',
    seed,
    [0, 4_000_000],
    'Any will do; the same seed draws the same sheet.',
  );
  const units = systemOr('request.units', request.units);
  guardWhole('request.count', count, [1, 100], 'It is how many problems the sheet has.');
  const names = namesAbout(about);
  const bits = randomBits(seed);
  const drawn = names
    .map((name) => ({ name, place: uniform(bits) }))
    .sort((a, b) => a.place - b.place)
    .map(({ name }) => name);
  const order = likeOnesLast(drawn);
  const problems = Array.from({ length: count }, (_, index) => {
    const name = order[index % order.length] as CardName;
    return exercise(name, seed * APART + Math.floor(index / order.length), { units });
  });
  return { about, seed, units, problems };
}

/** Cards in turn, those like one that was before them later: the first of each likeness, the second of each, and so on. */
function likeOnesLast(names: readonly CardName[]): readonly CardName[] {
  const met = new Map<string, number>();
  return names
    .map((name) => {
      const likeness = likenessOf(cards[name]);
      const turn = met.get(likeness) ?? 0;
      met.set(likeness, turn + 1);
      return { name, turn };
    })
    .sort((a, b) => a.turn - b.turn)
    .map(({ name }) => name);
}

function namesAbout(about: string): readonly CardName[] {
  const names = cardsAbout(about);
  if (names.length > 0) return names;
  throw new RebuildInputError({
    parameter: 'request.about',
    value: about,
    expected: 'a topic or words that a formula is about',
    hint: `Topics: ${[...new Set(Object.values(cards).map(({ topic }) => topic))].join(', ')}.`,
  });
}
