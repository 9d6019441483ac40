// What the other rooms use of this one. It is not an entry point: users see it through the sheet and the build sheet.

export { assemblyChecks } from './checks.js';
export type { CompressionSetting } from './compression-setting.js';
export {
  BLIND,
  describeCranking,
  describeRule,
  describeRules,
  describeSpaces,
  onlyCompares,
} from './describe-compression.js';
export { describeDipper } from './describe-dipper.js';
export { describeFastener, FASTENER_NAMES } from './describe-fastener.js';
export { describeFit, describeNewParts, PRESSING } from './describe-fit.js';
export { describeTiming } from './describe-timing.js';
export { describeValve } from './describe-valve.js';
export { FASTENERS, type FastenerSetting } from './fastener-setting.js';
export type { FitSetting, NewParts } from './fit-setting.js';
export { sayLimits } from './say-limits.js';
export {
  type AroundAssembly,
  type AssemblySettings,
  aroundBores,
  assemblySettings,
  type RingsSetting,
} from './settings.js';
export type { TimingSetting } from './timing-setting.js';
export {
  type ColdLash,
  type SpringSetting,
  VALVE_KINDS,
  type ValveSetting,
} from './valve-setting.js';
