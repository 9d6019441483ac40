import type { UnitSymbol } from './unit-table.js';

type Spellings = Partial<Readonly<Record<UnitSymbol, readonly string[]>>>;

/**
 * How people write units, beside the symbol itself. Tried as written first,
 * then without regard to capitals where only one unit of the dimension fits.
 */
export const spellingTable = {
  m: ['metre', 'metres', 'meter', 'meters'],
  mm: ['MM', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  µm: ['μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  in: ['"', '″', '”', 'inch', 'inches'],
  thou: ['thous', 'mil', 'mils', 'thousandth', 'thousandths'],
  tenth: ['tenths'],
  µin: ['μin', 'uin', 'microinch', 'microinches'],
  ft: ["'", '′', 'foot', 'feet'],
  'm²': ['m2', 'm^2', 'sq m'],
  'mm²': ['mm2', 'mm^2', 'sq mm'],
  'in²': ['in2', 'in^2', 'sq in'],
  'm³': ['m3', 'm^3'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  mL: ['ml', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  'cm³': ['cm3', 'cm^3'],
  'in³': ['in3', 'in^3', 'cu in', 'ci', 'cubic inch', 'cubic inches'],
  'US fl oz': ['US fluid ounce', 'US fluid ounces'],
  'US pt': ['US pint', 'US pints'],
  'US qt': ['US quart', 'US quarts'],
  'US gal': ['US gallon', 'US gallons'],
  'imp fl oz': ['imperial fluid ounce', 'imperial fluid ounces'],
  'imp pt': ['imperial pint', 'imperial pints'],
  'imp qt': ['imperial quart', 'imperial quarts'],
  'imp gal': ['imperial gallon', 'imperial gallons'],
  rad: ['radian', 'radians'],
  deg: ['°', 'degree', 'degrees'],
  kg: ['kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  lb: ['lbs', 'pound', 'pounds'],
  oz: ['ounce', 'ounces'],
  'kg/m³': ['kg/m3', 'kg/m^3'],
  'g/cm³': ['g/cm3', 'g/cm^3', 'g/mL', 'kg/L'],
  'lb/in³': ['lb/in3', 'lb/in^3'],
  s: ['sec', 'second', 'seconds'],
  min: ['minute', 'minutes'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  '1/s': ['/s', 'per second'],
  '1/min': ['/min', 'per minute', 'a minute', 'drops per minute', 'drops a minute', 'drops/min'],
  '1/h': ['/h', 'per hour', 'an hour'],
  N: ['newton', 'newtons'],
  lbf: ['pounds-force', 'pound-force'],
  bar: ['bars'],
  psi: ['lbf/in²', 'lbf/in2', 'lb/in²', 'lb/in2', 'lb/sq in', 'psia'],
  'kgf/cm²': ['kgf/cm2', 'kgf/cm^2'],
  'psi gauge': ['psig'],
  'bar gauge': ['barg'],
  N·m: ['N m', 'N.m', 'Nm'],
  lbf·ft: ['lbf ft', 'lbf-ft', 'lb-ft', 'lb ft', 'lb·ft', 'ft-lb', 'ft lb', 'ft·lb', 'ft-lbf'],
  lbf·in: ['lbf in', 'lbf-in', 'lb-in', 'lb in', 'lb·in', 'in-lb', 'in lb', 'in·lb', 'in-lbf'],
  kgf·m: ['kgf m', 'kgf-m'],
  'ft·lbf energy': ['ft·lbf', 'ft lbf', 'ft-lbf'],
  'ft/min': ['fpm'],
  'm/s²': ['m/s2', 'm/s^2'],
  'ft/s²': ['ft/s2', 'ft/s^2'],
  rpm: ['rev/min', 'r/min'],
  'mL/min': ['mL per minute', 'cc/min'],
  'mL/h': ['mL/hr', 'mL per hour', 'cc/h', 'cc/hr'],
  Pa·s: ['Pa s', 'Pa.s'],
  mPa·s: ['mPa s', 'mPa.s'],
  cSt: ['mm²/s', 'mm2/s', 'mm^2/s', 'centistokes'],
  'm²/s': ['m2/s', 'm^2/s'],
  K: ['kelvin'],
  '°C': ['C', 'degC', 'deg C', 'celsius'],
  '°F': ['F', 'degF', 'deg F', 'fahrenheit'],
  '°R': ['R', 'degR', 'rankine'],
  ΔK: ['K'],
  'Δ°C': ['°C', 'C', 'degC', 'deg C'],
  'Δ°F': ['°F', 'F', 'degF', 'deg F'],
  'lbf/in': ['lb/in'],
  '1/K': ['/K', 'per K', 'per kelvin', '1/°C', '/°C', 'per °C'],
  'ppm/K': ['ppm/°C', 'ppm/C', 'µm/(m·K)', 'um/(m.K)'],
  'ppm/°F': ['ppm/F'],
  'J/(kg·K)': ['J/(kg K)', 'J/kg/K', 'J/kg·K', 'J/(kg·°C)'],
  'Btu/(lb·°F)': ['Btu/(lb °F)', 'Btu/(lb F)', 'Btu/lb/°F', 'Btu/lb/F', 'Btu/lb·°F'],
  '-': [''],
  '%': ['percent'],
  'vol%': ['% vol', '%vol', '% v/v', '% by volume', 'percent by volume'],
  'mass%': ['% mass', '%mass', '% m/m', '% by mass', 'percent by mass'],
} as const satisfies Spellings;

/** The same, of any symbol. */
export const spellings: Spellings = spellingTable;

/** Spellings that name more than one size of unit, with what to write instead. */
export const ambiguousSpellings: Readonly<Record<string, string>> = {
  oz: 'a US or an imperial fluid ounce: write US fl oz or imp fl oz',
  'fl oz': 'a US or an imperial fluid ounce: write US fl oz or imp fl oz',
  pt: 'a US or an imperial pint: write US pt or imp pt',
  pint: 'a US or an imperial pint: write US pt or imp pt',
  qt: 'a US or an imperial quart: write US qt or imp qt',
  quart: 'a US or an imperial quart: write US qt or imp qt',
  gal: 'a US or an imperial gallon: write US gal or imp gal',
  gallon: 'a US or an imperial gallon: write US gal or imp gal',
};

/** Which units a name may stand for, if it is one of those that name more than one. */
export function ambiguityOf(name: string): string | undefined {
  const bare = name.toLowerCase().replace(/s$/, '');
  return Object.hasOwn(ambiguousSpellings, bare) ? ambiguousSpellings[bare] : undefined;
}
