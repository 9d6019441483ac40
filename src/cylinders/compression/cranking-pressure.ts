import type { Basis, SizeOrSpan, Span } from '../../judging/index.js';
import { guardFields, guardSpan } from '../../judging/internal.js';
import type { CrankTrain } from '../../motion/index.js';
import {
  airPressure,
  geometricCompression,
  guardCrankTrain,
  polytropicExponent,
  positionAt,
} from '../../motion/internal.js';
import {
  type Angle,
  type GaugePressure,
  type Length,
  type Pressure,
  type Ratio,
  standardAtmosphere,
} from '../../quantities/index.js';
import { inletClosing } from './domains.js';

/** A cylinder that is cranked with its throttle wide open. */
export interface CrankedCylinder extends CrankTrain {
  /** Compression ratio by geometry, as `compressionRatio` gives it [-]. */
  readonly compressionRatio: SizeOrSpan<Ratio>;
  /** How far past bottom dead centre the inlet valve is shut, read at the lash it runs with; a two-stroke's exhaust port [rad]. */
  readonly inletCloses: SizeOrSpan<Angle>;
  /** Absolute pressure of the air around; by default the standard one at the sea [Pa]. */
  readonly airPressure?: Pressure;
  /** The polytropic exponent, which holds what cold walls and leaks take; by default 1.2 to 1.3 [-]. */
  readonly exponent?: SizeOrSpan<Ratio>;
}

/** What a compression gauge may be expected to show. */
export interface CrankingPressure {
  /** What of its stroke the piston still has to travel once the valve is shut [m]. */
  readonly travelLeft: Span<Length>;
  /** The ratio that is left from there on [-]. */
  readonly effectiveRatio: Span<Ratio>;
  /** What the gauge may show, from the worst of all to the best [Pa]. */
  readonly gauge: Span<GaugePressure>;
  /** Where the exponent comes from. It is an estimate at best. */
  readonly basis: Basis;
}

const CRANKED = [
  'stroke',
  'rodLength',
  'compressionRatio',
  'inletCloses',
  'airPressure',
  'exponent',
] as const;

/**
 * What a sound cylinder may show on a compression gauge: an **estimate**, to tell a wrong gauge or a wrong cam from a
 * worn engine, and no limit. Only what is shut in after the inlet valve closes is squeezed; the piston's place there is
 * exact.
 *
 *     r = stroke / 2
 *     rodAngle = asin(r / rodLength * sin(inletCloses))
 *     travelLeft = r * (1 + cos(inletCloses)) + rodLength * (1 - cos(rodAngle))
 *     effectiveRatio = 1 + (compressionRatio - 1) * travelLeft / stroke
 *     gauge = airPressure * (effectiveRatio ^ exponent - 1)
 *
 * How fast it is cranked and how much leaks and cools stands in the exponent alone. Without loss it would be 1.4. The
 * usual 1.2 to 1.3 is a rule of thumb for a starter and several turns; swung by hand, cold or leaking it lies below.
 * The gauge's own hose and valve belong to the space that is squeezed and make a small cylinder read low. A
 * decompressor and a closed throttle do so as well.
 *
 * Pull the plugs out, earth their leads away from the openings, shut the fuel, and keep clear of what turns.
 *
 * @param cylinder - crank, rod, ratio, where the valve closes, and the air around
 * @returns what the gauge may show as a span, with the stroke and the ratio that are left
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or
 * the rod cannot belong to the stroke
 * @see Source: geometry of the slider-crank; polytropic compression; the span of exponents is common practice
 * @example
 * ```ts
 * const { gauge, effectiveRatio } = crankingPressure({
 *   stroke: inch(3.25), rodLength: inch(6), compressionRatio: ratio(5.5), inletCloses: degree(50),
 * });
 * effectiveRatio.min.toFixed(2); // "4.88"
 * format(gauge.min, psiGauge, 0); // "84 psi gauge"
 * format(gauge.max, psiGauge, 0); // "101 psi gauge"
 * ```
 */
export function crankingPressure(cylinder: CrankedCylinder): CrankingPressure {
  guardFields('cylinder', cylinder, CRANKED);
  guardCrankTrain(cylinder);
  const { stroke } = cylinder;
  const ratio = guardSpan(
    'compressionRatio',
    cylinder.compressionRatio,
    geometricCompression,
    'ratio',
  );
  const closes = guardSpan('inletCloses', cylinder.inletCloses, inletClosing, 'angle');
  const { airPressure: air = standardAtmosphere, exponent = USUAL } = cylinder;
  airPressure('airPressure', air);
  const by = guardSpan('exponent', exponent, polytropicExponent, 'ratio');
  // The later it closes, the less is left.
  const least = positionAt(cylinder, Math.PI - closes.max);
  const most = positionAt(cylinder, Math.PI - closes.min);
  const low = 1 + ((ratio.min - 1) * least) / stroke;
  const high = 1 + ((ratio.max - 1) * most) / stroke;
  return {
    travelLeft: { min: least, max: most },
    effectiveRatio: { min: low, max: high } as Span<Ratio>,
    gauge: {
      min: air * (low ** by.min - 1),
      max: air * (high ** by.max - 1),
    } as Span<GaugePressure>,
    basis: cylinder.exponent === undefined ? RULE : OWN,
  };
}

const USUAL = { min: 1.2 as Ratio, max: 1.3 as Ratio } as const;
const RULE: Basis = {
  kind: 'common practice',
  rule: 'polytropic exponent of 1.2 to 1.3 for a warm engine on its starter; lower by hand, cold or leaking',
};
const OWN: Basis = { kind: 'specified' };
