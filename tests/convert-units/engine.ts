import configureMeasurements from 'convert-units';
import { type Dimension, type Unit, type UnitSymbol, unitTable } from 'crankwright';
import { exactMeasures } from 'crankwright/convert-units';
import fc from 'fast-check';

export const convert = configureMeasurements(exactMeasures);

/** The engine with our measures, on plain text: what one measure refuses is tried too. */
export const engine = (x: number, from: string, to: string): number => convert(x).from(from).to(to);

export const units = Object.values(unitTable) as readonly Unit<Dimension, UnitSymbol>[];

/** Every two units of a dimension, each also with itself. */
export const pairs = units.flatMap((from) =>
  units
    .filter((to) => to.dimension === from.dimension)
    .map((to) => ({ dimension: from.dimension, from: from.symbol, to: to.symbol })),
);

export const isTemperature = ({ dimension }: { readonly dimension: Dimension }) =>
  dimension === 'temperature';

/**
 * Units whose factor no double holds: π in angles; a whole number of more than 53 bits beside
 * the other units of its dimension.
 */
export const ROUNDED: readonly UnitSymbol[] = [
  'deg',
  'psi',
  'ksi',
  'inHg',
  'psi gauge',
  'inHg gauge',
  'hp',
  'rpm',
];

/** Readings from tiny to vast, of either sign. */
export const reading = fc
  .tuple(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.constantFrom(-1, 1))
  .map(([size, sign]) => size * sign);
