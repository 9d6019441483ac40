import { RebuildInputError, showValue } from './error.js';
import { nearest } from './nearest.js';
import { type Scale, scales, unitsOf } from './scales.js';
import { ambiguityOf } from './spellings.js';
import { belowAbsoluteZero } from './unit.js';
import { type CompatibleName, type UnitName, unitNamed, unitNames } from './unit-names.js';

/**
 * Converts a plain number between units named as `parse` reads them, for
 * embedding in other tools. Between units of one dimension only; the types say
 * which. `'C'` and `'F'` are temperatures; differences are `'Δ°C'` and `'Δ°F'`.
 *
 * @param value - the number to convert, in unit `from` [-]
 * @param from - name of the unit it is in
 * @param to - name of the unit wanted
 * @returns the number in unit `to` [-]
 * @throws {RebuildInputError} when a value is not finite, a name is unknown, the two are of different
 * dimensions, a temperature is below absolute zero or the result is too large
 * @see Source: NIST SP 811 (2008), appendix B
 * @example
 * ```ts
 * convert(2.1248, 'in', 'mm'); // 53.96992
 * convert(22, 'thou', 'um'); // 558.8
 * convert(68, 'F', 'C'); // 20
 * ```
 */
export function convert<N extends UnitName>(value: number, from: N, to: CompatibleName<N>): number {
  if (!Number.isFinite(value)) throw notConvertible(value);
  if (typeof from !== 'string' || typeof to !== 'string') throw refusal(from, to);
  const origin = scales[from] ?? scaleNamed(from);
  const wanted = scales[to] ?? scaleNamed(to);
  if (origin === undefined || origin.dimension !== wanted?.dimension) throw refusal(from, to);
  if (origin.dimension === 'temperature' && value * origin.factor + origin.shift < 0) {
    throw belowAbsoluteZero('value', value);
  }
  if (origin === wanted) return value;
  const result = (value * origin.factor + (origin.shift - wanted.shift)) / wanted.factor;
  if (!Number.isFinite(result)) throw notConvertible(value);
  return result;
}

/** The scale of a unit that is named by a spelling. */
function scaleNamed(name: string): Scale | undefined {
  const unit = unitNamed(name);
  return unit && scales[unit.symbol];
}

function notConvertible(value: number): RebuildInputError {
  return new RebuildInputError({
    parameter: 'value',
    value,
    ...(Number.isFinite(value) && { shown: 'it' }),
    expected: 'a finite number, small enough to be held after conversion',
    hint: 'Text is read by parse, e.g. parseLength("2-1/8 in").',
  });
}

/** Which of the two names is wrong, and what it might have been. */
function refusal(from: unknown, to: unknown): RebuildInputError {
  const origin = typeof from === 'string' ? unitNamed(from) : undefined;
  if (origin === undefined) return unknownName('from', from);
  if (typeof to !== 'string' || unitNamed(to) === undefined) return unknownName('to', to);
  const compatible = unitsOf(origin.dimension).map((unit) => unit.symbol);
  return new RebuildInputError({
    parameter: 'to',
    value: to,
    expected: `a unit of ${origin.dimension}, as ${showValue(from)} is`,
    hint: `Compatible with ${origin.symbol}: ${compatible.join(', ')}.`,
  });
}

const unknownName = (parameter: string, value: unknown): RebuildInputError =>
  new RebuildInputError({
    parameter,
    value,
    expected: 'the name of a unit',
    hint: `${typeof value === 'string' ? guess(value) : ''}Known symbols: ${Object.keys(scales).join(', ')}.`,
  });

/** What an unknown name may stand for, to begin a hint with. */
function guess(name: string): string {
  const ambiguity = ambiguityOf(name);
  if (ambiguity !== undefined) return `It may be ${ambiguity}. `;
  const near = nearest(name, unitNames());
  return near === undefined ? '' : `Did you mean ${showValue(near)}? `;
}
