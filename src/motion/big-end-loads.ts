import { diameter, guardFields, showIn } from '../judging/internal.js';
import {
  type Angle,
  type Force,
  kilonewton,
  type Length,
  type Mass,
  RebuildInputError,
  type RotationalSpeed,
  type Torque,
} from '../quantities/index.js';
import { crankSpeed, gasGauge, movingMass, pinForce } from './domains.js';
import type { GasPoint, GasReading } from './gas-trace.js';
import { CYCLE, guardCycle } from './guards.js';
import { type CrankTrain, guardCrankTrain, motionAt } from './piston-motion.js';

/** The force of a crankpin on the shells of its rod at one angle of the crank, seen from the rod. */
export interface PinLoad {
  /** Crank past the firing top dead centre, from 0 to less than 720 degrees [rad]. */
  readonly crankAngle: Angle;
  /** Force along the rod: positive presses on the shell in the rod, negative on the one in the cap [N]. */
  readonly along: Force;
  /** Force across the rod, positive towards where the crank turns at top dead centre [N]. */
  readonly across: Force;
  /** Lean of the rod from the cylinder's axis, positive over the first half turn [rad]. */
  readonly rodAngle: Angle;
}

/** The forces on a big end over the two turns of a four-stroke cycle. */
export interface LoadDiagram {
  /** Speed of the crankshaft that they belong to [rad/s]. */
  readonly speed: RotationalSpeed;
  /** The forces, in order of the crank's angle. */
  readonly loads: readonly PinLoad[];
}

/** A load, and what it does to the crank. */
export interface BigEndLoad extends PinLoad {
  /** Torque that the rod puts on the crank [N·m]. */
  readonly torque: Torque;
}

/** A load diagram made from an engine's parts. */
export interface BigEndLoads extends LoadDiagram {
  /** The forces and the torque, at the angles of the gas readings. */
  readonly loads: readonly BigEndLoad[];
  /** Torque on the crank, its mean over the cycle [N·m]. */
  readonly meanTorque: Torque;
}

/** The moving parts of one cylinder, and the gas above them. */
export interface BigEndEngine extends CrankTrain {
  /** Bore of the cylinder [m]. */
  readonly bore: Length;
  /** Speed of the crankshaft [rad/s]. */
  readonly speed: RotationalSpeed;
  /** Piston with its rings and pin [kg]. */
  readonly pistonMass: Mass;
  /** Small end of the rod, weighed with the big end held up level [kg]. */
  readonly smallEndMass: Mass;
  /** Big end of the rod with cap, bolts and shells, weighed with the small end held up level [kg]. */
  readonly bigEndMass: Mass;
  /** Gas pressure once around the cycle, above that in the crankcase; a trace's readings, or an indicator diagram's. */
  readonly gas: readonly GasReading[];
}

const ENGINE = [
  'stroke',
  'rodLength',
  'bore',
  'speed',
  'pistonMass',
  'smallEndMass',
  'bigEndMass',
  'gas',
] as const;
/** Of a reading as `gasTrace` gives it, the absolute pressure is not looked at. */
const READING = ['crankAngle', 'gauge', 'pressure'] as const;

/**
 * The forces of a crankpin on the shells of its rod, around the cycle, from the gas on the
 * piston and from the masses. The rod counts as two masses, one at each end. The friction of the piston,
 * and the weight of the parts, are left out.
 *
 *     thrust = (gauge * π / 4 * bore² - (pistonMass + smallEndMass) * acceleration) / cos(rodAngle)
 *     crankToRod = crankAngle + rodAngle
 *     along = thrust - bigEndMass * speed² * r * cos(crankToRod)
 *     across = -bigEndMass * speed² * r * sin(crankToRod)
 *     torque = thrust * r * sin(crankToRod)
 *
 * The acceleration, the angle of the rod and r are those of {@link pistonMotion}.
 *
 * @param engine - crank, rod, bore, speed, masses and gas pressure
 * @returns force along and across the rod, and torque, at each of the gas readings
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the rod cannot
 * belong to the stroke, the gas readings do not go once around the cycle, or a force is more than any big end
 * carries
 * @see Source: Khurmi and Gupta, Theory of Machines, chapter 15, with the exact motion of the piston
 * @example
 * ```ts
 * const crank = { stroke: inch(3.25), rodLength: inch(6) };
 * const { loads, meanTorque } = bigEndLoads({
 *   ...crank, bore: inch(3), speed: rpm(1800),
 *   pistonMass: kilogram(0.45), smallEndMass: kilogram(0.18), bigEndMass: kilogram(0.42),
 *   gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
 * });
 * const [atTop] = loads;
 * atTop && format(atTop.along, kilonewton, 1); // "8.0 kN"
 * format(meanTorque, newtonMetre); // "19.8 N·m"
 * ```
 */
export function bigEndLoads(engine: BigEndEngine): BigEndLoads {
  guardFields('engine', engine, ENGINE);
  guardCrankTrain(engine);
  const bore = diameter('bore', engine.bore);
  const speed = crankSpeed('speed', engine.speed);
  const upAndDown =
    movingMass('pistonMass', engine.pistonMass) + movingMass('smallEndMass', engine.smallEndMass);
  const around = movingMass('bigEndMass', engine.bigEndMass);
  const gas = guardCycle('gas', engine.gas, (at, reading) => {
    guardFields(at, reading as GasPoint, READING);
    gasGauge(`${at}.gauge`, reading.gauge);
  });
  const area = (Math.PI / 4) * bore * bore;
  const r = engine.stroke / 2;
  const loads = gas.map(({ crankAngle, gauge }): BigEndLoad => {
    const { acceleration, rodAngle } = motionAt(engine, speed, crankAngle);
    const thrust = (gauge * area - upAndDown * acceleration) / Math.cos(rodAngle);
    const fling = around * speed * speed * r;
    const turned = crankAngle + rodAngle;
    return {
      crankAngle,
      along: carried(thrust - fling * Math.cos(turned)),
      across: carried(0 - fling * Math.sin(turned)),
      rodAngle,
      // Nothing, not less than nothing, at the top.
      torque: (thrust * r * Math.sin(turned) + 0) as Torque,
    };
  });
  return { speed, loads, meanTorque: meanOf(loads) };
}

/** Refuses a force that no big end is made for, so that a film can be asked to carry what is given. */
function carried(force: number): Force {
  if (Math.abs(force) <= pinForce.most) return force as Force;
  throw new RebuildInputError({
    parameter: 'result',
    value: force,
    shown: `a force of ${showIn(force as Force, kilonewton)}`,
    expected: `at most ${showIn(pinForce.most as Force, kilonewton)}`,
    hint: 'No big end carries more: check the speed, the masses and the gas pressure.',
  });
}

/** Mean over the cycle: each torque counts over half the way to its neighbours. */
function meanOf(loads: readonly BigEndLoad[]): Torque {
  const angle = (i: number) =>
    (loads.at(i % loads.length)?.crankAngle ?? 0) + (i < 0 ? -CYCLE : i < loads.length ? 0 : CYCLE);
  const sum = loads.reduce(
    (total, { torque }, i) => total + (torque * (angle(i + 1) - angle(i - 1))) / 2,
    0,
  );
  return (sum / CYCLE) as Torque;
}
