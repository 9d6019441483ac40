export { compressionInAir, standardAirPressure } from './air-pressure.js';
export {
  clearanceVolumeByBurette,
  crownVolumeByBurette,
  type PouredSpace,
  type PouredVolume,
} from './burette.js';
export { type CompressionRatio, compressionRatio } from './compression-ratio.js';
export { compressionTest } from './compression-test.js';
export {
  type CrankedCylinder,
  type CrankingPressure,
  crankingPressure,
} from './cranking-pressure.js';
export { describeCompressionRatio } from './describe-compression-ratio.js';
export { type LeakDown, type LeakDownReadings, leakDown } from './leak-down.js';
export type { LeakHeardAt, LeakSuspect } from './leak-heard.js';
export { type CompressionRule, publishedCompressionRules } from './rules.js';
export type { CylinderSpaces, CylinderToCompress, GasketOpening, HeadGasket } from './spaces.js';
export { type CylinderSize, sweptVolume } from './swept-volume.js';
export type {
  CompressionReadings,
  CompressionTest,
  JudgedCompression,
  JudgedRule,
  OiledCylinder,
  RuleVerdict,
} from './test-types.js';
export {
  type CylinderToSkim,
  type GasketForRatio,
  gasketForRatio,
  type SkimForRatio,
  skimForRatio,
} from './wanted-ratio.js';
