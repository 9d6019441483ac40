import { type Fraction, product, quotient } from './fractions.js';
import { unit } from './unit.js';

// The one table of factors. Everything is built from the definitions in these
// few lines; nothing below is a pasted decimal.
// source: NIST SP 811 (2008), section 5 and appendix B.
const MILLI: Fraction = [1, 1000];
/** 1 in = 25.4 mm = 127/5000 m. */
const IN: Fraction = [127, 5000];
const FT: Fraction = /* @__PURE__ */ product(IN, [12, 1]);
const IN3: Fraction = /* @__PURE__ */ product(IN, IN, IN);
const LB: Fraction = [45_359_237, 100_000_000];
/** Standard gravity, 9.806 65 m/s². */
const GRAVITY: Fraction = [196_133, 20_000];
const LBF: Fraction = /* @__PURE__ */ product(LB, GRAVITY);
const PSI: Fraction = /* @__PURE__ */ quotient(LBF, /* @__PURE__ */ product(IN, IN));
/** Conventional mercury, 13 595.1 kg/m³, under standard gravity. */
const INHG: Fraction = /* @__PURE__ */ product([135_951, 10], GRAVITY, IN);
const GALLON_US: Fraction = /* @__PURE__ */ product(IN3, [231, 1]);
const GALLON_IMPERIAL: Fraction = [454_609, 100_000_000];
/** One degree Fahrenheit of difference, 5/9 K. */
const DEGREE_F: Fraction = [5, 9];
/** International Table Btu, 1055.055 852 62 J exactly. */
const BTU: Fraction = [105_505_585_262, 100_000_000];

// length
/** Metre. */
export const metre = /* @__PURE__ */ unit('m', 'length', [1, 1], 4);
/** Millimetre. */
export const mm = /* @__PURE__ */ unit('mm', 'length', MILLI, 3);
/** Micrometre. */
export const micrometre = /* @__PURE__ */ unit('µm', 'length', [1, 1_000_000], 1);
/** Inch, 25.4 mm exactly. */
export const inch = /* @__PURE__ */ unit('in', 'length', IN, 4);
/** Thou: 0.001 in. */
export const thou = /* @__PURE__ */ unit('thou', 'length', /* @__PURE__ */ product(IN, MILLI), 1);
/** Tenth: 0.0001 in. */
export const tenth = /* @__PURE__ */ unit(
  'tenth',
  'length',
  /* @__PURE__ */ product(IN, [1, 10_000]),
  1,
);
/** Microinch: a millionth of an inch, for films of oil and the roughness of a surface. */
export const microinch = /* @__PURE__ */ unit(
  'µin',
  'length',
  /* @__PURE__ */ product(IN, [1, 1_000_000]),
  0,
);
/** Foot, 12 in. */
export const foot = /* @__PURE__ */ unit('ft', 'length', FT, 3);

// area
/** Square metre. */
export const squareMetre = /* @__PURE__ */ unit('m²', 'area', [1, 1], 4);
/** Square millimetre. */
export const squareMm = /* @__PURE__ */ unit('mm²', 'area', [1, 1_000_000], 2);
/** Square inch. */
export const squareInch = /* @__PURE__ */ unit('in²', 'area', /* @__PURE__ */ product(IN, IN), 4);

// volume
/** Cubic metre. */
export const cubicMetre = /* @__PURE__ */ unit('m³', 'volume', [1, 1], 6);
/** Litre. */
export const litre = /* @__PURE__ */ unit('L', 'volume', MILLI, 3);
/** Millilitre. */
export const mL = /* @__PURE__ */ unit('mL', 'volume', [1, 1_000_000], 1);
/** Cubic centimetre. */
export const cubicCm = /* @__PURE__ */ unit('cm³', 'volume', [1, 1_000_000], 1);
/** Cubic inch. */
export const cubicInch = /* @__PURE__ */ unit('in³', 'volume', IN3, 3);
/** US fluid ounce: 1/128 US gallon. */
export const fluidOunceUS = /* @__PURE__ */ unit(
  'US fl oz',
  'volume',
  /* @__PURE__ */ product(GALLON_US, [1, 128]),
  2,
);
/** US liquid pint. */
export const pintUS = /* @__PURE__ */ unit(
  'US pt',
  'volume',
  /* @__PURE__ */ product(GALLON_US, [1, 8]),
  3,
);
/** US liquid quart. */
export const quartUS = /* @__PURE__ */ unit(
  'US qt',
  'volume',
  /* @__PURE__ */ product(GALLON_US, [1, 4]),
  3,
);
/** US gallon, 231 in³. */
export const gallonUS = /* @__PURE__ */ unit('US gal', 'volume', GALLON_US, 3);
/** Imperial fluid ounce: 1/160 imperial gallon. */
export const fluidOunceImperial = /* @__PURE__ */ unit(
  'imp fl oz',
  'volume',
  /* @__PURE__ */ product(GALLON_IMPERIAL, [1, 160]),
  2,
);
/** Imperial pint. */
export const pintImperial = /* @__PURE__ */ unit(
  'imp pt',
  'volume',
  /* @__PURE__ */ product(GALLON_IMPERIAL, [1, 8]),
  3,
);
/** Imperial quart. */
export const quartImperial = /* @__PURE__ */ unit(
  'imp qt',
  'volume',
  /* @__PURE__ */ product(GALLON_IMPERIAL, [1, 4]),
  3,
);
/** Imperial gallon, 4.546 09 L exactly. */
export const gallonImperial = /* @__PURE__ */ unit('imp gal', 'volume', GALLON_IMPERIAL, 3);

// angle
/** Radian. */
export const radian = /* @__PURE__ */ unit('rad', 'angle', [1, 1], 4);
/** Degree of arc, or of crank. */
export const degree = /* @__PURE__ */ unit('deg', 'angle', [Math.PI, 180], 1);

// mass
/** Kilogram. */
export const kilogram = /* @__PURE__ */ unit('kg', 'mass', [1, 1], 3);
/** Gram. */
export const gram = /* @__PURE__ */ unit('g', 'mass', MILLI, 1);
/** Pound of mass, 0.453 592 37 kg exactly. */
export const pound = /* @__PURE__ */ unit('lb', 'mass', LB, 3);
/** Avoirdupois ounce of mass: 1/16 lb. */
export const ounce = /* @__PURE__ */ unit('oz', 'mass', /* @__PURE__ */ product(LB, [1, 16]), 2);

// density
/** Kilogram per cubic metre. */
export const kilogramPerCubicMetre = /* @__PURE__ */ unit('kg/m³', 'density', [1, 1], 1);
/** Gram per cubic centimetre. */
export const gramPerCubicCm = /* @__PURE__ */ unit('g/cm³', 'density', [1000, 1], 4);
/** Pound per cubic inch. */
export const poundPerCubicInch = /* @__PURE__ */ unit(
  'lb/in³',
  'density',
  /* @__PURE__ */ quotient(LB, IN3),
  4,
);

// time
/** Second. */
export const second = /* @__PURE__ */ unit('s', 'time', [1, 1], 1);
/** Minute. */
export const minute = /* @__PURE__ */ unit('min', 'time', [60, 1], 1);
/** Hour. */
export const hour = /* @__PURE__ */ unit('h', 'time', [3600, 1], 1);

// rate
/** So many, or such a share, in a second. */
export const perSecond = /* @__PURE__ */ unit('1/s', 'rate', [1, 1], 3);
/** So many, or such a share, in a minute. */
export const perMinute = /* @__PURE__ */ unit('1/min', 'rate', [1, 60], 1);
/** So many, or such a share, in an hour. */
export const perHour = /* @__PURE__ */ unit('1/h', 'rate', [1, 3600], 3);

// force
/** Newton. */
export const newton = /* @__PURE__ */ unit('N', 'force', [1, 1], 1);
/** Kilonewton. */
export const kilonewton = /* @__PURE__ */ unit('kN', 'force', [1000, 1], 3);
/** Pound-force: the weight of a pound under standard gravity. */
export const lbf = /* @__PURE__ */ unit('lbf', 'force', LBF, 1);
/** Kilogram-force. */
export const kgf = /* @__PURE__ */ unit('kgf', 'force', GRAVITY, 2);

// pressure
/** Pascal, absolute or as a stress. */
export const pascal = /* @__PURE__ */ unit('Pa', 'pressure', [1, 1], 0);
/** Kilopascal, absolute or as a stress. */
export const kPa = /* @__PURE__ */ unit('kPa', 'pressure', [1000, 1], 1);
/** Megapascal, absolute or as a stress. */
export const MPa = /* @__PURE__ */ unit('MPa', 'pressure', [1_000_000, 1], 2);
/** Bar, absolute or as a stress. */
export const bar = /* @__PURE__ */ unit('bar', 'pressure', [100_000, 1], 3);
/** Pound-force per square inch, absolute or as a stress. */
export const psi = /* @__PURE__ */ unit('psi', 'pressure', PSI, 1);
/** Thousand pounds-force per square inch, in which strengths are given. */
export const ksi = /* @__PURE__ */ unit(
  'ksi',
  'pressure',
  /* @__PURE__ */ product([1000, 1], PSI),
  2,
);
/** Conventional inch of mercury (13 595.1 kg/m³), absolute. */
export const inHg = /* @__PURE__ */ unit('inHg', 'pressure', INHG, 2);
/** Kilogram-force per square centimetre, absolute or as a stress. */
export const kgfPerSquareCm = /* @__PURE__ */ unit(
  'kgf/cm²',
  'pressure',
  /* @__PURE__ */ product(GRAVITY, [10_000, 1]),
  3,
);

// gaugePressure
/** Pascal above the surrounding air. */
export const pascalGauge = /* @__PURE__ */ unit('Pa gauge', 'gaugePressure', [1, 1], 0);
/** Kilopascal above the surrounding air. */
export const kPaGauge = /* @__PURE__ */ unit('kPa gauge', 'gaugePressure', [1000, 1], 1);
/** Bar above the surrounding air. */
export const barGauge = /* @__PURE__ */ unit('bar gauge', 'gaugePressure', [100_000, 1], 3);
/** Pound-force per square inch above the surrounding air. */
export const psiGauge = /* @__PURE__ */ unit('psi gauge', 'gaugePressure', PSI, 1);
/** Inch of mercury above the surrounding air; a vacuum is negative. */
export const inHgGauge = /* @__PURE__ */ unit('inHg gauge', 'gaugePressure', INHG, 2);

// torque
/** Newton metre of torque. */
export const newtonMetre = /* @__PURE__ */ unit('N·m', 'torque', [1, 1], 1);
/** Pound-force foot of torque. */
export const lbfFoot = /* @__PURE__ */ unit(
  'lbf·ft',
  'torque',
  /* @__PURE__ */ product(LBF, FT),
  1,
);
/** Pound-force inch of torque. */
export const lbfInch = /* @__PURE__ */ unit(
  'lbf·in',
  'torque',
  /* @__PURE__ */ product(LBF, IN),
  1,
);
/** Kilogram-force metre of torque. */
export const kgfMetre = /* @__PURE__ */ unit('kgf·m', 'torque', GRAVITY, 2);

// energy
/** Joule. */
export const joule = /* @__PURE__ */ unit('J', 'energy', [1, 1], 2);
/** Kilojoule. */
export const kilojoule = /* @__PURE__ */ unit('kJ', 'energy', [1000, 1], 3);
/** Foot pound-force of energy. */
export const footLbf = /* @__PURE__ */ unit(
  'ft·lbf energy',
  'energy',
  /* @__PURE__ */ product(LBF, FT),
  2,
);

// power
/** Watt. */
export const watt = /* @__PURE__ */ unit('W', 'power', [1, 1], 1);
/** Kilowatt. */
export const kilowatt = /* @__PURE__ */ unit('kW', 'power', [1000, 1], 2);
/** Mechanical horsepower: 550 ft·lbf a second. */
export const horsepowerMechanical = /* @__PURE__ */ unit(
  'hp',
  'power',
  /* @__PURE__ */ product(LBF, FT, [550, 1]),
  2,
);
/** Metric horsepower: 75 kgf·m a second. */
export const horsepowerMetric = /* @__PURE__ */ unit(
  'metric hp',
  'power',
  /* @__PURE__ */ product(GRAVITY, [75, 1]),
  2,
);
/** Electric horsepower: 746 W exactly. */
export const horsepowerElectric = /* @__PURE__ */ unit('electric hp', 'power', [746, 1], 2);

// speed
/** Metre per second. */
export const metrePerSecond = /* @__PURE__ */ unit('m/s', 'speed', [1, 1], 2);
/** Foot per minute, the trade's piston speed. */
export const footPerMinute = /* @__PURE__ */ unit(
  'ft/min',
  'speed',
  /* @__PURE__ */ product(FT, [1, 60]),
  0,
);

// acceleration
/** Metre per second squared. */
export const metrePerSecondSquared = /* @__PURE__ */ unit('m/s²', 'acceleration', [1, 1], 1);
/** Foot per second squared. */
export const footPerSecondSquared = /* @__PURE__ */ unit('ft/s²', 'acceleration', FT, 0);

// rotationalSpeed
/** Radian per second. */
export const radianPerSecond = /* @__PURE__ */ unit('rad/s', 'rotationalSpeed', [1, 1], 2);
/** Revolution per minute. */
export const rpm = /* @__PURE__ */ unit('rpm', 'rotationalSpeed', [Math.PI, 30], 0);

// flow
/** Cubic metre per second. */
export const cubicMetrePerSecond = /* @__PURE__ */ unit('m³/s', 'flow', [1, 1], 9);
/** Millilitre per minute. */
export const mLPerMinute = /* @__PURE__ */ unit('mL/min', 'flow', [1, 60_000_000], 2);
/** Millilitre per hour. */
export const mLPerHour = /* @__PURE__ */ unit('mL/h', 'flow', [1, 3_600_000_000], 1);
/** Litre per minute. */
export const litrePerMinute = /* @__PURE__ */ unit('L/min', 'flow', [1, 60_000], 3);
/** US gallon per minute. */
export const gallonUSPerMinute = /* @__PURE__ */ unit(
  'US gal/min',
  'flow',
  /* @__PURE__ */ product(GALLON_US, [1, 60]),
  3,
);

// dynamicViscosity
/** Pascal second. */
export const pascalSecond = /* @__PURE__ */ unit('Pa·s', 'dynamicViscosity', [1, 1], 4);
/** Millipascal second. */
export const millipascalSecond = /* @__PURE__ */ unit('mPa·s', 'dynamicViscosity', MILLI, 2);
/** Centipoise, the same as mPa·s. */
export const centipoise = /* @__PURE__ */ unit('cP', 'dynamicViscosity', MILLI, 2);
/** Reyn: a pound-force second per square inch. */
export const reyn = /* @__PURE__ */ unit('reyn', 'dynamicViscosity', PSI, 8);

// kinematicViscosity
/** Square metre per second. */
export const squareMetrePerSecond = /* @__PURE__ */ unit('m²/s', 'kinematicViscosity', [1, 1], 8);
/** Centistokes: 1 mm²/s. */
export const centistokes = /* @__PURE__ */ unit('cSt', 'kinematicViscosity', [1, 1_000_000], 2);

// temperature
/** Kelvin, a temperature. */
export const kelvin = /* @__PURE__ */ unit('K', 'temperature', [1, 1], 2);
/** Degree Celsius, a temperature. */
export const celsius = /* @__PURE__ */ unit('°C', 'temperature', [100, 100], 1, 27_315);
/** Degree Fahrenheit, a temperature. */
export const fahrenheit = /* @__PURE__ */ unit('°F', 'temperature', [100, 180], 1, 45_967);
/** Degree Rankine, a temperature. */
export const rankine = /* @__PURE__ */ unit('°R', 'temperature', DEGREE_F, 1);

// temperatureDifference
/** Kelvin of difference. */
export const kelvinDifference = /* @__PURE__ */ unit('ΔK', 'temperatureDifference', [1, 1], 2);
/** Degree Celsius of difference. */
export const celsiusDifference = /* @__PURE__ */ unit('Δ°C', 'temperatureDifference', [1, 1], 1);
/** Degree Fahrenheit of difference. */
export const fahrenheitDifference = /* @__PURE__ */ unit(
  'Δ°F',
  'temperatureDifference',
  DEGREE_F,
  1,
);

// stiffness
/** Newton per metre. */
export const newtonPerMetre = /* @__PURE__ */ unit('N/m', 'stiffness', [1, 1], 1);
/** Newton per millimetre. */
export const newtonPerMm = /* @__PURE__ */ unit('N/mm', 'stiffness', [1000, 1], 3);
/** Pound-force per inch. */
export const lbfPerInch = /* @__PURE__ */ unit(
  'lbf/in',
  'stiffness',
  /* @__PURE__ */ quotient(LBF, IN),
  2,
);

// thermalExpansion
/** Per kelvin, which is also per degree Celsius. */
export const perKelvin = /* @__PURE__ */ unit('1/K', 'thermalExpansion', [1, 1], 8);
/** Part per million for a kelvin. */
export const ppmPerKelvin = /* @__PURE__ */ unit('ppm/K', 'thermalExpansion', [1, 1_000_000], 1);
/** Part per million for a degree Fahrenheit. */
export const ppmPerFahrenheit = /* @__PURE__ */ unit(
  'ppm/°F',
  'thermalExpansion',
  /* @__PURE__ */ quotient([1, 1_000_000], DEGREE_F),
  1,
);

// specificHeat
/** Joule per kilogram and kelvin. */
export const joulePerKilogramKelvin = /* @__PURE__ */ unit('J/(kg·K)', 'specificHeat', [1, 1], 0);
/** International Table Btu per pound and degree Fahrenheit, 4186.8 J/(kg·K) exactly. */
export const btuPerPoundFahrenheit = /* @__PURE__ */ unit(
  'Btu/(lb·°F)',
  'specificHeat',
  /* @__PURE__ */ quotient(BTU, /* @__PURE__ */ product(LB, DEGREE_F)),
  3,
);

// ratio
/** Plain ratio. */
export const ratio = /* @__PURE__ */ unit('-', 'ratio', [1, 1], 4);
/** Percent of whatever the name says. */
export const percent = /* @__PURE__ */ unit('%', 'ratio', [1, 100], 2);
/** Part per million. */
export const ppm = /* @__PURE__ */ unit('ppm', 'ratio', [1, 1_000_000], 1);

// volumeFraction
/** Volume in volume. */
export const volumeFraction = /* @__PURE__ */ unit('vol/vol', 'volumeFraction', [1, 1], 4);
/** Percent by volume. */
export const percentByVolume = /* @__PURE__ */ unit('vol%', 'volumeFraction', [1, 100], 1);

// massFraction
/** Mass in mass. */
export const massFraction = /* @__PURE__ */ unit('mass/mass', 'massFraction', [1, 1], 4);
/** Percent by mass. */
export const percentByMass = /* @__PURE__ */ unit('mass%', 'massFraction', [1, 100], 1);
