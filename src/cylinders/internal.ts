// What the other rooms use of this one and users never see.

export { boreInDoubt, boreShapeLimits, boreWearLimits } from './bore-limits.js';
export {
  sayPastHead,
  sayRatios,
  sayVolumes,
} from './compression/describe-compression-ratio.js';
export {
  chamberMouth,
  chamberVolume,
  compressionReading,
  crownVolume,
  gasketThickness,
  orificeBore,
  readingsApart,
  shareOfReading,
  testAir,
} from './compression/domains.js';
export { LEAK_PLACES } from './compression/leak-heard.js';
export { boreOrder, nameOversize } from './describe-bore-plan.js';
export { cylinderWall, ringGap, toleratedBoreWear } from './domains.js';
export { ringGapLimits } from './ring-filing.js';
