import {
  type Dimension,
  type Quantity,
  type Unit,
  unitTable,
  valueIn,
} from '../src/quantities/index.js';

/** A unit of whatever dimension. */
export type AnyUnit = Unit<Dimension>;

/** The unit with that symbol. */
export function unitNamed(symbol: string): AnyUnit {
  const found = Object.values<AnyUnit>(unitTable).find((unit) => unit.symbol === symbol);
  if (!found) throw new Error(`there is no unit ${symbol}`);
  return found;
}

/** A number as a page shows it, to so many digits, without the noise of binary fractions. */
export function sayNumber(value: number, digits = 5): string {
  const rounded = Number(value.toPrecision(digits));
  const size = Math.abs(rounded);
  if (rounded === 0) return '0';
  if (size >= 1e-4 && size < 1e7) return String(rounded).replace('-', '−');
  const [mantissa = '', exponent = ''] = rounded.toExponential().split('e');
  return `${mantissa.replace('-', '−')} × 10${raised(exponent)}`;
}

/** A whole number as an exponent. */
const raised = (exponent: string): string =>
  String(Number(exponent)).replace(/./g, (sign) =>
    sign === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] as string),
  );

/** What is typed into a field for a quantity, which reads back as the same to nine digits. */
export const typed = (quantity: number, unit: AnyUnit): string =>
  String(Number(valueIn(quantity as Quantity<Dimension>, unit).toPrecision(9)));

/** A quantity in a unit, as a page shows it. A plain number has no symbol behind it. */
export const say = (quantity: number, unit: AnyUnit, digits = 5): string =>
  `${sayNumber(valueIn(quantity as Quantity<Dimension>, unit), digits)}${symbolAfter(unit)}`;

/** A result as a page shows it: a length to the digits that are measured, anything else to four. */
export const sayResult = (quantity: number, unit: AnyUnit): string =>
  say(quantity, unit, unit.dimension === 'length' ? 5 : 4);

/** The symbol of a unit with a space before it, or nothing for a plain number. */
export const symbolAfter = ({ symbol }: AnyUnit): string => (symbol === '-' ? '' : ` ${symbol}`);
