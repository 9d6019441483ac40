// What the other rooms use of this one and users never see.

export { judgeRunout } from './bend.js';
export { nameUndersize } from './describe-grind-plan.js';
export { shimThickness, thrustFaceWidth } from './domains.js';
export { endPlayLimits } from './end-play.js';
export { guardJournalOfKind, guardMinimumOfKind, sizesOfKind } from './grind-request.js';
export {
  groundWithOthers,
  mayAllStay,
  type SoundAlone,
  saySoundAlone,
  soundAlone,
} from './sound-alone.js';
