import { diameter, guardFields } from '../judging/internal.js';
import type { Length, Pressure, Ratio } from '../quantities/index.js';
import { giveOfInner, giveOfOuter, guardExcess, type NamesOfPart } from './lame.js';

/** A bushing before it is pressed in. */
export interface FreeBushing {
  /** Outside diameter, free [m]. */
  readonly outside: Length;
  /** Bore, free [m]. */
  readonly bore: Length;
  /** Modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
  /** Poisson's ratio [-]. */
  readonly poisson: Ratio;
}

/** The housing that it is pressed into. */
export interface BushingHousing {
  /** Bore before it is pressed in [m]. */
  readonly bore: Length;
  /** Outside diameter of the boss; of what is not round, the smallest that fits inside it about the bore [m]. */
  readonly outside: Length;
  /** Modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
  /** Poisson's ratio [-]. */
  readonly poisson: Ratio;
}

/** A bushing in its housing. */
export interface PressedBushing {
  /** By how much the bushing was larger than its housing; negative, it drops in and is not held [m]. */
  readonly diametralInterference: Length;
  /** Pressure between them [Pa]. */
  readonly pressure: Pressure;
  /** By how much its bore closes [m]. */
  readonly closing: Length;
  /** Its bore once it is in [m]. */
  readonly bore: Length;
}

const BOTH = ['bushing', 'housing'] as const;
const OF_BUSHING: NamesOfPart = {
  other: 'bushing.bore',
  elasticity: 'bushing.elasticity',
  poisson: 'bushing.poisson',
};
const OF_HOUSING: NamesOfPart = {
  other: 'housing.outside',
  elasticity: 'housing.elasticity',
  poisson: 'housing.poisson',
};
const BUSHING = ['outside', 'bore', 'elasticity', 'poisson'] as const;

/**
 * What a bushing measures inside once it is pressed in: its bore closes, and is reamed or honed to size only then.
 *
 *     diametralInterference = bushing.outside - housing.bore
 *     ofHousing = ((housing.outside² + housing.bore²) / (housing.outside² - housing.bore²) + housing.poisson) / housing.elasticity
 *     ofBushing = ((housing.bore² + bushing.bore²) / (housing.bore² - bushing.bore²) - bushing.poisson) / bushing.elasticity
 *     pressure = diametralInterference / (housing.bore * (ofHousing + ofBushing))
 *     closing = 2 * pressure * housing.bore² * bushing.bore / (bushing.elasticity * (housing.bore² - bushing.bore²))
 *     bore = bushing.bore - closing
 *
 * It is for elastic parts that are round and even along their length. A split bushing, oil holes and grooves, a housing of
 * uneven wall, and a bushing that yields or is scraped as it goes in all close otherwise, so this is what to leave for the
 * reamer and not a finished size: measure it in place. How far a bushing yields {@link pressFit} tells. Press it square,
 * with a shouldered mandrel a little under its bore, and line up its oil hole first; a press can kill, see there.
 *
 * @param parts - the bushing and its housing, both free
 * @returns interference, pressure, and the bore after pressing
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the interference is more
 * than a twentieth of the diameter, the bore is not inside of the housing's bore, or the outside is not outside of it
 * @see Source: Lamé's thick cylinders; see {@link interferencePressure}
 * @example
 * ```ts
 * const { closing, bore } = boreAfterPressing({
 *   bushing: { outside: mm(25.05), bore: mm(20), ...elasticConstants('bronze') },
 *   housing: { bore: mm(25), outside: mm(40), ...elasticConstants('steel') },
 * });
 * // By hand: 39.74 MPa between them; 2 * 39.74 * 25² * 20 / (111000 * (25² - 20²)) = 0.0398 mm.
 * format(closing, micrometre); // "39.8 µm"
 * format(bore, mm); // "19.960 mm"
 * ```
 */
export function boreAfterPressing(parts: {
  /** The bushing. */
  readonly bushing: FreeBushing;
  /** The housing. */
  readonly housing: BushingHousing;
}): PressedBushing {
  guardFields('parts', parts, BOTH);
  const { bushing, housing } = parts;
  guardFields('bushing', bushing, BUSHING);
  guardFields('housing', housing, BUSHING);
  const outside = diameter('bushing.outside', bushing.outside);
  const inside = diameter('bushing.bore', bushing.bore);
  const d = diameter('housing.bore', housing.bore);
  const excess = (outside - d) as Length;
  guardExcess('bushing.outside less housing.bore', excess, d);
  const give = giveOfInner(OF_BUSHING, bushing, d) + giveOfOuter(OF_HOUSING, housing, d);
  const pressure = excess > 0 ? excess / (d * give) : 0;
  const closing =
    (2 * pressure * d * d * inside) / (bushing.elasticity * (d * d - inside * inside));
  return {
    diametralInterference: excess,
    pressure: pressure as Pressure,
    closing: closing as Length,
    bore: (inside - closing) as Length,
  };
}
