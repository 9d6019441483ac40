import type { PrintedQuantity } from './worked-types.js';

/** A number with its unit, for people. */
export function printedQuantity(value: number, unit: string): PrintedQuantity {
  return { value, unit, text: unit === '' ? String(value) : `${value} ${unit}` };
}

/** The name of a unit in mathjs as a person reads it: `N mm^2` as `N·mm²`. */
export const forPeople = (unit: string): string =>
  unit
    .replaceAll(' ', '·')
    .replaceAll(/\^(-?\d+)/g, (_, power: string) =>
      [...power].map((sign) => (sign === '-' ? '⁻' : RAISED[Number(sign)])).join(''),
    );

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
