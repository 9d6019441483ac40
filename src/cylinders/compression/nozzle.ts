// Air through an opening, as it leaves a wide space: no friction, no heat, one temperature before it.

/**
 * How much passes an opening, in shares of `area * pressure / sqrt(gasConstant * temperature)`, by the ratio of the
 * absolute pressures behind and before it. Past the critical ratio the air is at the speed of sound, and nothing behind
 * matters.
 */
export function nozzleFlow(behindOverBefore: number): number {
  if (behindOverBefore <= CRITICAL) return CHOKED;
  return Math.sqrt(SEVEN * (behindOverBefore ** PER_GAMMA - behindOverBefore ** OVER_GAMMA));
}

// Air has a ratio of specific heats of 1.4.
/** 2 γ / (γ - 1) */
const SEVEN = 7;
/** 2 / γ */
const PER_GAMMA = 1.428_571_428_571_428_6;
/** (γ + 1) / γ */
const OVER_GAMMA = 1.714_285_714_285_714_2;
/** (2 / (γ + 1))^(γ / (γ - 1)) */
const CRITICAL = 0.528_281_787_717_174_2;
/** What passes at that ratio. */
const CHOKED = 0.684_731_456_377_270_5;
