import { diameter, guardFields, guardLength } from '../judging/internal.js';
import { elasticModulus } from '../measuring/internal.js';
import type { Length, Pressure, Ratio } from '../quantities/index.js';
import { boreThrough, interference, poissonRatio } from './domains.js';

/** What is pressed in: a shaft, a pin or a bushing. */
export interface InnerPart {
  /** Bore through it; without one it is solid [m]. */
  readonly bore?: Length;
  /** Modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
  /** Poisson's ratio [-]. */
  readonly poisson: Ratio;
}

/** What it is pressed into: a hub, a boss or a housing. */
export interface OuterPart {
  /** Outside diameter; of what is not round, the smallest that fits inside it about the bore [m]. */
  readonly outside: Length;
  /** Modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
  /** Poisson's ratio [-]. */
  readonly poisson: Ratio;
}

/** Two parts that press on each other all round. */
export interface PartsPressed {
  /** Diameter where they meet [m]. */
  readonly diameter: Length;
  /** By how much the inner part is larger than its hole, in diameter [m]. */
  readonly diametralInterference: Length;
  /** The inner part. */
  readonly shaft: InnerPart;
  /** The outer part. */
  readonly hub: OuterPart;
}

const PARTS = ['diameter', 'diametralInterference', 'shaft', 'hub'] as const;
const INNER = ['bore', 'elasticity', 'poisson'] as const;
const OUTER = ['outside', 'elasticity', 'poisson'] as const;

/**
 * The pressure between a shaft and the hub that it is pressed or shrunk into, by Lamé. The interference is diametral, the
 * difference of two diameters as a micrometer reads them; a book that gives it radial gives half.
 *
 *     ofHub = ((outside² + diameter²) / (outside² - diameter²) + hub.poisson) / hub.elasticity
 *     ofShaft = ((diameter² + bore²) / (diameter² - bore²) - shaft.poisson) / shaft.elasticity
 *     interferencePressure = diametralInterference / (diameter * (ofHub + ofShaft))
 *
 * Both parts are taken as round, of one wall thickness along the whole fit, elastic and free to move along their axis.
 * Near the ends of a hub on a longer shaft the pressure is higher. Rough surfaces flatten as they are pressed together
 * and leave less interference than was measured. A clearance, a negative interference, leaves no pressure.
 *
 * @param parts - where they meet, how much they interfere, and both parts
 * @returns pressure where they meet [Pa]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the interference is more
 * than a twentieth of the diameter, the bore is not inside of the diameter, or the outside is not outside of it
 * @see Source: Lamé's thick cylinders; Bhavikatti, Strength of Materials, ex. 8.16
 * @example
 * ```ts
 * const steel = { elasticity: MPa(200_000), poisson: ratio(0.3) };
 * const pressure = interferencePressure({
 *   diameter: mm(40), diametralInterference: mm(0.04), shaft: steel, hub: { ...steel, outside: mm(80) },
 * });
 * // One material and a solid shaft: 0.04 / 40 * 200000 / 2 * (1 - (40 / 80)²) = 75 MPa.
 * format(pressure, MPa); // "75.00 MPa"
 * ```
 */
export function interferencePressure(parts: PartsPressed): Pressure {
  guardFields('parts', parts, PARTS);
  const { shaft, hub } = parts;
  const d = diameter('diameter', parts.diameter);
  const excess = interference('diametralInterference', parts.diametralInterference);
  if (excess > d / MOST_SHARE) guardExcess('diametralInterference', excess, d);
  guardFields('shaft', shaft, INNER);
  guardFields('hub', hub, OUTER);
  const give = giveOfInner('shaft', shaft, d) + giveOfOuter('hub', hub, d);
  return (excess > 0 ? excess / (d * give) : 0) as Pressure;
}

/** A metal is far past yielding long before. */
const MOST_SHARE = 20;

/** Refuses an interference that no fit has: most often one in another unit. */
export function guardExcess(at: string, excess: Length, d: Length): Length {
  return guardLength(at, excess, [interference.least, d / MOST_SHARE], interference.example);
}

/** How much smaller an inner part gets under pressure from outside, for its diameter [1/Pa]. */
export function giveOfInner(at: string, { bore, elasticity, poisson }: InnerPart, d: Length) {
  const through = bore === undefined ? 0 : boreThrough(`${at}.bore`, bore);
  if (through >= d * MOST_BORE) guardInside(`${at}.bore`, through as Length, d);
  const share = (through / d) ** 2;
  const modulus = elasticModulus(`${at}.elasticity`, elasticity);
  return ((1 + share) / (1 - share) - poissonRatio(`${at}.poisson`, poisson)) / modulus;
}

/** A wall of a thousandth of the diameter is foil, and buckles. */
const MOST_BORE = 0.998;

function guardInside(at: string, bore: Length, d: Length): Length {
  return guardLength(at, bore, [boreThrough.least, d * MOST_BORE], boreThrough.example);
}

/** How much larger an outer part gets under pressure from inside, for its diameter [1/Pa]. */
export function giveOfOuter(at: string, { outside, elasticity, poisson }: OuterPart, d: Length) {
  const around = diameter(`${at}.outside`, outside);
  if (around * MOST_BORE <= d) guardOutside(`${at}.outside`, around, d);
  const share = (d / around) ** 2;
  const modulus = elasticModulus(`${at}.elasticity`, elasticity);
  return ((1 + share) / (1 - share) + poissonRatio(`${at}.poisson`, poisson)) / modulus;
}

function guardOutside(at: string, outside: Length, d: Length): Length {
  return guardLength(at, outside, [d / MOST_BORE, diameter.most], diameter.example);
}
