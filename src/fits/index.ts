/**
 * Fits: what hole and shaft may measure, what they leave between them, and what happens where they press.
 *
 * @packageDocumentation
 */
export { type Fit, fitOf } from './fit.js';
export type { FitKind } from './fit-kind.js';
export type { ToleranceGrade } from './iso-grades.js';
export { type LimitsOfSize, limitsOfSize } from './limits-of-size.js';
