import type { Span } from '../judging/index.js';
import { guardFields, ROUNDING, showIn } from '../judging/internal.js';
import { type Angle, degree, RebuildInputError } from '../quantities/index.js';
import { angleWithin, wheelReading } from './domains.js';
import { HALF, turnedNear, WHOLE } from './turns.js';

/** Where a piston stop held the crank, once on either side of the top. */
export interface StopReadings {
  /** What the degree wheel reads where the piston touches the stop [rad]. */
  readonly first: Angle;
  /** What it reads where the piston touches it on the other side, the crank turned back [rad]. */
  readonly second: Angle;
  /** How far each reading may be off, either way; by default not at all [rad]. */
  readonly within?: Angle;
}

/** Top dead centre on a degree wheel. */
export interface TopDeadCentre {
  /** What the wheel reads at top dead centre, from 0 to just below a whole turn [rad]. */
  readonly top: Angle;
  /** Where top dead centre may be, with both readings off one way. Either end may lie past 0 or a whole turn [rad]. */
  readonly span: Span<Angle>;
  /** How much too much the wheel reads at the top, up to half a turn; negative is too little [rad]. */
  readonly off: Angle;
  /**
   * How far from the top the stop holds the crank, on either side. Turn the wheel on its shaft until it reads this
   * at the stop past the top [rad].
   */
  readonly fromStop: Angle;
}

const STOPS = ['first', 'second', 'within'] as const;
/** Nearer together than that, the piston hardly moves between the two. */
const LEAST = /* @__PURE__ */ degree(4);
/** Farther apart than that, the middle could as well be the bottom. */
const MOST = /* @__PURE__ */ degree(150);

/**
 * Top dead centre from two readings at a piston stop: the middle of the arc from one to the other that the stop closes,
 * which is the shorter. A piston hardly moves about the top, and what looks like the top is off by degrees; the middle
 * is not. Readings may lie on both sides of 0.
 *
 *     top = (first + second) / 2
 *     fromStop = (second - first) / 2
 *
 * Set the stop so that it holds the crank 15 to 45° from the top: nearer, a soft touch is degrees; farther, the middle
 * might be mistaken for the bottom. Take the plugs out and turn the crank gently, by hand, never by the starter: a stop
 * can go through a piston. Check that no open valve meets the stop. Switch the ignition off and earth the magneto lead
 * first. Afterwards turn the wheel until it reads `fromStop` at the stop past the top, and read both sides again: they
 * must be alike, one after 0 and one before it.
 *
 * @param stops - both readings of the wheel, and how far they may be off
 * @returns the reading at top dead centre and its span, how far the wheel is off, and how far the stop is from the top
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the readings are less
 * than 4 degrees apart, or more than 150
 * @see Source: common practice; geometry
 * @example
 * ```ts
 * // 21° on one side, 345° on the other, which is 15° before 0: 36° apart, the middle at 3°.
 * const found = topDeadCentre({ first: degree(21), second: degree(345), within: degree(0.5) });
 * format(found.top, degree); // "3.0 deg"
 * format(found.off, degree); // "3.0 deg"
 * format(found.fromStop, degree); // "18.0 deg"
 * format(found.span.max, degree); // "3.5 deg"
 * ```
 */
export function topDeadCentre(stops: StopReadings): TopDeadCentre {
  guardFields('stops', stops, STOPS);
  const first = wheelReading('first', stops.first);
  const second = wheelReading('second', stops.second);
  const within = stops.within === undefined ? 0 : angleWithin('within', stops.within);
  const apart = turnedNear(second - first, 0);
  const fromStop = Math.abs(apart) / 2;
  if (2 * fromStop < LEAST * (1 - ROUNDING) || 2 * fromStop > MOST * (1 + ROUNDING)) {
    throw new RebuildInputError({
      parameter: 'second',
      value: second,
      shown: showIn(second, degree),
      expected: `4 … 150 degrees from the first, ${showIn(first, degree)}`,
      hint: 'The stop holds the crank short of the top on one side, and just as far past it on the other: set it 15 to 45 degrees from the top.',
    });
  }
  const middle = first + apart / 2;
  const top = middle - WHOLE * Math.floor(middle / WHOLE);
  return {
    top: top as Angle,
    span: { min: (top - within) as Angle, max: (top + within) as Angle },
    off: (top > HALF ? top - WHOLE : top) as Angle,
    fromStop: fromStop as Angle,
  };
}
