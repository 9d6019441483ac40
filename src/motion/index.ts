/**
 * How crank, rod and piston move and stand, the pressure of the gas, and the loads on a big end.
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
export { describeStandDown } from './describe-stand-down.js';
export { type DipperDip, type DipperInTrough, dipperDip, type YesOrNo } from './dipper.js';
export {
  type GasCycle,
  type GasKnob,
  type GasPoint,
  type GasReading,
  type GasTrace,
  gasTrace,
} from './gas-trace.js';
export { type CrankTrain, type PistonMotion, pistonMotion } from './piston-motion.js';
export { type PistonStandDown, pistonStandDown, type SizesToDeck } from './stand-down.js';
export {
  type LevelThrows,
  type PhaseLimits,
  type ThrowPhase,
  type TopsOfTwin,
  throwPhase,
  throwPhaseByHeights,
} from './throw-phase.js';
