import { coherentUnit, type Dimension, parse, RebuildInputError } from '../quantities/index.js';
import { builtQuantity } from './built-quantity.js';
import type { ExerciseAsk } from './exercise-types.js';
import type { ReadingSlip } from './slip-types.js';

/** An answer that could be read. */
export interface ReadAnswer {
  /** In SI. */
  readonly value: number;
  /** The number as it was written; undefined where that is more than a decimal. */
  readonly number: number | undefined;
  /** How far off rounding to the last place that was written may be [SI]. */
  readonly halfPlace: number;
  /** With the unit of the blank, where it was written without one. */
  readonly takenAs?: string;
}

/** An answer that cannot be read, or whose number may be meant in two ways. */
export interface UnclearAnswer {
  /** The number as it was written; without it, none could be read. */
  readonly unclear: string | undefined;
}

/** Reads an answer; a number alone is in the unit that stands after the blank. */
export function readAnswer(
  text: string,
  { dimension, unit }: ExerciseAsk,
): ReadAnswer | UnclearAnswer | ReadingSlip {
  const alone = numberAlone(text);
  const unclear = GROUPED.exec(alone)?.[0];
  if (unclear !== undefined) return { unclear };
  const isBare = unit !== '' && /^[\d\s.,/+e-]+$/i.test(alone);
  const written = isBare ? `${alone} ${unit}` : alone;
  const value = measureIn(written, dimension);
  if (value !== undefined) {
    const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?(?![\d/ -]*\/)/i.exec(alone)?.[0];
    const nextTo =
      number === undefined
        ? undefined
        : measureIn(`${Number(number) + half(number)}${written.slice(number.length)}`, dimension);
    return {
      value,
      number: number === undefined ? undefined : Number(number),
      halfPlace: nextTo === undefined ? 0 : Math.abs(nextTo - value),
      ...(isBare && { takenAs: written }),
    };
  }
  const others = Object.keys(coherentUnit) as Dimension[];
  const isOther = others.some((other) => quantityIn(written, other) !== undefined);
  return isOther ? 'another quantity' : { unclear: undefined };
}

/** A number in groups of three digits: `23,700`, `23 700`. */
const GROUPED = /^[+-]?[1-9]\d{0,2}(?:[,\s]\d{3})+(?:\.\d+)?(?![\d/])/;

const measureIn = (text: string, dimension: Dimension): number | undefined =>
  quantityIn(text, dimension) ?? builtQuantity(text, dimension);

/** Half of the last place of a number; of thousands the zeros at the end only hold the place. */
function half(written: string): number {
  const [number = '', power] = written.split(/e/i);
  if (power !== undefined) return half(number) * 10 ** Number(power);
  const [whole = '', decimals = ''] = number.split('.');
  if (decimals !== '') return 0.5 / 10 ** decimals.length;
  return whole.length < 4 ? 0.5 : 0.5 * 10 ** (/0*$/.exec(whole)?.[0].length ?? 0);
}

/** An answer without what people write round it: `c_m = 1.4 thou.`, `about 1,4 thou`. */
const numberAlone = (text: string): string =>
  text
    .trim()
    .replaceAll('−', '-')
    .replace(/^[\p{L}_]\w*\s*=\s*/u, '')
    .replace(/^(?:about|approximately|approx\.?|ca\.?|≈|~)\s*/i, '')
    // Before three digits it may part thousands, but not after a zero or nothing.
    .replace(/^([+-]?0?),(?=\d)|^([+-]?\d+),(?!\d{3}(?!\d))(?=\d)/, '$1$2.')
    .replace(/\s+of\s+rise\.?$/i, '')
    .replace(/\.$/, '')
    .replace(POWER_OF_TEN, (_, number: string, power = '', raised = '') => {
      const lowered = [...raised].map((sign) => '+-0123456789'['⁺⁻⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(sign)]);
      return `${number}e${power}${lowered.join('')}`;
    });

/** As books write a small or large number: `6.08 · 10⁻⁴`, `6.08 x 10^-4`. */
const POWER_OF_TEN =
  /^([+-]?(?:\d+\.?\d*|\.\d+))\s*[*x×·⋅]\s*10(?:\s*(?:\^|\*\*)\s*\(?([+-]?\d+)\)?|([⁺⁻]?[⁰¹²³⁴-⁹]+))/i;

/** A quantity in text. A share may be written as a plain number or in per cent, and a gauge needs no saying so. */
function quantityIn(text: string, dimension: Dimension): number | undefined {
  const spellings: readonly Dimension[] =
    dimension === 'volumeFraction' || dimension === 'massFraction'
      ? [dimension, 'ratio']
      : dimension === 'gaugePressure'
        ? [dimension, 'pressure']
        : [dimension];
  for (const spelling of spellings) {
    try {
      return parse(text, spelling);
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
    }
  }
  return undefined;
}
