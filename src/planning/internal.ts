// What the other rooms use of this one; users never see it.

export { chancesSection } from './chances-report.js';
export {
  describePartOf,
  limitsNumber,
  sayHomeMade,
  spanNumber,
  stackOf,
} from './describe-build.js';
export { sayFreeReadings, sayMayBring, sayPartToMeasure } from './describe-measure-first.js';
export { BEFORE_MONEY, describeOnceMore } from './describe-near.js';
export { neededNext } from './describe-next.js';
export { planSections } from './describe-plan.js';
export { isCountProven, isNoneAsked, isPlanProven } from './describe-proof.js';
export { describeToMake } from './describe-to-make.js';
export { besideOrder } from './job-doubts.js';
export { besidePurchase } from './purchase-doubts.js';
export { sayCost } from './say-cost.js';
export { sayCrossed } from './say-crossed.js';
export { sayInterchange } from './say-interchange.js';
export { sayWalls } from './walls.js';
export { workIn } from './work-in.js';
