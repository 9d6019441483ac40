import {
  type Dimension,
  type Quantity,
  tradeUnit,
  type Unit,
  type UnitSystem,
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

/** What a field tells of itself that its unit follows from. */
interface Measured {
  readonly dimension: Dimension;
  readonly least: number;
  readonly most: number;
  readonly example: string;
}

/** The names that examples of domains use, by which a caller makes a quantity: `inch(2.1248)`. */
const UNIT_WORDS: Readonly<Record<string, AnyUnit>> = {
  inch: unitTable.in,
  thou: unitTable.thou,
  micrometre: unitTable.µm,
  ratio: unitTable['-'],
  percent: unitTable['%'],
  centipoise: unitTable.cP,
  mL: unitTable.mL,
  mLPerMinute: unitTable['mL/min'],
  minute: unitTable.min,
  lbfInch: unitTable['lbf·in'],
  squareMm: unitTable['mm²'],
  perSecond: unitTable['1/s'],
  MPa: unitTable.MPa,
  watt: unitTable.W,
  newtonPerMetre: unitTable['N/m'],
  foot: unitTable.ft,
};

/** Lengths that each shop reads in its own small unit. */
const SMALL: Readonly<Record<string, Readonly<Record<UnitSystem, AnyUnit>>>> = {
  in: { inch: unitTable.in, metric: unitTable.mm },
  thou: { inch: unitTable.thou, metric: unitTable.mm },
  µm: { inch: unitTable.µin, metric: unitTable.µm },
  ft: { inch: unitTable.ft, metric: unitTable.m },
  lbf·in: { inch: unitTable['lbf·in'], metric: unitTable['N·m'] },
  MPa: { inch: unitTable.psi, metric: unitTable.MPa },
  'mm²': { inch: unitTable['in²'], metric: unitTable['mm²'] },
};

/** The unit that a shop reads such a thing in, going by the example of its domain. */
export function unitOf({ dimension, example }: Measured, system: UnitSystem): AnyUnit {
  const written = UNIT_WORDS[/^\w+/.exec(example)?.[0] ?? ''];
  if (written?.dimension !== dimension) return tradeUnit(dimension, system);
  return SMALL[written.symbol]?.[system] ?? written;
}

/** The largest length that is told in thou, or in micrometres [m]. */
const [A_FEW_THOU, A_FEW_MICROMETRES] = [0.05 * 0.0254, 1e-5];

/** The unit to tell a result in: small lengths in a small unit. */
export function unitOfResult(value: number, dimension: Dimension, system: UnitSystem): AnyUnit {
  const size = Math.abs(value);
  if (dimension === 'ratio') return unitTable['-'];
  if (dimension !== 'length' || size === 0) return tradeUnit(dimension, system);
  if (system === 'inch') return size < A_FEW_THOU ? unitTable.thou : unitTable.in;
  return size < A_FEW_MICROMETRES ? unitTable.µm : unitTable.mm;
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
