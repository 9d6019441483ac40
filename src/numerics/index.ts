// What the other rooms use of this one. It is no entry point: users never see it.
export { leastAssignment } from './assignment.js';
export { solveBanded } from './banded-cholesky.js';
export { chebyshevSum, polynomials } from './chebyshev.js';
export { type Circle, leastSquaresCircle } from './circle.js';
export { dormandPrince, type State, type VectorField } from './dormand-prince.js';
export { halfLine, integralBetween } from './double-exponential.js';
export { fitByLeastSquares } from './gram-schmidt.js';
export { leastSquares } from './least-squares.js';
export { maximumMatching } from './matching.js';
export { minimumZone, type Zone } from './minimum-zone.js';
export { quantilesOf } from './order-statistics.js';
export { type RandomBits, randomBits, uniform } from './random.js';
export { richardson } from './richardson.js';
export { newtonFromBeyond, rootOfFalling } from './roots.js';
export {
  normalDistribution,
  normalQuantileOfTail,
  normalTail,
  studentDistribution,
  studentQuantileOfTail,
  studentTail,
} from './student.js';
export { normal } from './ziggurat.js';
