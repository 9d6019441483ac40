// What the other rooms use of this one and users never see.

export { boreInDoubt, boreShapeLimits, boreWearLimits } from './bore-limits.js';
export {
  chamberMouth,
  chamberVolume,
  compressionReading,
  crownVolume,
  gasketThickness,
  readingsApart,
  shareOfReading,
} from './compression/domains.js';
export { boreOrder, nameOversize } from './describe-bore-plan.js';
export { cylinderWall, ringGap, toleratedBoreWear } from './domains.js';
export { ringGapLimits } from './ring-filing.js';
