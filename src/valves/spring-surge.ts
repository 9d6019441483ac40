import { type BasedLimits, type Finding, judge, type Limits } from '../judging/index.js';
import { guardFields } from '../judging/internal.js';
import type { Rate, Ratio, RotationalSpeed } from '../quantities/index.js';
import { camshaftSpeed, surgeRate, swingsInATurn } from './domains.js';
import { type OwnRatioLimits, ownRatioLimitsOr } from './ratio-limits.js';

/** A spring over its cam at the highest speed, and the limits of the order if they are known. */
export interface SurgingSpring extends OwnRatioLimits {
  /** Lowest natural frequency of the spring, as `valveSpring` gives it [1/s]. */
  readonly surgeFrequency: Rate;
  /** Highest speed of the camshaft: half that of the crankshaft of a four-stroke engine [rad/s]. */
  readonly camSpeed: RotationalSpeed;
}

/** How a spring's own swing stands to its cam. */
export interface SpringSurge {
  /** How often the spring swings in one turn of the cam at that speed [-]. */
  readonly order: Ratio;
  /** The lowest harmonic of the cam that meets the spring at that speed or below it. */
  readonly lowestHarmonic: number;
  /** The speed of the camshaft at which it does [rad/s]. */
  readonly meetsAt: RotationalSpeed;
  /** The spring's frequency against the limits of the order times that of the cam, by default of a rule of thumb. */
  readonly finding: Finding<'rate'>;
}

const SURGING = ['surgeFrequency', 'camSpeed', 'limits', 'basis'] as const;

/**
 * Whether a valve spring may surge: a cam lifts in many harmonics at once, and one that meets the spring's own swing
 * sends waves up and down its coils. The spring then loses force while it should close the valve, and breaks.
 *
 *     order = 2 * π * surgeFrequency / camSpeed
 *     meetsAt = 2 * π * surgeFrequency / lowestHarmonic
 *
 * The lowest harmonics are the strong ones, so a high order is what is wanted. It is judged by the caller's limits
 * first, else by the rule that textbooks give, 15 to 20 times, at its safe end. The harmonics of a mild cam die
 * out well below that, those of a harsh one do not, so the rule condemns no spring. Uneven pitch and a damper inside the
 * coils help. Slow engines are far from it with almost any spring.
 *
 * @param surging - natural frequency of the spring and speed of the camshaft, and the limits if they are known
 * @returns the order, the lowest harmonic that meets the spring and at what speed, and a finding
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: Shigley, Mechanical Engineering Design, section 10-8, from memory; the rule is repeated in handbooks of
 * springs
 * @example
 * ```ts
 * const { order, lowestHarmonic, finding } = springSurge({
 *   surgeFrequency: perSecond(424), camSpeed: rpm(900),
 * });
 * order.toFixed(1); // "28.3"
 * lowestHarmonic; // 29
 * finding.verdict; // "within"
 * ```
 */
export function springSurge(surging: SurgingSpring): SpringSurge {
  guardFields('surging', surging, SURGING);
  const frequency = surgeRate('surgeFrequency', surging.surgeFrequency);
  const speed = camshaftSpeed('camSpeed', surging.camSpeed);
  const allowed = ownRatioLimitsOr(surging, FAR_ENOUGH, swingsInATurn, 'surging');
  const swings = 2 * Math.PI * frequency;
  const order = (swings / speed) as Ratio;
  const lowestHarmonic = Math.max(1, Math.ceil(order * (1 - 1e-12)));
  return {
    order,
    lowestHarmonic,
    meetsAt: (swings / lowestHarmonic) as RotationalSpeed,
    finding: judge({
      feature: 'surge frequency',
      dimension: 'rate',
      value: frequency,
      limits: ofCam(allowed.limits, speed),
      basis: allowed.basis,
    }),
  };
}

/** Limits of the order as frequencies, over a cam of that speed. */
function ofCam({ min, max }: Limits<Ratio>, speed: RotationalSpeed): Limits<Rate> {
  const turns = speed / (2 * Math.PI);
  return {
    ...(min !== undefined && { min: (min * turns) as Rate }),
    ...(max !== undefined && { max: (max * turns) as Rate }),
  };
}

const FAR_ENOUGH: BasedLimits<'ratio'> = {
  limits: { min: 20 as Ratio },
  basis: {
    kind: 'common practice',
    rule: 'a spring swings by itself 15 to 20 times as fast as its cam turns; 20 is taken',
  },
};
