/**
 * Timing of a four-stroke engine: marks on a rim, piston travel, top dead centre, valves, gear teeth and spark.
 *
 * @packageDocumentation
 */
export { angleAtTravel, pistonTravel } from './piston-travel.js';
export { type RimDistance, type RimMarks, rimAngle, rimDistance } from './rim.js';
