import type { UnitSymbol } from 'crankwright';

/** Where the factors stand. */
export const SP811 = 'NIST SP 811 (2008), appendix B.8';

/** A unit, and what one of it is in the coherent SI unit of its dimension. */
export type Row = readonly [symbol: UnitSymbol, coherent: number];

/** Rounded to seven digits. */
export const roundedRows: readonly Row[] = [
  ['lbf', 4.448222],
  ['lbf·ft', 1.355818],
  ['lbf·in', 0.1129848],
  ['psi', 6894.757],
  ['ksi', 6894757],
  ['psi gauge', 6894.757],
  ['reyn', 6894.757],
  ['US gal', 3.785412e-3],
  ['inHg', 3386.389],
  ['inHg gauge', 3386.389],
];

/** Rounded to seven digits; written from memory. */
export const rememberedRoundedRows: readonly Row[] = [
  ['ft·lbf energy', 1.355818],
  ['hp', 745.6999],
  ['metric hp', 735.4988],
  ['US fl oz', 2.957353e-5],
  ['US pt', 4.731765e-4],
  ['US qt', 9.463529e-4],
  ['imp fl oz', 2.841306e-5],
  ['oz', 2.834952e-2],
  ['lb/in³', 2.76799e4],
  ['lbf/in', 175.1268],
  ['rpm', 0.1047198],
  ['deg', 1.745329e-2],
  ['US gal/min', 6.30902e-5],
];

/** So by definition. */
export const exactRows: readonly Row[] = [
  ['in', 0.0254],
  ['thou', 2.54e-5],
  ['lb', 0.45359237],
  ['imp gal', 4.54609e-3],
  ['in³', 1.6387064e-5],
  ['kgf/cm²', 98_066.5],
  ['cP', 0.001],
  ['cSt', 1e-6],
];

/** So by definition; written from memory. */
export const rememberedExactRows: readonly Row[] = [
  ['Btu/(lb·°F)', 4186.8],
  ['kgf', 9.80665],
  ['kgf·m', 9.80665],
  ['ft', 0.3048],
  ['electric hp', 746],
  ['bar', 100_000],
  ['ft/min', 5.08e-3],
];
