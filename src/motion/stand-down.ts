import type { BasedLimits, Finding, OwnLimits, SizeOrSpan, Span } from '../judging/index.js';
import {
  guardFields,
  guardSpan,
  judgeSpan,
  NANOMETRE,
  outsideLength,
  ownLimitsOr,
  pistonStroke,
  type WithTarget,
} from '../judging/internal.js';
import { gapOf, worstCase } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { deckClearance, heightFromCrank, pinHeight } from './domains.js';
import { guardRodLength } from './guards.js';

/** The sizes that decide where a piston stops, each as one or as the span that it lies in, and what was measured. */
export interface SizesToDeck extends OwnLimits<'length'> {
  /** From the centre of the crankshaft to the deck [m]. */
  readonly deckHeight: SizeOrSpan<Length>;
  /** Stroke, twice the throw [m]. */
  readonly stroke: SizeOrSpan<Length>;
  /** Rod from centre to centre [m]. */
  readonly rodLength: SizeOrSpan<Length>;
  /** From the centre of the piston's pin to the flat edge of its crown [m]. */
  readonly pinHeight: SizeOrSpan<Length>;
  /** How far the edge was read below the deck at top dead centre, over the pin; negative stands above it [m]. */
  readonly measured?: SizeOrSpan<Length>;
}

/** Where a piston stops at top dead centre. */
export interface PistonStandDown {
  /** How far below the deck, by the sizes at their worst; negative stands above it [m]. */
  readonly calculated: Span<Length>;
  /** How far below the deck it was read; absent if it was not measured [m]. */
  readonly measured?: Span<Length>;
  /** What was measured less what was calculated; positive is lower than the sizes say [m]. */
  readonly difference?: Span<Length>;
  /** How the piston stands to what its sizes allow; absent if it was not measured. */
  readonly stands?: 'as the sizes say' | 'too low' | 'too high';
  /** The measured stand-down, or else the calculated one, against the caller's limits; absent if there are none. */
  readonly finding?: Finding<'length'>;
}

const SIZES = [
  'deckHeight',
  'stroke',
  'rodLength',
  'pinHeight',
  'measured',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/**
 * How far a piston stops below the deck, by the sizes of a drawing, and whether it does.
 *
 *     calculated.min = leastDeckHeight - mostStroke / 2 - mostRodLength - mostPinHeight
 *     calculated.max = mostDeckHeight - leastStroke / 2 - leastRodLength - leastPinHeight
 *     difference.min = measured - mostCalculated
 *
 * Read it with a dial over the pin, where the piston does not rock, and push it up and down: the play of the bearings
 * is in the reading. One that stands too low has a bent rod, a reground crank of less throw or a piston of another
 * engine; one too high a planed block, or carbon under the dial. Compare all cylinders before any is blamed. A piston
 * above the deck needs a gasket that leaves it room, hot and at speed; `describeStandDown` says so first.
 *
 * @param sizes - sizes of the parts, what was measured, and the limits if they are known [m]
 * @returns the stand-down by the sizes, what was measured against it, and a finding if limits were given [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * rod cannot belong to the stroke, or the sizes are not of one engine
 * @see Source: geometry
 * @example
 * ```ts
 * const { calculated, stands } = pistonStandDown({
 *   deckHeight: { min: inch(9.02), max: inch(9.03) }, stroke: inch(3.48), rodLength: inch(5.7),
 *   pinHeight: { min: inch(1.558), max: inch(1.562) }, measured: inch(0.05),
 * });
 * format(calculated.min, inch); // "0.0180 in"
 * format(calculated.max, inch); // "0.0320 in"
 * stands; // "too low"
 * ```
 */
export function pistonStandDown(sizes: SizesToDeck): PistonStandDown {
  guardFields('sizes', sizes as WithTarget<SizesToDeck>, SIZES);
  const deck = guardSpan('deckHeight', sizes.deckHeight, heightFromCrank);
  const stroke = guardSpan('stroke', sizes.stroke, pistonStroke);
  const rod = guardSpan('rodLength', sizes.rodLength, (parameter, length) =>
    guardRodLength(parameter, guardRodLength(parameter, length, stroke.min), stroke.max),
  );
  const pin = guardSpan('pinHeight', sizes.pinHeight, pinHeight);
  const calculated = worstCase([
    [1, deck],
    [-0.5, stroke],
    [-1, rod],
    [-1, pin],
  ]);
  guardOneEngine(sizes.deckHeight, deck, calculated, stroke);
  const allowed = ownLimitsOr('sizes', sizes, NONE, deckClearance);
  const measured =
    sizes.measured === undefined ? undefined : guardSpan('measured', sizes.measured, deckClearance);
  return {
    calculated,
    ...(measured && {
      measured,
      difference: gapOf(measured, calculated),
      stands: standsOf(measured, calculated),
    }),
    ...(allowed.limits !== NONE.limits && {
      finding: judgeSpan({
        feature: 'stand-down of the piston',
        dimension: 'length',
        value: measured ?? calculated,
        ...allowed,
      }),
    }),
  };
}

/** Refuses a deck that the piston could not come near. */
function guardOneEngine(
  given: SizeOrSpan<Length>,
  deck: Span<Length>,
  calculated: Span<Length>,
  stroke: Span<Length>,
): void {
  const [end, off] =
    calculated.max < -stroke.max
      ? (['max', calculated.max] as const)
      : (['min', calculated.min] as const);
  if (Math.abs(off) <= stroke.max) return;
  const near = deck[end] - off;
  throw outsideLength(
    typeof given === 'object' ? `deckHeight.${end}` : 'deckHeight',
    deck[end],
    { least: near - stroke.max, most: near + stroke.max },
    'Throw, rod and pin height come nowhere near that deck: a digit has slipped, or the units are mixed.',
  );
}

function standsOf(
  measured: Span<Length>,
  by: Span<Length>,
): NonNullable<PistonStandDown['stands']> {
  if (measured.min > by.max + NANOMETRE) return 'too low';
  return measured.max < by.min - NANOMETRE ? 'too high' : 'as the sizes say';
}

const NONE: BasedLimits<'length'> = { limits: {}, basis: { kind: 'specified' } };
