/**
 * Fits: what hole and shaft may measure, what they leave between them, and what happens where they press.
 *
 * @packageDocumentation
 */
export {
  type BushingHousing,
  boreAfterPressing,
  type FreeBushing,
  type PressedBushing,
} from './bushing.js';
export { type ElasticConstants, elasticConstants, type FitMetal } from './elastic-constants.js';
export { type Fit, fitOf } from './fit.js';
export type { FitKind } from './fit-kind.js';
export type { InchFitClass } from './inch-classes.js';
export { type InchFit, type InchLimits, inchFit } from './inch-fit.js';
export type { ToleranceGrade } from './iso-grades.js';
export { type InnerPart, interferencePressure, type OuterPart, type PartsPressed } from './lame.js';
export { type LimitsOfSize, limitsOfSize } from './limits-of-size.js';
export {
  type HeldByFriction,
  type PressedHub,
  type PressedShaft,
  type PressFit,
  type PressFitRequest,
  pressFit,
} from './press-fit.js';
export {
  type HeatedPart,
  type HeatingLimit,
  heatingLimit,
  type ShrinkRequest,
  type ShrinkTemperature,
  shrinkTemperature,
} from './shrink-temperature.js';
export type { WallStress } from './wall-stress.js';
