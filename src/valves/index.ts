/**
 * Lash, lift, guides, seats and springs of valves.
 *
 * @packageDocumentation
 */
export { type OpenValve, type ValveArea, valveArea } from './area.js';
export { afterFacing, type FacedValve, type ValveFacing } from './facing.js';
export {
  clearanceFromRock,
  type GuideClearance,
  guideClearance,
  type RockClearance,
  type RockedValve,
  type StemInGuide,
} from './guide.js';
export { type GuideWear, guideWear } from './guide-wear.js';
export {
  type LashGrowth,
  type LashSide,
  lashGrowth,
  type ValveTrain,
  type WarmLength,
} from './lash-growth.js';
export { type LobeOfCam, type ValveLift, valveLift } from './lift.js';
export type { OwnRatioLimits } from './ratio-limits.js';
export {
  type SeatFindings,
  type SeatLimits,
  type SeatReadings,
  seatFindings,
} from './seat-findings.js';
export {
  type CoilSpring,
  type SpringEnds,
  type SpringFigures,
  valveSpring,
} from './spring.js';
export { type PressedSpring, type SpringAtHeight, springAtHeight } from './spring-at-height.js';
export { type SpringSurge, type SurgingSpring, springSurge } from './spring-surge.js';
export {
  type ForceAtHeight,
  type SpringTest,
  springTest,
  type TestedSpring,
} from './spring-test.js';
export { type StemLength, type StemToFit, type StemWork, stemToGrind } from './stem.js';
