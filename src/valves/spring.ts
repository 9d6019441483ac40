import { guardBetween, guardFields, guardLength, guardWord } from '../judging/internal.js';
import {
  type Density,
  kilogramPerCubicMetre,
  type Length,
  type Mass,
  MPa,
  type Pressure,
  type Rate,
  type Ratio,
  ratio,
  type Stiffness,
  type Time,
} from '../quantities/index.js';
import {
  coilCount,
  coilDiameter,
  deadCoilCount,
  shearStiffness,
  springWire,
  wireDensity,
} from './domains.js';

/** How a spring ends: its last coils wound shut, and ground flat or left round. */
export type SpringEnds = 'squared and ground' | 'squared';

/** A coil spring of round wire, wound to one diameter and one pitch. */
export interface CoilSpring {
  /** Diameter of the wire [m]. */
  readonly wire: Length;
  /** Diameter over the coils [m]. */
  readonly outside: Length;
  /** All coils, from tip to tip [-]. */
  readonly coils: Ratio;
  /** Coils that lie dead at the two ends together; by default 2 [-]. */
  readonly deadCoils?: Ratio;
  /** How it ends. */
  readonly ends: SpringEnds;
  /** Shear modulus of the wire; by default 79.3 GPa, that of steel. Hard-drawn music wire has up to 82.7 GPa [Pa]. */
  readonly shearModulus?: Pressure;
  /** Density of the wire; by default 7850 kg/m³, that of steel [kg/m³]. */
  readonly density?: Density;
}

/** What a coil spring is, whatever it is pressed to. */
export interface SpringFigures {
  /** Diameter of its coils, from the middle of the wire to the middle [m]. */
  readonly meanDiameter: Length;
  /** That over the wire: from 4 to 12 most springs can be wound [-]. */
  readonly springIndex: Ratio;
  /** Coils that work [-]. */
  readonly activeCoils: Ratio;
  /** Force for each length that it is pressed [N/m]. */
  readonly rate: Stiffness;
  /** Height with all coils shut: coil bind [m]. */
  readonly solidHeight: Length;
  /** Mass of the coils that work [kg]. */
  readonly activeMass: Mass;
  /** Lowest natural frequency, both ends held [1/s]. */
  readonly surgeFrequency: Rate;
  /** How long a wave runs from one end of the spring to the other [s]. */
  readonly waveTime: Time;
}

const SPRING = [
  'wire',
  'outside',
  'coils',
  'deadCoils',
  'ends',
  'shearModulus',
  'density',
] as const;
const ENDS = ['squared and ground', 'squared'] as const;

/**
 * Rate, solid height and surge of a valve spring from its wire, its coils and its turns.
 *
 *     meanDiameter = outside - wire
 *     activeCoils = coils - deadCoils
 *     rate = shearModulus * wire^4 / (8 * meanDiameter³ * activeCoils)
 *     groundSolid = wire * coils
 *     squaredSolid = wire * (coils + 1)
 *     activeMass = density * π² * wire² * meanDiameter * activeCoils / 4
 *     surgeFrequency = sqrt(rate / activeMass) / 2
 *     waveTime = sqrt(activeMass / rate)
 *
 * The rate goes by the fourth power of the wire: read it with a micrometer where it is neither rusted nor polished, and
 * trust a spring tester (`springTest`) more. Of the end coils, between one and two in all lie dead when a spring is
 * ground; the count is a guess by half a coil, and the rate with it by several per cent. Springs wound to a varying pitch or
 * diameter, and pairs of springs, follow other laws: take each of a pair by itself. A compressed spring throws its
 * keepers and itself: use a proper compressor, stand aside and wear eye protection.
 *
 * @param spring - wire, coils, turns, ends and what it is made of
 * @returns rate, solid height, lowest natural frequency and the time of a wave
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the coils do not fit the
 * wire, all coils lie dead, or the ends are unknown
 * @see Source: Shigley, Mechanical Engineering Design, sections 10-1 to 10-8, from memory
 * @example
 * ```ts
 * const figures = valveSpring({
 *   wire: inch(0.12), outside: inch(0.97), coils: ratio(7.5), ends: 'squared and ground',
 * });
 * format(figures.rate, lbfPerInch); // "88.26 lbf/in"
 * format(figures.solidHeight, inch); // "0.9000 in"
 * format(figures.surgeFrequency, perSecond, 0); // "425 1/s"
 * ```
 */
export function valveSpring(spring: CoilSpring): SpringFigures {
  guardFields('spring', spring, SPRING);
  return figuresOf(spring);
}

/** The same of a spring that has other fields besides. */
export function figuresOf(spring: CoilSpring): SpringFigures {
  const { deadCoils = 2 as Ratio, shearModulus = STEEL, density = STEEL_DENSITY } = spring;
  const wire = springWire('wire', spring.wire);
  const outside = coilDiameter('outside', spring.outside);
  // Wire cannot be wound tighter than about twice itself, and is a rope at forty times.
  guardLength('outside', outside, [3 * wire, 41 * wire], coilDiameter.example);
  const coils = coilCount('coils', spring.coils);
  const dead = deadCoilCount('deadCoils', deadCoils);
  guardBetween('coils', coils, ratio, [dead + 0.5, coilCount.most], coilCount.example);
  const ends = guardWord('ends', spring.ends, ENDS);
  const modulus = shearStiffness('shearModulus', shearModulus);
  const heavy = wireDensity('density', density);

  const mean = outside - wire;
  const active = coils - dead;
  const rate = (modulus * wire ** 4) / (8 * mean ** 3 * active);
  const mass = (heavy * Math.PI * Math.PI * wire * wire * mean * active) / 4;
  const waveTime = Math.sqrt(mass / rate);
  return {
    meanDiameter: mean as Length,
    springIndex: (mean / wire) as Ratio,
    activeCoils: active as Ratio,
    rate: rate as Stiffness,
    solidHeight: (wire * (ends === 'squared' ? coils + 1 : coils)) as Length,
    activeMass: mass as Mass,
    surgeFrequency: (0.5 / waveTime) as Rate,
    waveTime: waveTime as Time,
  };
}

const STEEL = /* @__PURE__ */ MPa(79_300);
const STEEL_DENSITY = /* @__PURE__ */ kilogramPerCubicMetre(7850);
