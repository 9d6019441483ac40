/**
 * Timing of a four-stroke engine: marks on a rim, piston travel, top dead centre, valves, gear teeth and spark.
 *
 * @packageDocumentation
 */
export { type CrankPlace, crankPlace, type DeadCentre } from './crank-place.js';
export { describeTimingCard } from './describe-timing-card.js';
export { type OneTooth, oneTooth } from './gear-teeth.js';
export { angleAtTravel, pistonTravel } from './piston-travel.js';
export { type PointsDwell, type PointsReading, pointsDwell, sparkLaterByDwell } from './points.js';
export { type RimDistance, type RimMarks, rimAngle, rimDistance } from './rim.js';
export { type RotorEdgeAngle, rotorEdgeAngle } from './rotor-edge.js';
export { type SparkCaution, type SparkSetting, type SparkToTime, sparkSetting } from './spark.js';
export {
  type CamShift,
  type ComparedGears,
  type TeethOff,
  type TimedGears,
  teethOff,
} from './teeth-off.js';
export {
  type TimingCard,
  type TimingCaution,
  type TimingEvent,
  type TimingRow,
  type TimingToList,
  timingCard,
} from './timing-card.js';
export { type StopReadings, type TopDeadCentre, topDeadCentre } from './top-dead-centre.js';
export type { ValveEvent, ValveReadings } from './valve-readings.js';
export { type LobeTiming, type ValveTiming, valveTiming } from './valve-timing.js';
