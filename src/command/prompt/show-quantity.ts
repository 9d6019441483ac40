import { shortNumber } from '../../mathjs/internal.js';
import {
  cubicInch,
  type Dimension,
  format,
  inch,
  litre,
  MPa,
  micrometre,
  minute,
  mL,
  mm,
  type Quantity,
  quartUS,
  second,
  thou,
  tradeUnit,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../../quantities/index.js';
import { flowUnit, scaleOf } from '../../quantities/internal.js';

/** Below the first size a dimension is read in the second unit; smallest first. */
const SMALL: Readonly<
  Partial<
    Record<Dimension, Readonly<Record<UnitSystem, readonly (readonly [number, Unit<Dimension>])[]>>>
  >
> = {
  length: { inch: [[inch(0.1), thou]], metric: [[mm(0.1), micrometre]] },
  volume: { inch: [[quartUS(1), cubicInch]], metric: [[litre(0.1), mL]] },
  time: {
    inch: [
      [minute(1), second],
      [minute(60), minute],
    ],
    metric: [
      [minute(1), second],
      [minute(60), minute],
    ],
  },
};

/** The unit in which the trade says a quantity of that size: clearances in thou, sizes in inches. */
export function unitToSay(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
): Unit<Dimension> {
  if (dimension === 'flow') return flowUnit(value);
  if (dimension === 'pressure' && system === 'metric' && Math.abs(value) >= 1e6) return MPa;
  const smaller = SMALL[dimension]?.[system].find(([size]) => Math.abs(value) < size);
  return smaller?.[1] ?? tradeUnit(dimension, system);
}

/** A result in the unit that the trade says it in, to the digits that the trade reads. */
export function sayResult(value: number, dimension: Dimension, system: UnitSystem): string {
  if (dimension === 'ratio') return sayNumber(value);
  return sayResultIn(value, unitToSay(value, dimension, system));
}

/** The same in a unit that is settled, for sizes that stand beside each other. */
export function sayResultIn(value: number, unit: Unit<Dimension>): string {
  const exactly = valueIn(value as Quantity<Dimension>, unit);
  const printed = format(value as Quantity<Dimension>, unit);
  // Where the decimals of the trade leave next to nothing of a small number, two digits stay.
  const digits = printed.replace(/ .*/, '').replace(/^[-0.]+|\./g, '').length;
  const isLess = Math.abs(Number.parseFloat(printed) - exactly) > 1e-9 * Math.abs(exactly);
  const isNoise = Math.abs(exactly) < 1e-9;
  if (digits < 2 && isLess && !isNoise) return `${rounded(exactly, 2)} ${symbolOf(unit)}`;
  const short = ['thou', 'µm'].includes(unit.symbol) ? printed.replace(/\.0+ /, ' ') : printed;
  return short.replace(unit.symbol, symbolOf(unit));
}

/** A quantity in the unit asked for, with all its digits if they end soon, and otherwise those that mean something. */
export function sayIn(value: number, unit: Unit<Dimension>): string {
  return `${shortNumber(valueIn(value as Quantity<Dimension>, unit), unit)} ${symbolOf(unit)}`;
}

/** A number that stands alone must tell that it is a difference: 60 °C of difference is not 60 °C. */
const symbolOf = (unit: Unit<Dimension>): string =>
  unit.dimension === 'temperatureDifference' ? `${scaleOf(unit)} of difference` : unit.symbol;

/** A plain number: whole if it ends soon, and otherwise to six digits. */
export function sayNumber(value: number): string {
  const whole = Number.isInteger(value) ? 15 : Math.trunc(Math.abs(value)).toString().length;
  const ends = rounded(value, 10);
  const isWhole = Math.abs(Number(ends) - value) <= 1e-13 * Math.abs(value);
  return isWhole ? ends : rounded(value, Math.min(15, Math.max(6, whole)));
}

/** A ratio that a function gave, to four significant digits: no reading bears more. A count stays whole. */
export function sayRatio(value: number): string {
  if (Number.isInteger(value)) return sayNumber(value);
  const whole = Math.trunc(Math.abs(value)).toString().length;
  return rounded(value, Math.max(4, whole));
}

const rounded = (value: number, digits: number): string => {
  const short = Number(value.toPrecision(digits));
  return String(Object.is(short, -0) ? 0 : short);
};
