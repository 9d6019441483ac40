import type { Finding, OwnLimits, SizeOrSpan, Span } from '../../judging/index.js';
import {
  diameter,
  diametralClearance,
  guardFields,
  guardLength,
  guardOwnLimits,
  guardSpan,
  guardWord,
  type WithTarget,
} from '../../judging/internal.js';
import { gapOf, partTemperature } from '../../measuring/internal.js';
import type { Length, Temperature } from '../../quantities/index.js';
import { type Contact, findingsOn, ownFindings, ownLimitsOnly } from '../warm/contact.js';
import { warmedSpan } from '../warm/piston-clearance.js';
import { growthOf, namesOutside, ROOM, type RunningPart } from '../warm/running-part.js';

/**
 * How a pin sits in one bore. `floating` in the bosses of a piston, it may be tight cold but turns warm. In a `bushing` it
 * turns cold and warm. `press`: it is held, by its small end or by the bosses.
 */
export type PinJoint = 'floating' | 'bushing' | 'press';

/** A piston pin in one of its bores, each reading as far as it was taken, with the limits of the clearance on the bench. */
export interface PinInBore extends OwnLimits<'length'> {
  /** How it is to sit there. */
  readonly joint: PinJoint;
  /** Diameter of the pin where it sits in this bore [m]. */
  readonly pin?: SizeOrSpan<Length>;
  /** Diameter of the bore [m]. */
  readonly bore?: SizeOrSpan<Length>;
  /** How warm both were when they were measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
  /** The pin when the engine runs. */
  readonly warmPin?: RunningPart;
  /** The metal around the bore when the engine runs. */
  readonly warmBore?: RunningPart;
  /** Limits of the clearance when the engine runs. */
  readonly warmLimits?: OwnLimits<'length'>;
}

/** How a pin fits one of its bores. */
export interface PinFit {
  /** Diametral clearance on the bench; negative is an interference; absent without both readings [m]. */
  readonly clearance?: Span<Length>;
  /** The same when the engine runs; absent without the temperatures [m]. */
  readonly warmClearance?: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly ('warmBore' | 'warmPin')[];
  /** What was not given, so that nothing is said of it. */
  readonly missing: readonly ('pin' | 'bore' | 'limits' | 'warmPin' | 'warmBore')[];
  /** The worse ends against the caller's limits; and that the pin may not turn or not hold, if it may not. Empty is no pass. */
  readonly findings: readonly Finding<'length'>[];
}

const FIT = [
  'joint',
  'pin',
  'bore',
  'measuredAt',
  'warmPin',
  'warmBore',
  'warmLimits',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
const GIVEN = ['pin', 'bore', 'limits', 'warmPin', 'warmBore'] as const;
const JOINTS = ['floating', 'bushing', 'press'] as const;

const TURNS: Contact = {
  limits: { min: 0 as Length },
  basis: {
    kind: 'computed',
    how: 'a pin that is larger than its bore does not turn in it; how much clearance it needs this does not say',
  },
};
/** A pin just as large as its bore is not held: a micrometre is the least that a micrometer tells from none. */
const HELD: Contact = {
  limits: { max: -1e-6 as Length },
  basis: {
    kind: 'computed',
    how: 'a pin that is not larger than its bore is not held by it; how much interference it needs this does not say',
  },
};

/**
 * How a piston pin fits one of its bores: a boss of the piston, the bushing of the rod, or the small end that holds it.
 *
 *     clearance = bore - pin
 *     warmClearance = bore * (1 + boreExpansion * (boreTemperature - measuredAt)) - pin * (1 + pinExpansion * (pinTemperature - measuredAt))
 *
 * Bosses of aluminium grow away from a steel pin, so that one which goes in by the thumb, or only into a warm piston, runs free. One
 * that rattles cold is looser yet when warm. A bushing of bronze that its rod holds grows inwards, and its clearance shrinks: work
 * that out with `hotOilClearance`. A bore that is reamed, honed or ground after pressing is measured after it.
 *
 * Measure the pin in all places where it sits and across two ways, each boss by itself, and give the span. What was not given is
 * named as missing and not made up. It is judged by the caller's limits; without them a pin is found that may be too tight to turn,
 * or too loose to be held, and nothing else: not that it is loose.
 *
 * How hard a press fit holds, and whether its small end bears it, `pressFit` tells; how hot to make a small end, `shrinkTemperature`:
 * a pin that grips halfway is lost, and the rod with it. Heat a piston for its pin in hot water or an oven and not with a torch, and
 * wear gloves. Locks of a pin are new each time: one that comes out scores its bore.
 *
 * @param fit - how the pin is to sit, pin and bore as measured, how warm they run, and the limits, each as far as it is known
 * @returns clearance on the bench and when warm [m], what is missing, and what was found
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the range of a
 * mean is reversed, limits have no bound, the joint is unknown, or the bore was never of the pin
 * @see Source: geometry and linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const fit = pinFit({
 *   joint: 'floating', pin: mm(20), bore: mm(19.998),
 *   warmPin: { expansion: meanExpansion('steel'), temperature: celsius(130) },
 *   warmBore: { expansion: meanExpansion('cast piston alloy'), temperature: celsius(150) },
 * });
 * fit.clearance && format(fit.clearance.min, micrometre); // "-2.0 µm"
 * // At the tightest: -2 + 20000 * (19.5e-6 * 130 - 12.1e-6 * 110) = 22.1 µm.
 * fit.warmClearance && format(fit.warmClearance.min, micrometre); // "22.1 µm"
 * fit.missing; // ["limits"]
 * ```
 */
export function pinFit(fit: PinInBore): PinFit {
  guardFields('fit', fit as WithTarget<PinInBore>, FIT);
  const joint = guardWord('joint', fit.joint, JOINTS);
  const { pin, bore } = guardSizes(fit);
  const allowed = ownLimitsOnly('fit', fit, diametralClearance);
  const { warmLimits = {} } = fit;
  guardOwnLimits('warmLimits', warmLimits);
  const allowedWarm = ownLimitsOnly('warmLimits', warmLimits, diametralClearance);
  const grows = growthsOf(fit);
  const missing = GIVEN.filter((field) =>
    field === 'limits' ? !fit.limits && !fit.service : fit[field] === undefined,
  );
  const outsideRange = namesOutside(grows);
  if (!pin || !bore) return { outsideRange, missing, findings: [] };
  const clearance = gapOf(bore, pin);
  const contact = joint === 'press' ? HELD : TURNS;
  const onBench =
    joint === 'floating'
      ? ownFindings('pin clearance', clearance, allowed)
      : findingsOn('pin clearance', clearance, allowed, contact);
  const { warmPin, warmBore } = grows;
  if (!warmPin || !warmBore) return { clearance, outsideRange, missing, findings: onBench };
  const warmClearance = gapOf(warmedSpan(bore, warmBore.by), warmedSpan(pin, warmPin.by));
  const whenWarm = findingsOn('pin clearance when warm', warmClearance, allowedWarm, contact);
  return {
    clearance,
    warmClearance,
    outsideRange,
    missing,
    findings: [...onBench, ...whenWarm],
  };
}

/** Pin and bore as far as they were read, of about one size if both were. */
function guardSizes({ pin, bore }: PinInBore) {
  const read = pin === undefined ? undefined : guardSpan('pin', pin, diameter);
  if (bore === undefined) return { pin: read, bore: undefined };
  const around = guardSpan('bore', bore, (at, size) =>
    read === undefined
      ? diameter(at, size)
      : guardLength(at, diameter(at, size), [0.9 * read.max, 1.1 * read.min], diameter.example),
  );
  return { pin: read, bore: around };
}

function growthsOf({ warmPin, warmBore, measuredAt = ROOM }: PinInBore) {
  const measured = partTemperature('measuredAt', measuredAt);
  return {
    ...(warmBore !== undefined && { warmBore: growthOf('warmBore', warmBore, measured) }),
    ...(warmPin !== undefined && { warmPin: growthOf('warmPin', warmPin, measured) }),
  };
}
