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
import { gapOf } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { type Contact, findingsOn, ownFindings, ownLimitsOnly } from '../warm/contact.js';
import { warmedSpan } from '../warm/piston-clearance.js';
import { namesOutside } from '../warm/running-part.js';
import type { PinFit, PinInBore } from './pin-types.js';
import { warmedBore, warmPartsOf } from './warm-pin.js';

const FIT = [
  'joint',
  'pin',
  'bore',
  'measuredAt',
  'warmPin',
  'warmBore',
  'bushingWall',
  'warmBushing',
  'warmLimits',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
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
 * A bushing that is pressed in cannot grow outwards past its rod, and grows inwards:
 *
 *     held = (bore + 2 * bushingWall) * (1 + boreExpansion * (boreTemperature - measuredAt)) - 2 * bushingWall * (1 + bushingExpansion * (bushingTemperature - measuredAt)) - pin * (1 + pinExpansion * (pinTemperature - measuredAt))
 *
 * Bosses of aluminium grow away from a steel pin, so that one which goes in by the thumb, or only into a warm piston,
 * runs free. One that rattles cold is looser yet when warm. A bushing of bronze in a rod of steel closes on its pin
 * instead, so its wall is asked for. What is reamed, honed or ground after pressing is measured after it.
 *
 * Measure the pin in all places where it sits and across two ways, each boss by itself, and give the span. What was
 * not given is named as missing and not made up. It is judged by the caller's limits; without them a pin is found that
 * may be too tight to turn, or too loose to be held, and nothing else: not that it is loose.
 *
 * `pressFit` tells how hard a press fit holds and whether its small end bears it, `shrinkTemperature` how hot to make a small end.
 * A pin that grips halfway is lost, and the rod with it. Heat a piston for its pin in hot water or an oven and not
 * with a torch, and wear gloves. Locks of a pin are new each time: one that comes out scores its bore.
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
  const { wall, ...grows } = warmPartsOf(fit, joint);
  const missing = missingOf(fit, wall);
  const outsideRange = namesOutside(grows);
  if (!pin || !bore) return { outsideRange, missing, findings: [] };
  const clearance = gapOf(bore, pin);
  const contact = joint === 'press' ? HELD : TURNS;
  const onBench =
    joint === 'floating'
      ? ownFindings('pin clearance', clearance, allowed)
      : findingsOn('pin clearance', clearance, allowed, contact);
  const opening = warmedBore(bore, wall, grows);
  if (!opening || !grows.warmPin) return { clearance, outsideRange, missing, findings: onBench };
  const warmClearance = gapOf(opening, warmedSpan(pin, grows.warmPin.by));
  const whenWarm = findingsOn('pin clearance when warm', warmClearance, allowedWarm, contact);
  return { clearance, warmClearance, outsideRange, missing, findings: [...onBench, ...whenWarm] };
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

function missingOf(fit: PinInBore, wall: Length | undefined): PinFit['missing'] {
  const isMissing = {
    pin: fit.pin === undefined,
    bore: fit.bore === undefined,
    limits: fit.limits === undefined && fit.service === undefined,
    warmPin: fit.warmPin === undefined,
    warmBore: fit.warmBore === undefined,
    bushingWall: wall === undefined,
    warmBushing: wall !== 0 && fit.warmBushing === undefined,
  };
  return (Object.keys(isMissing) as (keyof typeof isMissing)[]).filter((name) => isMissing[name]);
}
