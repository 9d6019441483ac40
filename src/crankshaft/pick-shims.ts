import { type Finding, judge, type Span } from '../judging/index.js';
import { guardFields, guardList, guardSpan, guardText } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { shimPack, shimThickness } from './domains.js';
import { type Stack, stacksOf } from './shim-stacks.js';

/** One shim or thrust washer on the shelf. */
export interface Shim {
  /** What it is called on the shelf. */
  readonly name: string;
  /** Measured thickness [m]. */
  readonly thickness: Length;
}

/** The stack to take, and how it stands to what was wanted. */
export interface ShimStack {
  /** The shims, in the order of the shelf; none if nothing is to be packed. */
  readonly shims: readonly Shim[];
  /** Their thickness together [m]. */
  readonly total: Length;
  /** That total against the span wanted. */
  readonly finding: Finding<'length'>;
}

const SHIM = ['name', 'thickness'] as const;

/** The most shims that a choice is made among. */
const MOST_SHIMS = 40;

/**
 * The shims to take from a shelf so that together they are as thick as is
 * wanted: the fewest whose total lies within the span, and of those the stack
 * nearest the middle of it. If no stack lies within, the nearest to the span is given, and
 * its finding says so. The choice is exact, every stack counts; stacks that are
 * alike to a nanometre go by the order of the shelf.
 *
 * @param shelf - the shims that may be taken, at most 40
 * @param wanted - what they must be together: the span that leaves the end play within its limits [m]
 * @returns the stack, its total and how it stands to the span
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the span is reversed,
 * or the shelf is too long
 * @see Source: exhaustive choice; checked against trying every stack
 * @example
 * ```ts
 * const stack = pickShims(
 *   [
 *     { name: 'a', thickness: thou(5) }, { name: 'b', thickness: thou(7) },
 *     { name: 'c', thickness: thou(10) }, { name: 'd', thickness: thou(12) },
 *   ],
 *   { min: thou(16), max: thou(18) },
 * );
 * stack.shims.map(({ name }) => name); // ["a", "d"]
 * format(stack.total, thou); // "17.0 thou"
 * ```
 */
export function pickShims(shelf: readonly Shim[], wanted: Span<Length>): ShimStack {
  guardShelf('shelf', shelf);
  const span = guardSpan('wanted', wanted, shimPack);
  // Whole nanometres: sums are exact, and stacks that are alike are equal.
  const sizes = shelf.map(({ thickness }) => Math.round(thickness * 1e9));
  const best = choose(sizes, Math.round(span.min * 1e9), Math.round(span.max * 1e9));
  const shims = shelf.filter((_, i) => best.has(i));
  const total = shims.reduce((sum, { thickness }) => sum + thickness, 0) as Length;
  const finding = judge({
    feature: 'shims together',
    dimension: 'length',
    value: total,
    limits: span,
    basis: { kind: 'specified' },
  });
  return { shims, total, finding };
}

/** Fewest within, then nearest the middle; none within, nearest the span, then fewest. */
function choose(sizes: readonly number[], min: number, max: number): Stack {
  const stacks = stacksOf(sizes);
  const middle = (min + max) / 2;
  let nearest: { readonly stack: Stack; readonly away: number } | undefined;
  for (let count = 0; count <= sizes.length; count++) {
    const stack = stacks.nearest(count, middle);
    const away = Math.abs(stack.total - middle);
    if (stack.total >= min && stack.total <= max) return stack;
    if (nearest === undefined || away < nearest.away) nearest = { stack, away };
  }
  return (nearest as { stack: Stack }).stack;
}

/** Refuses shims that no choice is made among. */
export function guardShelf(parameter: string, shelf: readonly Shim[]): void {
  guardList(parameter, shelf, 0, 'shims');
  if (shelf.length > MOST_SHIMS) {
    throw new RebuildInputError({
      parameter,
      value: shelf,
      expected: `at most ${MOST_SHIMS} shims`,
      hint: 'Leave out those that are far too thick or thin.',
    });
  }
  shelf.forEach((shim, i) => {
    guardFields(`${parameter}[${i}]`, shim, SHIM);
    guardText(`${parameter}[${i}].name`, shim.name);
    shimThickness(`${parameter}[${i}].thickness`, shim.thickness);
  });
}
