/**
 * A value against its limits: how far it is inside or outside, and who set them.
 *
 * @packageDocumentation
 */
export type { Basis } from './basis.js';
export { describe, type Wording } from './describe.js';
export { type Finding, type Judgement, judge, type Verdict } from './judge.js';
export type { Limits, SizeOrSpan, Span } from './limits.js';
export type { BasedLimits, OwnLimits } from './own-limits.js';
