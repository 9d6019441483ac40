/**
 * How crank, rod and piston move, the pressure of the gas, and the loads on a big end.
 *
 * @packageDocumentation
 */
export {
  type BigEndEngine,
  type BigEndLoad,
  type BigEndLoads,
  bigEndLoads,
  type LoadDiagram,
  type PinLoad,
} from './big-end-loads.js';
export {
  type GasCycle,
  type GasKnob,
  type GasPoint,
  type GasReading,
  type GasTrace,
  gasTrace,
} from './gas-trace.js';
export { type CrankTrain, type PistonMotion, pistonMotion } from './piston-motion.js';
