/**
 * A value against its limits: how far it is inside or outside, and who set them.
 *
 * @packageDocumentation
 */
export type { Basis } from './basis.js';
export type { Certainty } from './certainty.js';
export { conformanceProbability, type MeasuredAgainstLimits } from './conformance.js';
export {
  falseAcceptanceRisk,
  falseRejectionRisk,
  type InspectedLot,
  type Lot,
} from './decision-risk.js';
export type { DecisionRule, NamedRule, OwnGuardBand } from './decision-rule.js';
export { describe, type Wording } from './describe.js';
export type { Finding, Judgement } from './finding.js';
export type { Grade, Verdict } from './grade.js';
export { judge } from './judge.js';
export type { Limits, LimitsOf, SizeOrSpan, Span } from './limits.js';
export type { BasedLimits, OwnLimits, OwnService, ServiceLimits } from './own-limits.js';
