import { guardFields, guardList } from '../judging/internal.js';
import { elasticModulus } from '../measuring/internal.js';
import {
  type Force,
  type Length,
  MPa,
  type Pressure,
  type Stiffness,
} from '../quantities/index.js';
import { boltLoad, gripLength, threadDiameter } from './domains.js';

/** A length of a bolt that is as thick all along. */
export interface BoltSection {
  /** How long it is, between the faces of head and nut [m]. */
  readonly length: Length;
  /** How thick; of a threaded length the stress diameter that `threadAreas` gives [m]. */
  readonly diameter: Length;
}

/** What a pull does to a bolt. */
export interface BoltStretch {
  /** How much longer it is while it is pulled [m]. */
  readonly stretch: Length;
  /** Its stiffness between head and nut [N/m]. */
  readonly stiffness: Stiffness;
}

/** A bolt between its head and its nut, and the pull on it. */
export interface PulledBolt {
  /** The pull [N]. */
  readonly preload: Force;
  /** Its lengths between the faces of head and nut, each with its diameter. */
  readonly sections: readonly BoltSection[];
  /** Modulus of elasticity; by default 207 GPa, that of steel [Pa]. */
  readonly elasticity?: Pressure;
}

const PULLED = ['preload', 'sections', 'elasticity'] as const;
const SECTION = ['length', 'diameter'] as const;

/**
 * How much a bolt stretches under its preload, and how stiff it is: its lengths are springs one behind the other.
 *
 *     slenderness = length_1 / (π / 4 * diameter_1²) + length_2 / (π / 4 * diameter_2²)   more lengths likewise
 *     stretch = preload / elasticity * slenderness
 *     stiffness = elasticity / slenderness
 *
 * Stretch is the best measure of preload that a shop has: read the length of a rod bolt over both ends before and after
 * it is tightened. The part of the bolt inside of the nut and the head stretches a little too; count about half of the
 * nut's height as thread where the reading must agree. It holds below yield: a bolt that stays longer after it is slacked
 * off is scrap.
 *
 * @param bolt - preload, the lengths between head and nut, and the modulus of elasticity
 * @returns stretch and stiffness
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or there is no section
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-16 and 8-17; Hooke's law
 * @example
 * ```ts
 * const { stretch } = boltStretch({
 *   preload: lbf(5600),
 *   sections: [
 *     { length: inch(1.25), diameter: inch(0.375) },
 *     { length: inch(0.5), diameter: threadAreas(threadOf('3/8-24 UNF')).stressDiameter },
 *   ],
 * });
 * format(stretch, thou); // "3.2 thou"
 * ```
 */
export function boltStretch(bolt: PulledBolt): BoltStretch {
  guardFields('bolt', bolt, PULLED);
  const preload = boltLoad('preload', bolt.preload);
  const { elasticity: modulus = MPa(207_000) } = bolt;
  const elasticity = elasticModulus('elasticity', modulus);
  guardList('sections', bolt.sections, 1, 'section');
  let slender = 0;
  bolt.sections.forEach((section, i) => {
    guardFields(`sections[${i}]`, section, SECTION);
    const length = gripLength(`sections[${i}].length`, section.length);
    const diameter = threadDiameter(`sections[${i}].diameter`, section.diameter);
    slender += length / ((Math.PI / 4) * diameter * diameter);
  });
  return {
    stretch: ((preload / elasticity) * slender) as Length,
    stiffness: (elasticity / slender) as Stiffness,
  };
}
