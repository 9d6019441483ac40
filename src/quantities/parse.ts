import type { Dimension, Length, Quantity } from './dimensions.js';
import { RebuildInputError, showValue } from './error.js';
import { unitsOf } from './scales.js';
import { ambiguityOf } from './spellings.js';
import { guardDimension, tradeUnit } from './systems.js';
import type { Unit } from './unit.js';
import { findUnit } from './unit-names.js';
import { thou } from './units.js';

/**
 * Reads a quantity as people write it: decimals, fractions and mixed numbers
 * (`7/16`, `2-1/8`, `2 1/8`), a leading + or -, inch marks, then the unit.
 * Nothing is guessed: a missing, ambiguous or half-understood unit is an error
 * that shows where.
 *
 * @param text - number and unit, for example `'18 lbf·ft'`
 * @param dimension - name of the dimension that is wanted
 * @returns the quantity [coherent SI unit]
 * @throws {RebuildInputError} when the dimension is unknown, the text is not one number and one unit of it, or
 * the number is too large or too small
 * @example
 * ```ts
 * format(parse('18 ft-lb', 'torque'), lbfFoot); // "18.0 lbf·ft"
 * format(parse('104 °F', 'temperature'), celsius); // "40.0 °C"
 * ```
 */
export function parse<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  guardDimension(dimension);
  const reader = new Reader(text, dimension);
  const value = reader.number();
  return reader.unit()(value) as Quantity<D>;
}

/**
 * Reads a length. Beside what `parse` takes, a bare whole number followed by
 * `under` or `over` is in thou, as it is stamped on a shell or a piston: `'20 under'`.
 *
 * @param text - for example `'2-1/8 in'`, `'2 1/8"'`, `'53.97 mm'`, `'+.020 in'`, `'1.5 thou'`
 * @returns the length [m]
 * @throws {RebuildInputError} when the text is not one number and one unit of length, or the number is too large
 * or too small
 * @example
 * ```ts
 * format(parseLength('2-1/8 in'), inch); // "2.1250 in"
 * format(parseLength('20 under'), thou); // "20.0 thou"
 * ```
 */
export function parseLength(text: string): Length {
  return parse(text, 'length');
}

const NUMBER =
  /^(?<sign>[+-]?)\s*(?:(?<whole>\d+)(?:-| +)(?<over>\d+)\/(?<under>\d+)|(?<numerator>\d+)\/(?<denominator>\d+)|(?<decimal>(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?))(?![\d./,])/;

/** No reading has a number further from 1 than this, up or down, whatever its unit. */
const [SMALLEST, LARGEST] = [1e-100, 1e100];

class Reader {
  readonly #text: string;
  readonly #dimension: Dimension;
  /** What is not read yet. */
  #rest: string;

  constructor(text: string, dimension: Dimension) {
    if (typeof text !== 'string' || text.length > 100) {
      throw new RebuildInputError({
        parameter: 'text',
        value: text,
        expected: 'text of at most 100 characters',
        hint: `Write number and unit in quotes, ${example(dimension)}.`,
      });
    }
    this.#text = text.replaceAll('−', '-');
    this.#dimension = dimension;
    this.#rest = this.#text.trim();
  }

  number(): number {
    const found = NUMBER.exec(this.#rest);
    if (!found?.groups) {
      const comma = /^[+-]?\d*,\d/.test(this.#rest);
      const hint = comma
        ? 'Write a point for decimals and nothing between thousands.'
        : `Begin with one number: 2.125, 7/16, 2-1/8 or 2 1/8, ${example(this.#dimension)}.`;
      throw this.#problem('has no number that can be read', this.#rest, hint);
    }
    const size = this.#size(found.groups);
    this.#rest = this.#rest.slice(found[0].length).trim();
    return found.groups['sign'] === '-' ? -size : size;
  }

  #size(groups: Readonly<Record<string, string | undefined>>): number {
    if (groups['decimal'] !== undefined) return this.#decimal(groups['decimal']);
    const whole = Number(groups['whole'] ?? 0);
    const over = Number(groups['over'] ?? groups['numerator']);
    const under = Number(groups['under'] ?? groups['denominator']);
    if (under === 0 || (groups['whole'] !== undefined && over >= under)) {
      const hint =
        'The fraction of a mixed number is less than one and has no zero below the line.';
      throw this.#problem('has a fraction that cannot be meant', this.#rest, hint);
    }
    return (whole * under + over) / under;
  }

  /** A number beyond what a double holds would be read as infinite, or as nothing. */
  #decimal(written: string): number {
    const size = Number(written);
    const isNothing = !/[1-9]/.test(written.replace(/e.*/i, ''));
    if (isNothing || (size >= SMALLEST && size < LARGEST)) return size;
    const extreme = size < SMALLEST ? 'small' : 'large';
    const hint = 'Check the exponent: "1e-3" is a thousandth, "1e3" a thousand.';
    throw this.#problem(`is too ${extreme} to be a reading`, written, hint);
  }

  unit(): Unit<Dimension> {
    const dimension = this.#dimension;
    if (dimension === 'length') {
      const step = /^(.*?)\s*(under|over)(?:size)?$/i.exec(this.#rest);
      if (step) return this.#stepUnit(step[1] as string, (step[2] as string).toLowerCase());
    }
    const found = findUnit(this.#rest, dimension);
    if (found) return found;
    const known = `Units of ${dimension}: ${unitsOf(dimension)
      .map((unit) => unit.symbol)
      .join(', ')}.`;
    if (this.#rest === '') {
      throw this.#problem(`has no unit, and ${dimension} needs one`, '', known);
    }
    const ambiguity = dimension === 'volume' ? ambiguityOf(this.#rest) : undefined;
    if (ambiguity !== undefined) {
      throw this.#problem('is ambiguous', this.#rest, `It may be ${ambiguity}.`);
    }
    // Show the first character that spoils it, if a unit stands before it.
    for (let end = this.#rest.length - 1; end > 0; end--) {
      if (findUnit(this.#rest.slice(0, end).trim(), dimension)) {
        throw this.#problem('goes on after its unit', this.#rest.slice(end).trim(), known);
      }
    }
    throw this.#problem(`has no unit of ${dimension}`, this.#rest, known);
  }

  /** `20 under` is 20 thou, and so is `20 over`; with a unit (`0.50 mm under`) it is that unit. */
  #stepUnit(spelling: string, way: string): Unit<Dimension> {
    const named = findUnit(spelling, 'length');
    if (named) return named;
    if (spelling === '' && /^\s*\d+\s*(?:under|over)/i.test(this.#text)) return thou;
    throw this.#problem(
      `is not an ${way}size that can be read`,
      this.#rest,
      `Write a whole number of thou (20 ${way}) or name the unit (0.020 in ${way}, 0.50 mm ${way}).`,
    );
  }

  #problem(problem: string, at: string, hint: string): RebuildInputError {
    const position = at === '' ? this.#text.length : this.#text.lastIndexOf(at);
    const place = `at character ${position + 1}${at === '' ? '' : ` (${showValue(at)})`}`;
    return new RebuildInputError({
      parameter: 'text',
      value: this.#text,
      expected: `a ${this.#dimension}, ${example(this.#dimension)}`,
      problem: `${problem} ${place}`,
      hint,
    });
  }
}

function example(dimension: Dimension): string {
  return `e.g. "1.5 ${tradeUnit(dimension, 'inch').symbol}"`;
}
