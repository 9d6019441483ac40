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
  const give = giveOfInner(OF_SHAFT, shaft, d) + giveOfOuter(OF_HUB, hub, d);
  return (excess > 0 ? excess / (d * give) : 0) as Pressure;
}

/** A metal is far past yielding long before. */
const MOST_SHARE = 20;

/** Refuses an interference that no fit has: most often one in another unit. */
export function guardExcess(at: string, excess: Length, d: Length): Length {
  return guardLength(at, excess, [interference.least, d / MOST_SHARE], interference.example);
}

/** How a caller names the fields of a part. They are written out: to join names at each call takes longer than the formula. */
export interface NamesOfPart {
  /** Its other diameter: the bore of an inner part, the outside of an outer one. */
  readonly other: string;
  readonly elasticity: string;
  readonly poisson: string;
}

/** Names of the fields of a shaft. */
export const OF_SHAFT: NamesOfPart = {
  other: 'shaft.bore',
  elasticity: 'shaft.elasticity',
  poisson: 'shaft.poisson',
};

/** Names of the fields of a hub. */
export const OF_HUB: NamesOfPart = {
  other: 'hub.outside',
  elasticity: 'hub.elasticity',
  poisson: 'hub.poisson',
};

/** How much smaller an inner part gets under pressure from outside, for its diameter [1/Pa]. */
export function giveOfInner(names: NamesOfPart, part: InnerPart, d: Length): number {
  const through = part.bore === undefined ? 0 : boreThrough(names.other, part.bore);
  if (through >= d * MOST_BORE) {
    guardLength(names.other, through as Length, [0, d * MOST_BORE], boreThrough.example);
  }
  const share = (through * through) / (d * d);
  const modulus = elasticModulus(names.elasticity, part.elasticity);
  return ((1 + share) / (1 - share) - poissonRatio(names.poisson, part.poisson)) / modulus;
}

/** A wall of a thousandth of the diameter is foil, and buckles. */
const MOST_BORE = 0.998;

/** How much larger an outer part gets under pressure from inside, for its diameter [1/Pa]. */
export function giveOfOuter(names: NamesOfPart, part: OuterPart, d: Length): number {
  const around = diameter(names.other, part.outside);
  if (around * MOST_BORE <= d) {
    guardLength(names.other, around, [d / MOST_BORE, diameter.most], diameter.example);
  }
  const share = (d * d) / (around * around);
  const modulus = elasticModulus(names.elasticity, part.elasticity);
  return ((1 + share) / (1 - share) + poissonRatio(names.poisson, part.poisson)) / modulus;
}
