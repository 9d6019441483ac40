import type { Span } from '../judging/index.js';
import { diameter, guardFields } from '../judging/internal.js';
import type { Length, Temperature, ThermalExpansion } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { partTemperature } from './domains.js';
import { guardExpansion, type MeanExpansion } from './expansion.js';

/** A part, or the instrument on it, while a size was read. */
export interface ReadWarm {
  /** How warm it was [K]. */
  readonly temperature: Temperature;
  /** How it grows, for example from `meanExpansion`. */
  readonly expansion: MeanExpansion;
}

/** A size that was read away from 20 °C. */
export interface SizeReadWarm {
  /** The size that the instrument showed [m]. */
  readonly size: Length;
  /** The part. */
  readonly part: ReadWarm;
  /** The instrument, right at 20 °C. */
  readonly instrument: ReadWarm;
}

/** What a size is at 20 °C. */
export interface SizeAt20C {
  /** Size at 20 °C, with each coefficient in the middle of its span [m]. */
  readonly size: Length;
  /** The same with the coefficients anywhere in their spans [m]. */
  readonly span: Span<Length>;
  /** What was read outside the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly ('part' | 'instrument')[];
}

const READ = ['size', 'part', 'instrument'] as const;
const WARM = ['temperature', 'expansion'] as const;
const BOTH = ['part', 'instrument'] as const;

/**
 * The size of a part at 20 °C, for which sizes are stated, from a reading at another temperature. A warm
 * instrument has grown and shows too little; a warm part has grown and measures too much.
 *
 *     at20C = size * (1 + instrumentExpansion * (instrumentTemperature - 293.15)) / (1 + partExpansion * (partTemperature - 293.15))
 *
 * A steel micrometer on a steel part needs no correction as long as both are equally warm.
 *
 * @param reading - the size that was read, and how warm the part and the instrument were
 * @returns the size at 20 °C, and what it lies between for the spread of the coefficients [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, or the range of a mean is reversed
 * @see Source: ISO 1 (20 °C); linear expansion; the coefficients name their own sources
 * @example
 * ```ts
 * const at30C = (material: EngineMaterial) =>
 *   ({ temperature: celsius(30), expansion: meanExpansion(material) });
 * const { size } = sizeAt20C({
 *   size: mm(70.01), part: at30C('cast piston alloy'), instrument: at30C('steel'),
 * });
 * format(size, mm); // "70.004 mm"
 * ```
 */
export function sizeAt20C(reading: SizeReadWarm): SizeAt20C {
  guardFields('reading', reading, READ);
  const size = diameter('size', reading.size);
  const part = guardWarm('part', reading.part);
  const instrument = guardWarm('instrument', reading.instrument);
  const at20C = (ofPart: number, ofInstrument: number) =>
    ((size * grown(instrument.temperature, ofInstrument)) /
      grown(part.temperature, ofPart)) as Length;
  const ends = endsOf(part.coefficient).flatMap((ofPart) =>
    endsOf(instrument.coefficient).map((ofInstrument) => at20C(ofPart, ofInstrument)),
  );
  return {
    size: at20C(middleOf(part.coefficient), middleOf(instrument.coefficient)),
    span: { min: smallestOf(ends) as Length, max: largestOf(ends) as Length },
    outsideRange: BOTH.filter((name) => {
      const { temperature, from, to } = { part, instrument }[name];
      return temperature < from || temperature > to;
    }),
  };
}

/** 20 °C. */
const REFERENCE = 293.15;

const grown = (temperature: Temperature, coefficient: number) =>
  1 + coefficient * (temperature - REFERENCE);
const middleOf = ({ min, max }: Span<ThermalExpansion>) => (min + max) / 2;
const endsOf = ({ min, max }: Span<ThermalExpansion>) => [min, max];

function guardWarm(at: string, warm: ReadWarm) {
  guardFields(at, warm, WARM);
  return {
    temperature: partTemperature(`${at}.temperature`, warm.temperature),
    ...guardExpansion(`${at}.expansion`, warm.expansion),
  };
}
