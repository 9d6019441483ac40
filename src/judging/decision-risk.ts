import { integralBetween } from '../numerics/index.js';
import type { Dimension, Quantity, Ratio } from '../quantities/index.js';
import { guardDimension } from '../quantities/internal.js';
import { chanceBetween, guardSpread } from './conformance.js';
import { type DecisionRule, guardBandOf, guardRule } from './decision-rule.js';
import { guardFields, guardQuantity } from './guards.js';
import { guardLimits, type Limits } from './limits.js';

/** How a lot of parts came out before any of them is measured: normally distributed. */
export interface Lot<D extends Dimension> {
  /** Their mean, in the coherent SI unit of its dimension. */
  readonly mean: Quantity<D>;
  /** The standard deviation of the true values, without that of the readings, in the same unit. */
  readonly standardDeviation: Quantity<D>;
}

/** A lot of parts that are measured one by one and accepted by a rule. */
export interface InspectedLot<D extends Dimension> {
  /** Dimension of the values; by default a length. */
  readonly dimension?: D;
  /** How the parts came out. */
  readonly lot: Lot<NoInfer<D>>;
  /** Standard uncertainty of each measured value, half of an expanded one at about 95 %, in the same unit. */
  readonly standardUncertainty: Quantity<NoInfer<D>>;
  /** What the true values must lie between, in the same unit. */
  readonly limits: Limits<Quantity<NoInfer<D>>>;
  /** By which rule they are judged; by default by the whole expanded uncertainty, as `judge` does. */
  readonly rule?: DecisionRule<NoInfer<D>>;
}

const INSPECTED = ['dimension', 'lot', 'standardUncertainty', 'limits', 'rule'] as const;
const LOT = ['mean', 'standardDeviation'] as const;

/**
 * The chance that a part of a lot is judged `within` though it is not: the consumer's risk, for a
 * part that nobody has measured yet. Of a part that has been, `conformanceProbability` tells more.
 *
 * @param inspected - the lot, the uncertainty of the readings, the limits and the rule
 * @returns share of the whole lot that is accepted and should not be [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite, a limit is not finite, the limits are
 * reversed, there is no limit at all, a spread is not more than zero, the rule is unknown, or
 * the dimension is unknown
 * @see Source: JCGM 106:2012, 9.3 to 9.5 (global consumer's risk)
 * @example
 * ```ts
 * const pins = {
 *   lot: { mean: mm(20), standardDeviation: mm(0.004) },
 *   standardUncertainty: mm(0.001), limits: { min: mm(19.992), max: mm(20.008) },
 * };
 * const simple = falseAcceptanceRisk({ ...pins, rule: 'simple acceptance' });
 * simple.toFixed(4); // "0.0080"
 * const guarded = falseAcceptanceRisk(pins);
 * guarded.toFixed(5); // "0.00019"
 * ```
 */
export function falseAcceptanceRisk<D extends Dimension = 'length'>(
  inspected: InspectedLot<D>,
): Ratio {
  const { worst, best, accepted, steep } = guardInspected(inspected);
  const wrongly = (z: number) => density(z) * accepted(z);
  return (share(wrongly, best, Infinity, steep) + share(wrongly, -Infinity, worst, steep)) as Ratio;
}

/**
 * The chance that a part of a lot is not judged `within` though it is: the producer's risk. A
 * part that is left `undecided` counts as not accepted.
 *
 * @param inspected - the lot, the uncertainty of the readings, the limits and the rule
 * @returns share of the whole lot that is not accepted and should be [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite, a limit is not finite, the limits are
 * reversed, there is no limit at all, a spread is not more than zero, the rule is unknown, or
 * the dimension is unknown
 * @see Source: JCGM 106:2012, 9.3 to 9.5 (global producer's risk)
 * @example
 * ```ts
 * const risk = falseRejectionRisk({
 *   lot: { mean: mm(20), standardDeviation: mm(0.004) },
 *   standardUncertainty: mm(0.001), limits: { min: mm(19.992), max: mm(20.008) },
 *   rule: 'simple acceptance',
 * });
 * risk.toFixed(3); // "0.015"
 * ```
 */
export function falseRejectionRisk<D extends Dimension = 'length'>(
  inspected: InspectedLot<D>,
): Ratio {
  const { worst, best, accepted, steep } = guardInspected(inspected);
  return share((z) => density(z) * (1 - accepted(z)), worst, best, steep) as Ratio;
}

/** The share of a lot between two places, in pieces that end where the function is steep. */
function share(
  of: (z: number) => number,
  worst: number,
  best: number,
  steep: readonly number[],
): number {
  const [from, to] = [Math.max(worst, -FAR), Math.min(best, FAR)];
  const places = steep.filter((z) => z > from && z < to).sort((a, b) => a - b);
  const ends = [from, ...places, to];
  return places
    .concat(to)
    .reduce((sum, end, i) => sum + integralBetween(of, ends[i] as number, end), 0);
}

/** So many standard deviations out there is less than 1e-18 left. */
const FAR = 9;

/** The density of a standard normal value. */
const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Everything in standard deviations of the lot from its mean. */
function guardInspected<D extends Dimension>(inspected: InspectedLot<D>) {
  guardFields('inspected', inspected, INSPECTED);
  const { dimension: given = 'length' as D } = inspected;
  const dimension = guardDimension(given);
  guardFields('lot', inspected.lot, LOT);
  const mean = guardQuantity('lot.mean', inspected.lot.mean, dimension);
  const spread = guardSpread('lot.standardDeviation', inspected.lot.standardDeviation, dimension);
  const doubt = guardSpread('standardUncertainty', inspected.standardUncertainty, dimension);
  const { min, max } = guardLimits(
    'limits',
    inspected.limits,
    (parameter, bound) => guardQuantity(parameter, bound, dimension),
    dimension,
  );
  const rule = guardRule('rule', inspected.rule, dimension);
  const uncertainty = (2 * doubt) as Quantity<D>;
  const band = guardBandOf<D>({ ...(rule && { rule }), uncertainty });
  const [low, high] = [(min ?? -Infinity) - mean, (max ?? Infinity) - mean];
  const isNever = low + band > high - band;
  /** How far about a limit of acceptance readings still go both ways. */
  const reach = (FAR * doubt) / spread;
  return {
    worst: low / spread,
    best: high / spread,
    /** Where the density or the chance to be accepted bends most. */
    steep: [0, ...around((low + band) / spread, reach), ...around((high - band) / spread, reach)],
    accepted: (z: number) =>
      isNever
        ? 0
        : chanceBetween((low + band - z * spread) / doubt, (high - band - z * spread) / doubt),
  };
}

const around = (place: number, reach: number) => [place - reach, place, place + reach];
