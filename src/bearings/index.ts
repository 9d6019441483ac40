/**
 * Shell bearings: walls, oil clearance, shells that fit, the oil film, the orbit of a big end, and
 * whether a bearing is good.
 *
 * @packageDocumentation
 */
export * from './acceptance/index.js';
export {
  type BearingSizes,
  type BearingSpans,
  oilClearance,
  oilClearanceSpan,
  type Recommendation,
  recommendedOilClearance,
  shellWallFor,
} from './clearance.js';
export {
  type ClearanceExplanation,
  type ClearanceQuestion,
  describeClearance,
  explainClearance,
  type UndersizeMismatch,
} from './explain.js';
export * from './film/index.js';
export { flattenedThreadGap } from './flattened-thread.js';
export {
  type BearingBore,
  type BearingToWarm,
  type HotClearance,
  hotOilClearance,
  type WarmPart,
} from './hot-clearance.js';
export { matchShells, type Shell, type ShellMatch, type ShellSearch } from './match.js';
export * from './orbit/index.js';
export {
  freeSpread,
  type HousingReadings,
  type HousingRoundness,
  housingRoundness,
  type ShellInHousing,
  type ShellNip,
  shellNip,
} from './seating.js';
export { type ShellsToMake, type ShellWallToSuit, shellWallToSuit } from './shell-wall-to-suit.js';
