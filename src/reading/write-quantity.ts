import {
  coherentUnit,
  type Dimension,
  type Length,
  type Quantity,
  tradeUnit,
  type Unit,
  type UnitSystem,
  unitTable,
  valueIn,
} from '../quantities/index.js';

/** No reading has more digits than this. A number with more was converted from another unit. */
const MOST_DIGITS = 7;

/** A double never needs more digits than this. */
const ALL_DIGITS = 17;

/**
 * A quantity as text that reads back to the same number: in the unit of the shop if its digits end
 * there, otherwise in the unit in which they are fewest.
 */
export function writeQuantity<D extends Dimension>(
  value: Quantity<D>,
  dimension: D,
  units: UnitSystem,
): string {
  const other = units === 'inch' ? 'metric' : 'inch';
  const own = inUnit(value, tradeUnit(dimension, units));
  if (own !== undefined && own.digits <= MOST_DIGITS) return own.text;
  const coherent = (unitTable as unknown as Readonly<Record<string, Unit<D>>>)[
    coherentUnit[dimension]
  ];
  const all = [
    own,
    inUnit(value, tradeUnit(dimension, other)),
    coherent && inUnit(value, coherent),
  ];
  const [best] = all
    .filter((each) => each !== undefined)
    .sort((a, b) => a.digits - b.digits || a.text.length - b.text.length);
  if (best === undefined) throw new Error(`${value} cannot be written as ${dimension}.`);
  return best.text;
}

/** An undersize or oversize as it is stamped on shells and pistons. */
export function writeStep(value: Length, way: 'under' | 'over', units: UnitSystem): string {
  if (value === 0) return 'standard';
  const thou =
    units === 'inch' ? inUnit(value, unitTable.thou)?.text.replace(/\.0+ thou$/, '') : '';
  const text = /^\d+$/.test(thou ?? '') ? (thou as string) : writeQuantity(value, 'length', units);
  return `${text} ${way}`;
}

interface Written {
  readonly text: string;
  readonly digits: number;
}

/** The shortest text in a unit that reads back to the same number; undefined if there is none. */
function inUnit<D extends Dimension>(value: Quantity<D>, unit: Unit<D>): Written | undefined {
  const number = valueIn(value, unit as Unit<never>);
  for (let digits = 1; digits <= ALL_DIGITS; digits++) {
    const [, exponent = '0'] = number.toExponential(digits - 1).split('e');
    const decimals = Math.max(0, digits - 1 - Number(exponent));
    // Lengths are padded to what the trade reads them to: 3.0000 in.
    const padded = unit.dimension === 'length' ? Math.max(decimals, unit.decimals) : decimals;
    const text =
      decimals > 100 || Math.abs(number) >= 1e21
        ? number.toExponential(digits - 1)
        : Number(number.toPrecision(digits)).toFixed(Math.min(100, padded));
    if (unit(Number(text)) === value) return { text: `${text} ${unit.symbol}`, digits };
  }
  return undefined;
}
