import {
  type BasedLimits,
  type Basis,
  type Finding,
  judge,
  type SizeOrSpan,
  type Span,
} from '../judging/index.js';
import {
  diameter,
  guardBasis,
  guardBetween,
  guardFields,
  guardLimits,
  guardSpan,
  guardWord,
} from '../judging/internal.js';
import type { MeanExpansion } from '../measuring/index.js';
import { guardExpansion } from '../measuring/internal.js';
import { celsius, type Length, ppmPerKelvin, type Temperature } from '../quantities/index.js';
import { fittingTemperature, handlingRoom, interference } from './domains.js';
import { guardExcess } from './lame.js';

/** How hot a part may be made. */
export interface HeatingLimit {
  /** The most that is allowed [K]. */
  readonly limits: {
    /** The most [K]. */
    readonly max: Temperature;
  };
  /** Who set it; by default the caller. */
  readonly basis?: Basis;
}

/** A hub that is to go over a shaft by heat, cold or both. */
export interface ShrinkRequest {
  /** Bore of the hub, as measured [m]. */
  readonly diameter: Length;
  /** By how much the shaft is larger, in diameter, both measured equally warm [m]. */
  readonly diametralInterference: SizeOrSpan<Length>;
  /** Diametral gap wanted while it is put on [m]. */
  readonly handlingGap: Length;
  /** How the hub grows, for example from `meanExpansion`. */
  readonly hub: MeanExpansion;
  /** How the shaft grows. */
  readonly shaft: MeanExpansion;
  /** How cold or warm the shaft is while the hub goes on [K]. */
  readonly shaftTemperature: Temperature;
  /** How warm both were when they were measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
  /** How hot the hub may be made: your own limit, or that of `heatingLimit`. */
  readonly heating?: HeatingLimit;
}

/** How hot a hub must be. */
export interface ShrinkTemperature {
  /** Temperature of the hub for the least and the most that interference and expansion may be. Heat to the most [K]. */
  readonly hubTemperature: Span<Temperature>;
  /** What is used outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly ('hub' | 'shaft')[];
  /** The most against the limit of heating; absent without one. */
  readonly finding?: Finding<'temperature'>;
}

const REQUEST = [
  'diameter',
  'diametralInterference',
  'handlingGap',
  'hub',
  'shaft',
  'shaftTemperature',
  'measuredAt',
  'heating',
] as const;
const ROOM = 293.15 as Temperature;

/**
 * How hot a hub must be to drop over its shaft with a gap to spare, and how much of that a cold shaft saves. The
 * interference and the gap are diametral.
 *
 *     shaftSize = (diameter + diametralInterference) * (1 + shaft.coefficient * (shaftTemperature - measuredAt))
 *     hubTemperature = measuredAt + (shaftSize + handlingGap - diameter) / (hub.coefficient * diameter)
 *
 * The most is for the largest interference, the hub that grows least and the shaft that shrinks least: heat to that. Where
 * they go together without heat, it is the temperature they were measured at. Common practice is a gap of a thousandth of
 * the diameter: the hub cools, and the shaft warms, from the moment they touch, and one that grips halfway is lost.
 *
 * Without a limit of heating nothing is judged: give the maker's, or the rule of thumb that `heatingLimit` has for the
 * metal. Above its limit a hub loses its temper, or a casting cracks: cool the shaft as well, or press it. Heat evenly and
 * slowly, in an oven or in oil well below its flash point, and never cast iron with a torch at one spot. Magnesium alloys
 * can catch fire. Hot metal looks cold: wear dry gloves and cover your eyes. A closed hollow part bursts, and oil or solvent
 * in it burns. Dry ice and liquid nitrogen burn the skin, drive the air out of a closed room, and make some irons and
 * hardened steels brittle. The maker's manual comes first.
 *
 * @param fit - bore, interference, gap, how both parts grow, and how cold the shaft is
 * @returns temperature of the hub [K], with a finding if a limit of heating was given
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * range of a mean is reversed, the interference is more than a twentieth of the diameter, or the hub does not grow
 * @see Source: linear expansion; the coefficients name their own sources; the gap is common practice
 * @example
 * ```ts
 * const steel = meanExpansion('steel');
 * const { hubTemperature, finding } = shrinkTemperature({
 *   diameter: mm(40), diametralInterference: mm(0.059), handlingGap: mm(0.04),
 *   hub: steel, shaft: steel, shaftTemperature: celsius(20), heating: heatingLimit('mild steel'),
 * });
 * // (0.059 + 0.04) / (11.2e-6 * 40) = 221 K above 20 °C.
 * format(hubTemperature.max, celsius); // "241.0 °C"
 * finding?.verdict; // "within"
 * ```
 */
export function shrinkTemperature(fit: ShrinkRequest): ShrinkTemperature {
  guardFields('fit', fit, REQUEST);
  const d = diameter('diameter', fit.diameter);
  const excess = guardSpan('diametralInterference', fit.diametralInterference, (at, size) =>
    guardExcess(at, interference(at, size), d),
  );
  const gap = handlingRoom('handlingGap', fit.handlingGap);
  const hub = guardExpansion('hub', fit.hub);
  guardBetween(
    'hub.coefficient.min',
    hub.coefficient.min,
    ppmPerKelvin,
    GROWS,
    'ppmPerKelvin(11.5)',
  );
  const shaft = guardExpansion('shaft', fit.shaft);
  const cold = fittingTemperature('shaftTemperature', fit.shaftTemperature);
  const { measuredAt = ROOM } = fit;
  const measured = fittingTemperature('measuredAt', measuredAt);
  const limit = fit.heating === undefined ? undefined : guardHeating(fit.heating);
  const needed = (interfering: number, ofHub: number, ofShaft: number) => {
    const shaftSize = (d + interfering) * (1 + ofShaft * (cold - measured));
    return Math.max(measured, measured + (shaftSize + gap - d) / (ofHub * d)) as Temperature;
  };
  const [tight, loose] =
    cold < measured
      ? [shaft.coefficient.min, shaft.coefficient.max]
      : [shaft.coefficient.max, shaft.coefficient.min];
  const hubTemperature = {
    min: needed(excess.min, hub.coefficient.max, loose),
    max: needed(excess.max, hub.coefficient.min, tight),
  };
  const reaches = { hub: [hubTemperature.max, measured], shaft: [cold, measured] };
  return {
    hubTemperature,
    outsideRange: PARTS.filter((name) => {
      const { from, to } = { hub, shaft }[name];
      return reaches[name].some((reached) => reached < from || reached > to);
    }),
    ...(limit && { finding: findingOf(hubTemperature.max, limit) }),
  };
}

const PARTS = ['hub', 'shaft'] as const;
/** From a tenth of a metal's growth to past that of any [1/K]. */
const GROWS = [1e-6, 4e-5] as const;

function guardHeating(heating: HeatingLimit): BasedLimits<'temperature'> {
  guardFields('heating', heating, ['limits', 'basis']);
  const { limits, basis = { kind: 'specified' } } = heating;
  guardLimits('heating.limits', limits, fittingTemperature, 'temperature');
  return { limits, basis: guardBasis('heating.basis', basis) };
}

function findingOf(value: Temperature, limit: BasedLimits<'temperature'>) {
  return judge({ feature: 'hub temperature', dimension: 'temperature', value, ...limit });
}

/** What a hub is, for how hot it may be made. */
export type HeatedPart =
  | 'mild steel'
  | 'hardened and tempered steel'
  | 'case-hardened steel'
  | 'rolling bearing'
  | 'grey iron'
  | 'aluminium alloy';

/** The most [°C], and why. */
const HEATING = {
  'mild steel': [350, 'it scales and loses strength above'],
  'hardened and tempered steel': [200, 'it was tempered at an unknown heat, seldom below 200 °C'],
  'case-hardened steel': [150, 'it was tempered from 150 °C on'],
  'rolling bearing': [120, 'its rings change size and its grease and cage suffer above'],
  'grey iron': [250, 'heated slowly and evenly, since it cracks where one spot is hotter'],
  'aluminium alloy': [150, 'a heat-treated casting is aged from about 155 °C on, and softens'],
} as const satisfies Record<HeatedPart, readonly [most: number, because: string]>;

const HEATED = /* @__PURE__ */ Object.keys(HEATING) as HeatedPart[];

/**
 * How hot a part may be made to go over another, by rules of thumb. They are cautious and not of any one part: the maker's
 * own limit, and the heat at which a part was tempered, come first. A part lined with white metal, soldered, plated, glued
 * or of magnesium has no rule here.
 *
 * @param part - what the hub is
 * @returns the most, and the rule [K]
 * @throws {RebuildInputError} when the part is not in the table
 * @see Source: common practice, from memory
 * @example
 * ```ts
 * const { limits, basis } = heatingLimit('rolling bearing');
 * format(limits.max, celsius); // "120.0 °C"
 * basis.kind; // "common practice"
 * ```
 */
export function heatingLimit(part: HeatedPart): {
  /** The most that is allowed [K]. */
  readonly limits: {
    /** The most [K]. */
    readonly max: Temperature;
  };
  /** The rule. */
  readonly basis: Basis;
} {
  const [most, because] = HEATING[guardWord('part', part, HEATED)];
  const rule = `${part} is heated to ${most} °C at most: ${because}`;
  return { limits: { max: celsius(most) }, basis: { kind: 'common practice', rule } };
}
