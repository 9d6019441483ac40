import { domain, lengthDomain } from '../judging/internal.js';
import {
  celsius,
  centistokes,
  fahrenheit,
  hour,
  kilogramPerCubicMetre,
  litre,
  minute,
  mL,
  mLPerHour,
  newtonPerMetre,
  percent,
  percentByMass,
  percentByVolume,
  perMinute,
  ppmPerKelvin,
  ratio,
  squareMm,
} from '../quantities/index.js';

/** Oils and fuels, from 0.21 mm²/s, where the viscosity equation begins, to 2·10⁷ mm²/s, where it ends. */
export const liquidViscosity = /* @__PURE__ */ domain(centistokes, {
  least: 0.21e-6,
  most: 20,
  example: 'centistokes(32)',
});

/** An oil at 100 °C: no engine oil has a thousand mm²/s there. */
export const viscosityWhenHot = /* @__PURE__ */ domain(centistokes, {
  least: 0.21e-6,
  most: 1e-3,
  example: 'centistokes(11.1)',
});

/** From where the tables of ASTM D2161 begin to where the viscosity equation of this room ends. */
export const sayboltViscosity = /* @__PURE__ */ domain(centistokes, {
  least: 1.77e-6,
  most: 20,
  example: 'centistokes(32)',
});

/** Oil and fuel temperatures, -73 to 227 °C. */
export const oilTemperature = /* @__PURE__ */ domain(celsius, {
  least: 200,
  most: 500,
  example: 'celsius(40)',
});

/** Where the densities of liquids are known, -50 to 150 °C. */
export const densityTemperature = /* @__PURE__ */ domain(celsius, {
  least: 223.15,
  most: 423.15,
  example: 'celsius(40)',
});

/** Where ASTM D2161 holds, 0 to 350 °F. */
export const sayboltTemperature = /* @__PURE__ */ (() =>
  domain(fahrenheit, {
    least: fahrenheit(0),
    most: fahrenheit(350),
    example: 'fahrenheit(100)',
  }))();

/** Oils and fuels, from the lightest petrol to the heaviest lubricating oil at -73 °C, 1218 kg/m³. */
export const liquidDensity = /* @__PURE__ */ domain(kilogramPerCubicMetre, {
  least: 600,
  most: 1250,
  example: 'kilogramPerCubicMetre(880)',
});

/**
 * API gravities, in degrees: from the heaviest oil of table 54D to the lightest petrol. The billionth
 * is for what comes back rounded from a density.
 */
export const apiDegrees = /* @__PURE__ */ domain(ratio, {
  least: -10.000000001,
  most: 104.000000001,
  example: 'ratio(28)',
});

/** Share by which an oil or a fuel grows for a kelvin. */
export const liquidExpansion = /* @__PURE__ */ domain(ppmPerKelvin, {
  least: 1e-4,
  most: 2e-3,
  example: 'ppmPerKelvin(700)',
});

/** One drop: from a fine needle's to a millilitre. */
export const singleDrop = /* @__PURE__ */ domain(mL, {
  least: 1e-9,
  most: 1e-6,
  example: 'mL(0.05)',
});

/** The edge that a drop hangs from. */
export const drippingEdge = /* @__PURE__ */ lengthDomain({
  least: 1e-4,
  most: 0.02,
  example: 'mm(3)',
});

/** Surface tension of a liquid, from the lightest petrol to water. */
export const surfaceTension = /* @__PURE__ */ domain(newtonPerMetre, {
  least: 0.01,
  most: 0.1,
  example: 'newtonPerMetre(0.0216)',
});

/** Share of the weight held at an edge that falls as a drop. */
export const dropShare = /* @__PURE__ */ domain(ratio, {
  least: 0.5,
  most: 1,
  example: 'ratio(0.65)',
});

/** Space above a piston at top dead centre. */
export const clearanceSpace = /* @__PURE__ */ domain(mL, {
  least: 1e-6,
  most: 1e-2,
  example: 'mL(60)',
});

/** Share of its viscosity that an oil may lose. */
export const thinningLimit = /* @__PURE__ */ domain(percent, {
  least: 0,
  most: 0.99,
  example: 'percent(20)',
});

/** A sump or what is in it: up to 100 L. */
export const sumpVolume = /* @__PURE__ */ domain(litre, {
  least: 1e-6,
  most: 0.1,
  example: 'quartUS(1)',
});

/** What is poured in, drained or there already: none, or up to 100 L. */
export const pouredVolume = /* @__PURE__ */ domain(litre, {
  least: 0,
  most: 0.1,
  example: 'quartUS(1)',
});

/** How long an engine ran or stood: up to ten years. */
export const runningTime = /* @__PURE__ */ domain(hour, {
  least: 0,
  most: 3.2e8,
  example: 'hour(8)',
});

/** A leak: none, or from a drop in a year to a litre a second. */
export const leakFlow = /* @__PURE__ */ domain(mLPerHour, {
  least: 1e-15,
  most: 1e-3,
  orNone: true,
  example: 'mLPerHour(30)',
});

/** Drops that were counted: none, or one to a thousand. A mean of several counts need not be whole. */
export const countedDrops = /* @__PURE__ */ domain(ratio, {
  least: 1,
  most: 1000,
  orNone: true,
  example: 'ratio(12)',
});

/** How long drops were counted: from a second to eleven days. */
export const countingTime = /* @__PURE__ */ domain(minute, {
  least: 1,
  most: 1e6,
  example: 'minute(1)',
});

/** How often a drop falls: never, or from one in twelve days to a thousand a second. The flow it makes is a leak. */
export const dripRate = /* @__PURE__ */ domain(perMinute, {
  least: 1e-6,
  most: 1000,
  orNone: true,
  example: 'perMinute(12)',
});

/** Share of the fuel in an oil that evaporates in a time: none, or next to none to all of it at once. */
export const evaporationRate = /* @__PURE__ */ domain(perMinute, {
  least: 1e-15,
  most: 1000,
  orNone: true,
  example: 'perMinute(0.001)',
});

/** Fuel in oil by volume, from none to all. */
export const fuelShare = /* @__PURE__ */ domain(percentByVolume, {
  least: 0,
  most: 1,
  example: 'percentByVolume(5)',
});

/** A limit on fuel in oil by volume. With more than that it is no longer oil with fuel in it. */
export const dilutionLimit = /* @__PURE__ */ domain(percentByVolume, {
  least: 0,
  most: 0.99,
  example: 'percentByVolume(5)',
});

/** Fuel in oil by mass, from none to all. */
export const fuelByMass = /* @__PURE__ */ domain(percentByMass, {
  least: 0,
  most: 1,
  example: 'percentByMass(5)',
});

/** The free surface of the oil in a sump. */
export const oilSurface = /* @__PURE__ */ domain(squareMm, {
  least: 1e-4,
  most: 1,
  example: 'squareMm(15000)',
});

/** How far the oil in a sump has risen or fallen. */
export const levelRise = /* @__PURE__ */ lengthDomain({ least: -0.5, most: 0.5, example: 'mm(3)' });
