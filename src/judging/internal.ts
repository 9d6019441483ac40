// What the other rooms use of this one and users never see.
export { describeBasis, guardBasis } from './basis.js';
export {
  type AnyDomain,
  type CardDefined,
  type CardLetter,
  type CardRefusal,
  type CardResult,
  card,
  defined,
  everyStep,
  type WrittenCard,
} from './card.js';

export { guardBandOf, shareOf } from './decision-rule.js';

export { describeMargin, guardWording, isMultiple, noteOf, sayFinding } from './describe.js';
export { angleDomain, type Domain, domain, lengthDomain } from './domain.js';
export {
  angleAround,
  diameter,
  diametralClearance,
  machiningStock,
  outOfTrue,
  pistonStroke,
  sizeStep,
  stationAlong,
  toleratedWear,
} from './domains.js';
export { guardFinding } from './finding.js';
export { holds } from './grade.js';
export {
  guardAlike,
  guardBetween,
  guardFields,
  guardLength,
  guardList,
  guardObject,
  guardQuantity,
  guardText,
  guardTruth,
  guardWhole,
  guardWord,
  isSoundNumber,
} from './guards.js';

export { comparisonTolerance, isOutside, judgeSpan, worstOf } from './judge.js';

export { guardLayout, type Layout } from './layout.js';
export { guardLimits, guardSpan, NANOMETRE, ROUNDING, shifted, spanOf } from './limits.js';
export { type Names, namedFrom } from './named-from.js';
export { guardOwnLimits, ownBasisOr, ownLimitsOr, type WithTarget } from './own-limits.js';
export {
  describeInward,
  describeSpan,
  say,
  sayClosely,
  sayDistance,
  sayFilm,
  sayWithDoubt,
} from './say.js';
export { outsideLength, showIn, showLength, showNumber, showQuantity } from './showing.js';
export { wordsMeant } from './trade-words.js';
export { downFrom, upFrom, within } from './within.js';
