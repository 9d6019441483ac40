import type { Finding, OwnLimits, SizeOrSpan, Span } from '../../judging/index.js';
import {
  diameter,
  diametralClearance,
  guardAlike,
  guardFields,
  guardSpan,
  type WithTarget,
} from '../../judging/internal.js';
import { gapOf, partTemperature } from '../../measuring/internal.js';
import type { Length, Temperature } from '../../quantities/index.js';
import { wantedRoom } from '../domains.js';
import { type Contact, findingsOn, ownLimitsOnly } from './contact.js';
import { growthOf, namesOutside, ROOM, type RunningPart } from './running-part.js';

/** A piston and its bore, and how warm each of them runs. */
export interface WarmPistonInBore {
  /** The bore, be it a liner or the block around it. */
  readonly warmBore: RunningPart;
  /** The piston where it is measured, as a rule at its skirt; the crown is warmer. */
  readonly warmPiston: RunningPart;
  /** How warm both were when they were measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
}

/** A part of the two whose coefficient is used outside of its temperatures. */
export type OutsideInBore = 'warmBore' | 'warmPiston';

/** A piston to be fitted to its bore. */
export interface PistonToFit extends WarmPistonInBore {
  /** Bore diameter as measured [m]. */
  readonly bore: Length;
  /** The least diametral clearance that is wanted warm [m]. */
  readonly hotClearance: Length;
}

/** What to fit a piston to cold. */
export interface ColdPistonClearance {
  /** Diametral clearance cold, for the least and the most that the parts may grow. Fit the most, or the piston may seize [m]. */
  readonly clearance: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly OutsideInBore[];
}

/** A piston in its bore, as measured, and the limits of its clearance when warm if they are known. */
export interface PistonToWarm extends WarmPistonInBore, OwnLimits<'length'> {
  /** Bore diameter as measured [m]. */
  readonly bore: SizeOrSpan<Length>;
  /** Piston diameter as measured across its thrust faces [m]. */
  readonly piston: SizeOrSpan<Length>;
}

/** The clearance of a warm piston. */
export interface HotPistonClearance {
  /** Diametral clearance when warm, at the worst of sizes, growth and temperatures; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly OutsideInBore[];
  /** The worse end against the caller's limits; and that the piston may seize, if it may. Empty is no pass: without limits only that is judged. */
  readonly findings: readonly Finding<'length'>[];
}

const TO_FIT = ['bore', 'hotClearance', 'warmBore', 'warmPiston', 'measuredAt'] as const;
const TO_WARM = [
  'bore',
  'piston',
  'warmBore',
  'warmPiston',
  'measuredAt',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

const SEIZES: Contact = {
  limits: { min: 0 as Length },
  basis: {
    kind: 'computed',
    how: 'a piston as large as its bore seizes; how much clearance it needs this does not say',
  },
};

/**
 * What clearance a piston needs cold, to have the least that is wanted when warm. Bore and piston are of any two metals
 * and each at a temperature of its own: a piston of aluminium grows about twice as much as iron, and is hotter besides.
 *
 *     warmedBore = bore * (1 + boreExpansion * (boreTemperature - measuredAt))
 *     clearance = bore - (warmedBore - hotClearance) / (1 + pistonExpansion * (pistonTemperature - measuredAt))
 *
 * Give temperatures as spans: they are hardly ever known, and the most that comes out of them is what to fit. It holds
 * where the piston was measured. A skirt is oval and tapered so that it gets round and straight when warm, and the
 * lands above it are hotter and need far more. A liner in a block of another metal grows by something between the two:
 * give both as one span. The worst is not the warmest engine but the one whose piston is hot while its bore is still
 * cold: work that case too. The maker's clearance comes first, since it was found by running engines.
 *
 * @param fit - bore, clearance wanted warm, how both parts grow, and how warm they run
 * @returns clearance cold [m], with the parts outside the range of their coefficients
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or
 * the range of a mean is reversed
 * @see Source: linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const { clearance } = coldPistonClearance({
 *   bore: mm(80), hotClearance: mm(0.03),
 *   warmBore: { expansion: meanExpansion('grey iron'), temperature: celsius(100) },
 *   warmPiston: {
 *     expansion: meanExpansion('cast piston alloy'), temperature: { min: celsius(140), max: celsius(180) },
 *   },
 * });
 * // At the tightest: 79.76 * 21.5e-6 * 160 - 80 * 10.4e-6 * 80 + 0.03 = 0.2378 mm.
 * format(clearance.max, mm); // "0.238 mm"
 * ```
 */
export function coldPistonClearance(fit: PistonToFit): ColdPistonClearance {
  guardFields('fit', fit, TO_FIT);
  const bore = diameter('bore', fit.bore);
  const wanted = wantedRoom('hotClearance', fit.hotClearance);
  const grows = growthsOf(fit);
  const [ofBore, ofPiston] = [grows.warmBore.by, grows.warmPiston.by];
  const cold = (boreGrows: number, pistonGrows: number) =>
    (bore - (bore * boreGrows - wanted) / pistonGrows) as Length;
  return {
    clearance: { min: cold(ofBore.max, ofPiston.min), max: cold(ofBore.min, ofPiston.max) },
    outsideRange: namesOutside(grows),
  };
}

/**
 * The clearance of a piston in its bore when both are warm, from their sizes cold: {@link coldPistonClearance} turned
 * round.
 *
 *     clearance = bore * (1 + boreExpansion * (boreTemperature - measuredAt)) - piston * (1 + pistonExpansion * (pistonTemperature - measuredAt))
 *
 * The least end is the one to judge by. Without limits of the caller's own only a piston that may seize is found, and
 * one that may not is not called good: it may be far too loose. All that {@link coldPistonClearance} says of its
 * result holds here.
 *
 * @param fit - bore and piston as measured, how they grow, how warm they run, and the limits when warm if they are known
 * @returns clearance when warm [m], with the parts outside the range of their coefficients, and what was found
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * range of a mean is reversed, limits have no bound, or the two are not of one cylinder
 * @see Source: linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const { clearance, findings } = hotPistonClearance({
 *   bore: mm(80), piston: mm(79.9),
 *   warmBore: { expansion: meanExpansion('grey iron'), temperature: celsius(100) },
 *   warmPiston: { expansion: meanExpansion('cast piston alloy'), temperature: celsius(180) },
 * });
 * format(clearance.min, mm); // "-0.108 mm"
 * findings[0]?.verdict; // "below"
 * ```
 */
export function hotPistonClearance(fit: PistonToWarm): HotPistonClearance {
  guardFields('fit', fit as WithTarget<PistonToWarm>, TO_WARM);
  const bore = guardSpan('bore', fit.bore, diameter);
  const piston = guardSpan('piston', fit.piston, diameter);
  guardAlike('piston', piston.min, 'bore', bore.max);
  guardAlike('piston', piston.max, 'bore', bore.min);
  const allowed = ownLimitsOnly('fit', fit, diametralClearance);
  const grows = growthsOf(fit);
  const clearance = gapOf(
    warmedSpan(bore, grows.warmBore.by),
    warmedSpan(piston, grows.warmPiston.by),
  );
  return {
    clearance,
    outsideRange: namesOutside(grows),
    findings: findingsOn('piston clearance when warm', clearance, allowed, SEIZES),
  };
}

/** A size that is anywhere in its span, grown by anything in its span. */
export const warmedSpan = (size: Span<Length>, by: Span<number>): Span<Length> => ({
  min: (size.min * by.min) as Length,
  max: (size.max * by.max) as Length,
});

function growthsOf({ warmBore, warmPiston, measuredAt = ROOM }: WarmPistonInBore) {
  const measured = partTemperature('measuredAt', measuredAt);
  return {
    warmBore: growthOf('warmBore', warmBore, measured),
    warmPiston: growthOf('warmPiston', warmPiston, measured),
  };
}
