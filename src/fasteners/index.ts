/**
 * Threads, bolts and their tightening: areas, strength, preload, torque, stretch, joints and sequences.
 *
 * @packageDocumentation
 */
export { type BoltGrade, type BoltStrength, boltStrength } from './bolt-grades.js';
export { type NextSlot, nextSlot, type SlottedNut } from './castle-nut.js';
export {
  describeTighteningPlan,
  describeTorqueSetting,
  type TorqueWording,
  type WrenchScale,
} from './describe-torque.js';
export { type JointLoad, jointUnderLoad, type LoadedJoint } from './joint.js';
export { type ClampedLayer, type ClampedParts, memberStiffness } from './member-stiffness.js';
export { type LikelyThread, type MeasuredThread, nearestThreads } from './nearest-threads.js';
export { type NutFactor, nutFactor, type ThreadCondition } from './nut-factor.js';
export { type PermanentStretch, permanentStretch, type UsedBolt } from './permanent-stretch.js';
export { boltPreload, proofLoad, type StressedBolt } from './preload.js';
export { type ScrewedBolt, type ScrewTorque, screwTorque } from './screw-torque.js';
export { type BoltSection, type BoltStretch, boltStretch, type PulledBolt } from './stretch.js';
export { type ThreadAreas, threadAreas } from './thread-areas.js';
export type { ThreadForm, ThreadSize } from './thread-forms.js';
export { threadOf } from './thread-of.js';
export { type Thread, type ThreadSeries, threadsIn } from './thread-series.js';
export {
  type BoltPlace,
  type BoltsToTighten,
  type TighteningPlan,
  type TighteningRound,
  tighteningPlan,
} from './tightening-plan.js';
export {
  preloadFromTorque,
  type TorquedBolt,
  tighteningTorque,
} from './torque.js';
export { type BoltToTorque, type TorqueSetting, torqueSetting } from './torque-setting.js';
export { type TurnedNut, turnOfNut } from './turn-of-nut.js';
export { type BoltHardness, type UnknownBolt, unknownBolt } from './unknown-bolt.js';
export { type WrenchAdapter, wrenchSetting } from './wrench.js';
