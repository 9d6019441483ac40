import type { UnitSymbol } from 'crankwright';

/** An exact fraction. */
export type Exact = readonly [numerator: bigint, denominator: bigint];

/** What one unit is in the coherent SI unit, exactly; for angles in half turns (π rad). */
export interface Definition {
  readonly factor: Exact;
  /** The factor is to be multiplied by π. */
  readonly halfTurns?: true;
  /** Where the unit's zero lies, in kelvin. */
  readonly zero?: Exact;
}

/** A decimal as an exact fraction: `exact('25.4')` is 254/10. */
export function exact(decimal: string): Exact {
  const [whole = '', decimals = ''] = decimal.split('.');
  return [BigInt(whole + decimals), 10n ** BigInt(decimals.length)];
}

const times = (...all: readonly Exact[]): Exact =>
  all.reduce(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);
const over = (a: Exact, b: Exact): Exact => [a[0] * b[1], a[1] * b[0]];

// Definitions, in words of their own: the international yard and pound agreement
// of 1959, standard gravity, the gallons, conventional mercury at 0 °C.
const one = exact('1');
const yard = exact('0.9144');
const foot = over(yard, exact('3'));
const inch = over(yard, exact('36'));
const pound = exact('0.45359237');
const gravity = exact('9.80665');
const kilogramForce = gravity;
const poundForce = times(pound, gravity);
const psi = over(poundForce, times(inch, inch));
const inchOfMercury = times(exact('13595.1'), gravity, exact('0.0254'));
const cubicInch = times(inch, inch, inch);
const gallonUS = times(exact('231'), cubicInch);
const gallonImperial = exact('0.00454609');
const minute = exact('60');
const hour = exact('3600');
const micro = exact('0.000001');
const milli = exact('0.001');
const hundredth = exact('0.01');
const degreeF = over(exact('5'), exact('9'));

const plain = (factor: Exact): Definition => ({ factor });

/** Every unit of the library, defined a second time. A unit without an entry does not compile. */
export const definitions: Readonly<Record<UnitSymbol, Definition>> = {
  m: plain(one),
  mm: plain(milli),
  µm: plain(micro),
  in: plain(exact('0.0254')),
  thou: plain(exact('0.0000254')),
  tenth: plain(exact('0.00000254')),
  µin: plain(exact('0.0000000254')),
  ft: plain(exact('0.3048')),
  'm²': plain(one),
  'mm²': plain(micro),
  'in²': plain(exact('0.00064516')),
  'm³': plain(one),
  L: plain(milli),
  mL: plain(micro),
  'cm³': plain(micro),
  'in³': plain(exact('0.000016387064')),
  'US fl oz': plain(over(gallonUS, exact('128'))),
  'US pt': plain(over(gallonUS, exact('8'))),
  'US qt': plain(over(gallonUS, exact('4'))),
  'US gal': plain(exact('0.003785411784')),
  'imp fl oz': plain(over(gallonImperial, exact('160'))),
  'imp pt': plain(over(gallonImperial, exact('8'))),
  'imp qt': plain(over(gallonImperial, exact('4'))),
  'imp gal': plain(gallonImperial),
  rad: plain(one),
  deg: { factor: [1n, 180n], halfTurns: true },
  kg: plain(one),
  g: plain(milli),
  lb: plain(pound),
  oz: plain(over(pound, exact('16'))),
  'kg/m³': plain(one),
  'g/cm³': plain(over(milli, micro)),
  'lb/in³': plain(over(pound, cubicInch)),
  s: plain(one),
  min: plain(minute),
  h: plain(hour),
  '1/s': plain(one),
  '1/min': plain(over(one, minute)),
  '1/h': plain(over(one, hour)),
  N: plain(one),
  kN: plain(exact('1000')),
  lbf: plain(poundForce),
  kgf: plain(kilogramForce),
  Pa: plain(one),
  kPa: plain(exact('1000')),
  MPa: plain(exact('1000000')),
  bar: plain(exact('100000')),
  psi: plain(psi),
  ksi: plain(times(exact('1000'), psi)),
  inHg: plain(inchOfMercury),
  'kgf/cm²': plain(exact('98066.5')),
  'Pa gauge': plain(one),
  'kPa gauge': plain(exact('1000')),
  'bar gauge': plain(exact('100000')),
  'psi gauge': plain(psi),
  'inHg gauge': plain(inchOfMercury),
  N·m: plain(one),
  lbf·ft: plain(times(poundForce, foot)),
  lbf·in: plain(times(poundForce, inch)),
  kgf·m: plain(kilogramForce),
  J: plain(one),
  kJ: plain(exact('1000')),
  'ft·lbf energy': plain(times(poundForce, foot)),
  W: plain(one),
  kW: plain(exact('1000')),
  hp: plain(times(exact('550'), foot, poundForce)),
  'metric hp': plain(exact('735.49875')),
  'electric hp': plain(exact('746')),
  'm/s': plain(one),
  'ft/min': plain(over(foot, minute)),
  'm/s²': plain(one),
  'ft/s²': plain(foot),
  'rad/s': plain(one),
  rpm: { factor: [2n, 60n], halfTurns: true },
  'm³/s': plain(one),
  'mL/min': plain(over(micro, minute)),
  'mL/h': plain(over(micro, hour)),
  'L/min': plain(over(milli, minute)),
  'US gal/min': plain(over(gallonUS, minute)),
  Pa·s: plain(one),
  mPa·s: plain(milli),
  cP: plain(milli),
  reyn: plain(psi),
  'm²/s': plain(one),
  cSt: plain(micro),
  K: plain(one),
  '°C': { factor: one, zero: exact('273.15') },
  '°F': { factor: degreeF, zero: times(exact('459.67'), degreeF) },
  '°R': plain(degreeF),
  ΔK: plain(one),
  'Δ°C': plain(one),
  'Δ°F': plain(degreeF),
  'N/m': plain(one),
  'N/mm': plain(exact('1000')),
  'lbf/in': plain(over(poundForce, inch)),
  '1/K': plain(one),
  'ppm/K': plain(micro),
  'ppm/°F': plain(over(micro, degreeF)),
  'J/(kg·K)': plain(one),
  // The International Table Btu is the heat that takes a pound through 1 °F where a
  // kilogram and a kelvin take an International Table kilocalorie, 4186.8 J.
  'Btu/(lb·°F)': plain(exact('4186.8')),
  '-': plain(one),
  '%': plain(hundredth),
  ppm: plain(micro),
  'vol/vol': plain(one),
  'vol%': plain(hundredth),
  'mass/mass': plain(one),
  'mass%': plain(hundredth),
};

/** The double nearest to a fraction, to within its last digit. */
export function toNumber([numerator, denominator]: Exact): number {
  const scale = 10n ** 60n;
  return Number((numerator * scale) / denominator) / 1e60;
}
