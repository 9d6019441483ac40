import type { Finding, OwnLimits, Span } from '../../judging/index.js';
import { diameter, guardFields, type WithTarget } from '../../judging/internal.js';
import { partTemperature } from '../../measuring/internal.js';
import type { Length, Temperature } from '../../quantities/index.js';
import { ringGap, wantedRoom } from '../domains.js';
import { guardMeasured, type MeasuredRingGap } from '../ring-gap.js';
import { type Contact, findingsOn, ownLimitsOnly } from './contact.js';
import { growthOf, namesOutside, ROOM, type RunningPart } from './running-part.js';

/** A ring in its bore, and how warm each of them runs. */
export interface WarmRingInBore {
  /** The bore where it is coldest while the ring is hot. */
  readonly warmBore: RunningPart;
  /** The ring. */
  readonly warmRing: RunningPart;
  /** How warm both were when the gap was measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
}

/** A part of the two whose coefficient is used outside of its temperatures. */
export type OutsideAroundRing = 'warmBore' | 'warmRing';

/** A ring whose gap was measured cold, and the limits of its gap when warm if they are known. */
export interface RingToWarm extends MeasuredRingGap, WarmRingInBore, OwnLimits<'length'> {}

/** The gap of a warm ring. */
export interface HotRingGap {
  /** Gap when warm, with growth and temperatures anywhere in their spans; negative means the ends butt by so much [m]. */
  readonly gap: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly OutsideAroundRing[];
  /** The worse end against the caller's limits; and that the ends may butt, if they may. Empty is no pass: without limits only that is judged. */
  readonly findings: readonly Finding<'length'>[];
}

/** A ring that is to be gapped. */
export interface RingToGap extends WarmRingInBore {
  /** Diameter of the bore as measured, where it is smallest [m]. */
  readonly bore: Length;
  /** Least gap that is wanted when warm; by default none [m]. */
  readonly hotGap?: Length;
}

/** The gap that a ring needs cold. */
export interface LeastColdRingGap {
  /** Gap cold, for the least and the most that ring and bore may grow. The most is the least that is safe; negative, it needs none [m]. */
  readonly gap: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly OutsideAroundRing[];
}

const TO_WARM = [
  'gap',
  'measuredIn',
  'warmBore',
  'warmRing',
  'measuredAt',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;
const TO_GAP = ['bore', 'hotGap', 'warmBore', 'warmRing', 'measuredAt'] as const;

const BUTTS: Contact = {
  limits: { min: 0 as Length },
  basis: {
    kind: 'computed',
    how: 'ring ends that butt jam the ring in its bore and break it or its piston; how wide the gap may be this does not say',
  },
};

/**
 * The gap that a ring has when it and its bore are warm. The ring gets longer, the bore wider: the gap closes by π
 * times what the ring grows more than the bore, and in a bore that grows alone it opens as in {@link ringGapIn}.
 *
 *     L = π * measuredIn - gap
 *     gap when warm = π * measuredIn * (1 + boreExpansion * (boreTemperature - measuredAt)) - L * (1 + ringExpansion * (ringTemperature - measuredAt))
 *
 * L is the length of the ring round its outside. Measure the gap where the bore is smallest. Take the hottest ring and the coldest bore that meet: soon after a cold
 * start under load the ring is hot and the bore is not. The least end is the one to judge by. Without limits of the
 * caller's own only ends that may butt are found. A ring that butts jams, scores the bore and breaks itself or the
 * land above it.
 *
 * @param ring - gap and bore as measured, how ring and bore grow, how warm they run, and the limits when warm if they are known
 * @returns gap when warm [m], with the parts outside the range of their coefficients, and what was found
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * range of a mean is reversed, limits have no bound, or the gap is more than a tenth of the bore
 * @see Source: geometry and linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const iron = meanExpansion('grey iron');
 * const ring = { gap: mm(0.2), measuredIn: mm(80), warmBore: { expansion: iron, temperature: celsius(100) } };
 * const { gap, findings } = ringGapHot({ ...ring, warmRing: { expansion: iron, temperature: celsius(200) } });
 * // At the tightest: 0.2 - 251.3 * (11.4e-6 * 180 - 10.4e-6 * 80) = 0.2 - 0.307 mm.
 * format(gap.min, mm, 2); // "-0.11 mm"
 * findings[0]?.verdict; // "below"
 * ```
 */
export function ringGapHot(ring: RingToWarm): HotRingGap {
  guardFields('ring', ring as WithTarget<RingToWarm>, TO_WARM);
  const { gap, measuredIn } = guardMeasured(ring);
  const allowed = ownLimitsOnly('ring', ring, ringGap);
  const grows = growthsOf(ring);
  const around = Math.PI * measuredIn;
  const warm = (boreGrows: number, ringGrows: number) =>
    (around * boreGrows - (around - gap) * ringGrows) as Length;
  const [ofBore, ofRing] = [grows.warmBore.by, grows.warmRing.by];
  const hot = { min: warm(ofBore.min, ofRing.max), max: warm(ofBore.max, ofRing.min) };
  return {
    gap: hot,
    outsideRange: namesOutside(grows),
    findings: findingsOn('ring gap when warm', hot, allowed, BUTTS),
  };
}

/**
 * The gap that a ring needs cold so that its ends do not butt when warm: {@link ringGapHot} turned round.
 *
 *     gap = π * bore - (π * bore * (1 + boreExpansion * (boreTemperature - measuredAt)) - hotGap) / (1 + ringExpansion * (ringTemperature - measuredAt))
 *
 * What is wanted when warm is none, unless it is said. The most that comes out is the least safe gap for these
 * temperatures, and no better than they are. The rule of thumb of {@link recommendedRingGap} leaves room for an iron
 * ring some 85 K hotter than an iron bore, and no more: where this asks for more, believe this; where it asks for
 * less, keep to the rule or the maker.
 *
 * @param ring - bore as measured, gap wanted when warm, how ring and bore grow, and how warm they run
 * @returns gap cold [m], with the parts outside the range of their coefficients
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or the
 * range of a mean is reversed
 * @see Source: geometry and linear expansion; the coefficients name their own
 * @example
 * ```ts
 * const iron = meanExpansion('grey iron');
 * const { gap } = leastColdRingGap({
 *   bore: mm(80),
 *   warmBore: { expansion: iron, temperature: celsius(100) },
 *   warmRing: { expansion: iron, temperature: { min: celsius(150), max: celsius(200) } },
 * });
 * format(gap.max, mm, 2); // "0.31 mm"
 * ```
 */
export function leastColdRingGap(ring: RingToGap): LeastColdRingGap {
  guardFields('ring', ring, TO_GAP);
  const around = Math.PI * diameter('bore', ring.bore);
  const wanted = ring.hotGap === undefined ? 0 : wantedRoom('hotGap', ring.hotGap);
  const grows = growthsOf(ring);
  const cold = (boreGrows: number, ringGrows: number) =>
    (around - (around * boreGrows - wanted) / ringGrows) as Length;
  const [ofBore, ofRing] = [grows.warmBore.by, grows.warmRing.by];
  return {
    gap: { min: cold(ofBore.max, ofRing.min), max: cold(ofBore.min, ofRing.max) },
    outsideRange: namesOutside(grows),
  };
}

function growthsOf({ warmBore, warmRing, measuredAt = ROOM }: WarmRingInBore) {
  const measured = partTemperature('measuredAt', measuredAt);
  return {
    warmBore: growthOf('warmBore', warmBore, measured),
    warmRing: growthOf('warmRing', warmRing, measured),
  };
}
