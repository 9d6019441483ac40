import { type BasedLimits, type Finding, judge, type Span } from '../judging/index.js';
import { guardFields, showIn, showLength } from '../judging/internal.js';
import {
  type Force,
  type Length,
  newton,
  type Ratio,
  RebuildInputError,
  type Stiffness,
} from '../quantities/index.js';
import { forceError, springForce, springHeight, toleratedLoss } from './domains.js';
import { type OwnRatioLimits, ownRatioLimitsOr } from './ratio-limits.js';
import { SPRING_LOSS_LIMIT } from './sources.js';

/** What a spring presses with at a height. */
export interface ForceAtHeight {
  /** Height of the spring [m]. */
  readonly height: Length;
  /** Its force on the tester [N]. */
  readonly force: Force;
  /** Force that is specified at that height, the least where a manual prints a span [N]. */
  readonly specified?: Force;
}

/** A used spring on a tester at two heights, and how much it may have lost if that is known. */
export interface TestedSpring extends OwnRatioLimits {
  /** At the height of the closed valve. */
  readonly closed: ForceAtHeight;
  /** At the height of the open valve. */
  readonly open: ForceAtHeight;
  /** How far the tester may be off, either way; by default it is taken as right [N]. */
  readonly forceWithin?: Force;
}

/** What a spring was found to be. */
export interface SpringTest {
  /** Rate between the two heights [N/m]. */
  readonly rate: Stiffness;
  /** The rate with the tester's error either way; where the error is as large as the difference, its least is nothing [N/m]. */
  readonly rateSpan: Span<Stiffness>;
  /** Height at which it would press no more, by that rate [m]. */
  readonly freeHeight: Length;
  /** That rate over the one specified; absent without both forces. A spring sags and loses force, but its rate stays: one far off is another spring, a rusted one or a wrong reading [-]. */
  readonly rateShare?: Ratio;
  /** Share of its force that it has lost, valve closed; absent without a force specified. */
  readonly closed?: Finding<'ratio'>;
  /** The same, valve open. */
  readonly open?: Finding<'ratio'>;
}

const TESTED = ['closed', 'open', 'forceWithin', 'limits', 'basis'] as const;
const READING = ['height', 'force', 'specified'] as const;

/**
 * A valve spring on a tester at two heights: its rate, and how much of its force it has lost.
 *
 *     rate = (openForce - closedForce) / (closedHeight - openHeight)
 *     freeHeight = closedHeight + closedForce / rate
 *     lost = 1 - closedForce / closedSpecified
 *     rateShare = rate / ((openSpecified - closedSpecified) / (closedHeight - openHeight))
 *
 * The loss is judged by the caller's limits first, else by the 10 % of another engine's manual (TM 10-3930-644-14&P), past which
 * the grade is undecided. The force of the closed valve tells a tired spring best. Shims give a sagged spring its force
 * back for a while and bring it nearer to coil bind; a valve that sits deeper has made the spring longer, which a test at the
 * printed heights does not show: test it at the height that it has. A spring on a tester flies if it slips: guard it.
 *
 * @param tested - forces at the two heights, those that are specified, the tester's error, and the limits if they are known
 * @returns rate, free height by it, and a finding on the loss at each height that has a force specified
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the open height is not
 * below the closed one, or the open force is not above the closed one
 * @see Source: Hooke's law; TM 10-3930-644-14&P, chapter 4, for the 10 %
 * @example
 * ```ts
 * const test = springTest({
 *   closed: { height: inch(1.095), force: lbf(17), specified: lbf(19) },
 *   open: { height: inch(0.88), force: lbf(40), specified: lbf(42) },
 * });
 * format(test.rate, lbfPerInch, 0); // "107 lbf/in"
 * test.closed && format(test.closed.value, percent, 1); // "10.5 %"
 * test.closed?.grade; // "undecided"
 * test.open?.grade; // "serviceable"
 * ```
 */
export function springTest(tested: TestedSpring): SpringTest {
  guardFields('tested', tested, TESTED);
  const closed = guardReading('closed', tested.closed);
  const open = guardReading('open', tested.open);
  const { height, force } = closed;
  guardPressedFurther(closed, open);
  const within =
    tested.forceWithin === undefined ? 0 : forceError('forceWithin', tested.forceWithin);
  const allowed = ownRatioLimitsOr(tested, MOST_LOST, toleratedLoss, 'tested');
  const pressed = height - open.height;
  const gained = open.force - force;
  const rate = gained / pressed;
  const lostClosed = lossOf(closed, 'closed', within, allowed);
  const lostOpen = lossOf(open, 'open', within, allowed);
  const share = specifiedGain(closed, open);
  return {
    rate: rate as Stiffness,
    rateSpan: {
      min: Math.max(0, gained - 2 * within) / pressed,
      max: (gained + 2 * within) / pressed,
    } as Span<Stiffness>,
    freeHeight: (height + force / rate) as Length,
    ...(share !== undefined && { rateShare: (gained / share) as Ratio }),
    ...(lostClosed && { closed: lostClosed }),
    ...(lostOpen && { open: lostOpen }),
  };
}

function guardReading(at: string, reading: ForceAtHeight): ForceAtHeight {
  guardFields(at, reading, READING);
  springHeight(`${at}.height`, reading.height);
  springForce(`${at}.force`, reading.force);
  if (reading.specified !== undefined) springForce(`${at}.specified`, reading.specified);
  return reading;
}

/** Refuses readings that are not of one spring pressed further: by a thousandth, or no rate can be told from them. */
function guardPressedFurther(closed: ForceAtHeight, open: ForceAtHeight): void {
  if (open.height > 0.999 * closed.height) {
    throw new RebuildInputError({
      parameter: 'open.height',
      value: open.height,
      shown: showLength(open.height),
      expected: `a height below that of the closed valve, ${showLength(closed.height)}`,
      hint: 'A spring is shorter with its valve open. Are the two swapped?',
    });
  }
  for (const of of ['force', 'specified'] as const) {
    const [less, more] = [closed[of], open[of]];
    if (less === undefined || more === undefined || more >= 1.001 * less) continue;
    throw new RebuildInputError({
      parameter: `open.${of}`,
      value: more,
      shown: showIn(more, newton),
      expected: `a force above that of the closed valve, ${showIn(less, newton)}`,
      hint: 'A spring presses harder with its valve open. Are the two swapped?',
    });
  }
}

/** The share of its force that a spring has lost at one height, against its limits. */
function lossOf(
  { force, specified }: ForceAtHeight,
  at: 'closed' | 'open',
  within: number,
  allowed: BasedLimits<'ratio'>,
): Finding<'ratio'> | undefined {
  if (specified === undefined) return undefined;
  return judge({
    feature: `force lost, valve ${at}`,
    dimension: 'ratio',
    value: (1 - force / specified) as Ratio,
    ...allowed,
    ...(within > 0 && { uncertainty: (within / specified) as Ratio }),
  });
}

/** How much more the spring should press with its valve open, if that is known. */
function specifiedGain(closed: ForceAtHeight, open: ForceAtHeight): number | undefined {
  if (closed.specified === undefined || open.specified === undefined) return undefined;
  return open.specified - closed.specified;
}

const MOST_LOST: BasedLimits<'ratio'> = {
  limits: { max: 0.1 as Ratio },
  limitsOf: 'service',
  basis: SPRING_LOSS_LIMIT,
};
