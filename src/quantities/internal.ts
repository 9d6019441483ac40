// What the other rooms use of this one and users never see.
export { complaintOf, rounded, showValue } from './error.js';
export { largestOf, smallestOf } from './extremes.js';
export { formatNumber, scaleOf } from './format.js';
export { mathjsUnit } from './mathjs-unit.js';
export { LONGEST_NAME, nearest } from './nearest.js';
export { scales } from './scales.js';
export { ambiguousSpellings, spellings } from './spellings.js';
export { filmUnit, flowUnit, guardDimension, guardSystem } from './systems.js';
