/**
 * A value against its limits: how far it is inside or outside, and who set them.
 *
 * @packageDocumentation
 */
export type { Basis } from './basis.js';
export { describe, type Wording } from './describe.js';
export type { Finding, Judgement } from './finding.js';
export type { Grade, Verdict } from './grade.js';
export { judge } from './judge.js';
export type { Limits, LimitsOf, SizeOrSpan, Span } from './limits.js';
export type { BasedLimits, OwnLimits, OwnService, ServiceLimits } from './own-limits.js';
