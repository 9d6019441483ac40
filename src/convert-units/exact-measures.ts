import { coherentUnit, type Dimension, tradeUnit, type UnitSymbol } from '../quantities/index.js';
import { scales } from '../quantities/internal.js';
import type { ExactMeasures, ExactUnit, SameAnchor } from './measure-types.js';
import { unitWords } from './unit-words.js';

/** A measure whose families and units the compiler does not know; `ExactMeasures` names them. */
interface AnyMeasure {
  readonly systems: Readonly<Record<string, Readonly<Record<string, ExactUnit>>>>;
  readonly anchors: Readonly<Record<string, Readonly<Record<string, SameAnchor>>>>;
}

function measureOf(dimension: Dimension): AnyMeasure {
  // Zero stands where the metric scale has it: so °C needs no shift, and from °C or to °C
  // the engine adds only once.
  const zero = scales[tradeUnit(dimension, 'metric').symbol]?.shift ?? 0;
  const systems: Record<string, Record<string, ExactUnit>> = {};
  for (const [symbol, scale] of Object.entries(scales)) {
    if (scale.dimension !== dimension) continue;
    const [system, singular, plural] = unitWords[symbol as UnitSymbol];
    const shift = zero - scale.shift;
    systems[system] ??= {};
    systems[system][symbol] = {
      name: { singular, plural },
      to_anchor: scale.factor,
      ...(shift !== 0 && { anchor_shift: shift }),
    };
  }
  return { systems, anchors: joined(Object.keys(systems)) };
}

/** Every family joined to every other by the factor 1: all count in the same anchor. */
function joined(families: readonly string[]): AnyMeasure['anchors'] {
  const same: SameAnchor = { ratio: 1 };
  const othersThan = (family: string) =>
    families.filter((other) => other !== family).map((other) => [other, same]);
  return Object.fromEntries(
    families.map((family) => [family, Object.fromEntries(othersThan(family))]),
  );
}

const allMeasures = (): Readonly<Record<string, AnyMeasure>> =>
  Object.fromEntries(Object.keys(coherentUnit).map((name) => [name, measureOf(name as Dimension)]));

/**
 * Every unit of this library as a measure for convert-units 3, with exact factors: for a tool that
 * converts with that library already. One measure for each dimension; give all of them to
 * `configureMeasurements`, or some. Whatever is kept apart here is a measure of its own and does
 * not convert: absolute and gauge pressure, a temperature and a difference, torque and energy,
 * fractions by volume and by mass.
 *
 * Factors are whole numbers of one anchor. So that engine rounds twice, where it multiplies and
 * where it divides, and gives to the last digit what `convert` gives. No double holds the factors
 * of psi, ksi, inHg, hp, rpm and deg beside those of the other units; they are rounded once themselves.
 * Between °F and K or °R the engine adds twice; temperatures up to 1000 degrees come out within
 * 1e-12 of a degree.
 *
 * That engine has no guards: it takes NaN for 0, and a temperature below absolute zero as it comes.
 * `convert` refuses both.
 *
 * @see Source: NIST SP 811 (2008), appendix B
 * @example
 * ```ts
 * import configureMeasurements from 'convert-units';
 *
 * const convert = configureMeasurements(exactMeasures);
 * convert(2.1248).from('in').to('mm'); // 53.96992
 * convert(25).from('lbf·ft').to('N·m'); // 33.89544870828501
 * ```
 */
export const exactMeasures: ExactMeasures = /* @__PURE__ */ allMeasures() as ExactMeasures;
