import {
  type BasedLimits,
  type Finding,
  judge,
  type SizeOrSpan,
  type Span,
} from '../../judging/index.js';
import { diameter, guardFields, guardSpan, showIn } from '../../judging/internal.js';
import { airPressure } from '../../motion/internal.js';
import {
  type Area,
  type Flow,
  type Force,
  type GaugePressure,
  type Length,
  type Pressure,
  psiGauge,
  type Ratio,
  RebuildInputError,
  standardAtmosphere,
  type Temperature,
} from '../../quantities/index.js';
import type { OwnRatioLimits } from '../../valves/index.js';
import { ownRatioLimitsOr } from '../../valves/internal.js';
import {
  dischargeCoefficient,
  heldAir,
  orificeBore,
  readingsApart,
  testAir,
  toleratedLeakage,
  workshopAir,
} from './domains.js';
import { type LeakHeardAt, type LeakSuspect, suspectsOf } from './leak-heard.js';
import { leakageByCircular } from './leak-limit.js';
import { nozzleFlow } from './nozzle.js';
import { QUARTER_PI } from './swept-volume.js';

/** A cylinder under air from a tester of two gauges with an orifice between them, its piston held at top dead centre. */
export interface LeakDownReadings extends OwnRatioLimits {
  /** What the first gauge shows: the air that is fed in [Pa]. */
  readonly supply: GaugePressure;
  /** What the second shows: the air that the cylinder holds [Pa]. */
  readonly held: GaugePressure;
  /** Bore of the orifice between the gauges. Without it nobody knows how large the leak is [m]. */
  readonly orifice?: Length;
  /** Bore of the cylinder: for the force on its piston, and for which orifice is the right one [m]. */
  readonly bore?: Length;
  /** How far each gauge may be off, either way; by default both are taken as right [Pa]. */
  readonly gaugeWithin?: Pressure;
  /** Where air is heard, felt or seen. Leave it out if nobody has listened. */
  readonly heardAt?: readonly LeakHeardAt[];
  /** Absolute pressure of the air around; by default the standard one at the sea [Pa]. */
  readonly airPressure?: Pressure;
  /** Temperature of the air; by default 20 °C [K]. */
  readonly temperature?: Temperature;
  /** Share of an ideal flow that passes the orifice; by default 0.8 to 1, which is a guess [-]. */
  readonly discharge?: SizeOrSpan<Ratio>;
}

/** What a leakage test says. */
export interface LeakDown {
  /** Share of the pressure that is lost. It is of this tester: another orifice shows another loss for the same leak [-]. */
  readonly lost: Ratio;
  /** That against the caller's limits, else against the circular's if the tester is the circular's; absent otherwise. */
  readonly finding?: Finding<'ratio'>;
  /** Area of a hole of the orifice's own form that leaks as much. Absent without the orifice, or if nothing was held [m²]. */
  readonly leakArea?: Span<Area>;
  /** Air that the tester feeds, measured as it is in the room; absent without the orifice [m³/s]. */
  readonly airFlow?: Span<Flow>;
  /** What the air pushes the piston down with, if nothing leaks; absent without the bore. Off top dead centre it turns the crank [N]. */
  readonly pistonForce?: Force;
  /** What leaks, by where air was heard. Absent if nobody has listened; of none if nothing was heard. */
  readonly suspects?: readonly LeakSuspect[];
}

const READINGS = [
  'supply',
  'held',
  'orifice',
  'bore',
  'gaugeWithin',
  'heardAt',
  'airPressure',
  'temperature',
  'discharge',
  'limits',
  'basis',
] as const;

/**
 * What a cylinder leaks, from a tester that feeds it through an orifice between two gauges: how much of the pressure is
 * lost, and how large the leak is. **The air pushes the piston hard, and off top dead centre it spins the crank:** lock
 * the crank so that it can turn neither way, keep hands, bars and belts clear, leave no loose tool on it, and open the
 * air slowly.
 *
 *     lost = 1 - held / supply
 *     supplyPressure = supply + airPressure
 *     cylinderPressure = held + airPressure
 *     x = max(cylinderPressure / supplyPressure, (2 / 2.4) ^ 3.5)
 *     y = max(airPressure / cylinderPressure, (2 / 2.4) ^ 3.5)
 *     flowIn = supplyPressure * sqrt(7 * (x ^ (2 / 1.4) - x ^ (2.4 / 1.4)))
 *     flowOut = cylinderPressure * sqrt(7 * (y ^ (2 / 1.4) - y ^ (2.4 / 1.4)))
 *     leakArea = π / 4 * orifice² * flowIn / flowOut
 *     airFlow = discharge * π / 4 * orifice² * flowIn * sqrt(287.05 * temperature) / airPressure
 *     pistonForce = π / 4 * bore² * supply
 *
 * What flows through the orifice flows out of the leak: frictionless air up to the speed of sound, which it
 * reaches in the leak from 13 psi on. The area is one hole of the orifice's form; rings and valves leak through slits.
 *
 * It is judged by the caller's limits first. Without them, a tester as in AC 43.13-1B, 8-14 (80 psi; 0.040 in, for
 * bores from 5 in on 0.060 in) is held against its 25 %, past which that circular suspects a cylinder and reads it
 * again after a run. It is for aircraft, and past it the grade is undecided. No figure stands in for another tester. A
 * cold or dry cylinder loses more. Some air past the rings is in every engine; at a valve any that is heard tells. Is
 * the piston at the top of compression, not of exhaust, and is there lash?
 *
 * @param readings - both gauges, and what is known of tester, cylinder, air and limits
 * @returns share lost with a finding, area of the leak, air that flows, force on the piston, and what leaks
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * cylinder holds more than it is fed, the limits have no bound, or a place where air is heard is unknown
 * @see Source: AC 43.13-1B, 8-14; isentropic flow of air through a nozzle
 * @example
 * ```ts
 * const { lost, finding, leakArea, pistonForce } = leakDown({
 *   supply: psiGauge(80), held: psiGauge(66), orifice: inch(0.04), bore: inch(3), heardAt: ['exhaust'],
 * });
 * format(lost, percent, 1); // "17.5 %"
 * finding?.grade; // "serviceable"
 * leakArea && format(leakArea.min, squareMm); // "0.69 mm²"
 * pistonForce && format(pistonForce, lbf, 0); // "565 lbf"
 * ```
 */
export function leakDown(readings: LeakDownReadings): LeakDown {
  guardFields('readings', readings, READINGS);
  const supply = testAir('supply', readings.supply);
  const held = guardHeld(readings.held, supply);
  const { orifice, bore, heardAt } = readings;
  if (orifice !== undefined) orificeBore('orifice', orifice);
  if (bore !== undefined) diameter('bore', bore);
  const within =
    readings.gaugeWithin === undefined ? 0 : readingsApart('gaugeWithin', readings.gaugeWithin);
  const allowed = limitsFor(readings);
  const lost = (1 - held / supply) as Ratio;
  const through = orifice !== undefined && throughOrifice(readings, supply, held, orifice, within);
  return {
    lost,
    ...(allowed && { finding: findingOn(lost, allowed, (within / supply) * (2 - lost)) }),
    ...through,
    ...(bore !== undefined && { pistonForce: (QUARTER_PI * bore * bore * supply) as Force }),
    ...(heardAt !== undefined && { suspects: suspectsOf('heardAt', heardAt) }),
  };
}

function guardHeld(held: GaugePressure, supply: GaugePressure): GaugePressure {
  if (heldAir('held', held) <= supply) return held;
  throw new RebuildInputError({
    parameter: 'held',
    value: held,
    shown: showIn(held, psiGauge),
    expected: `no more than is fed, ${showIn(supply, psiGauge)}`,
    hint: 'The second gauge cannot show more than the first. Shut the cylinder off and compare the two.',
  });
}

/** The caller's limits, else those of the circular if they are of this tester, else none. */
function limitsFor(readings: LeakDownReadings): BasedLimits<'ratio'> | undefined {
  const fallback = leakageByCircular(readings);
  const allowed = ownRatioLimitsOr(readings, fallback ?? NONE, toleratedLeakage, 'readings');
  return allowed === NONE ? undefined : allowed;
}

const NONE: BasedLimits<'ratio'> = {
  limits: {},
  limitsOf: 'service',
  basis: { kind: 'specified' },
};

/** Both gauges off the worst way make the uncertainty of the share. */
const findingOn = (lost: Ratio, allowed: BasedLimits<'ratio'>, uncertainty: number) =>
  judge({
    feature: 'leakage of the cylinder',
    dimension: 'ratio',
    value: lost,
    ...allowed,
    ...(uncertainty > 0 && { uncertainty: uncertainty as Ratio }),
  });

/** What passes the orifice, and the leak that lets it out again, with both gauges off either way. */
function throughOrifice(
  readings: LeakDownReadings,
  supply: number,
  held: number,
  orifice: number,
  within: number,
): Pick<LeakDown, 'leakArea' | 'airFlow'> {
  const { airPressure: air = standardAtmosphere, temperature = ROOM, discharge = GUESS } = readings;
  airPressure('airPressure', air);
  const sound = Math.sqrt(GAS_CONSTANT * workshopAir('temperature', temperature));
  const passes = guardSpan('discharge', discharge, dischargeCoefficient, 'ratio');
  const area = QUARTER_PI * orifice * orifice;
  const low = leakAt(supply - within, held + within, air);
  const high = within === 0 ? low : leakAt(supply + within, held - within, air);
  const drawn = (area * sound) / air;
  const airFlow = {
    min: drawn * passes.min * low.through,
    max: drawn * passes.max * high.through,
  } as Span<Flow>;
  if (held - within < heldAir.least) return { airFlow };
  return { airFlow, leakArea: { min: area * low.share, max: area * high.share } as Span<Area> };
}

/** What passes the orifice, in pascals, and how large the leak is for it. Gauges that are off may say that nothing passes. */
function leakAt(fed: number, kept: number, air: number) {
  const [before, inside] = [fed + air, kept + air];
  const through = kept >= fed ? 0 : before * nozzleFlow(inside / before);
  return { through, share: through / (inside * nozzleFlow(air / inside)) };
}

const ROOM = 293.15 as Temperature;
const GUESS = { min: 0.8 as Ratio, max: 1 as Ratio } as const;
/** Of dry air [J/(kg·K)]. */
const GAS_CONSTANT = 287.05;
