// What the other rooms use of this one. It is no entry point: users never see it.
export { leastAssignment } from './assignment.js';
export { solveBanded } from './banded-cholesky.js';
export { chebyshevSum, polynomials } from './chebyshev.js';
export { dormandPrince, type State, type VectorField } from './dormand-prince.js';
export { maximumMatching } from './matching.js';
export { normalBeyond } from './normal-beyond.js';
export { quantilesOf } from './order-statistics.js';
export { type RandomBits, randomBits, uniform } from './random.js';
export { richardson } from './richardson.js';
export { newtonFromBeyond, rootOfFalling } from './roots.js';
export { normal } from './ziggurat.js';
