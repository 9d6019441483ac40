import type { Dimension, Quantity } from '../quantities/index.js';
import { guardDimension } from '../quantities/internal.js';
import { type Basis, guardBasis } from './basis.js';
import { type Certainty, guardCertainty } from './certainty.js';
import { GRADES, type Grade, type Verdict } from './grade.js';
import { guardFields, guardQuantity, guardText, guardWord } from './guards.js';
import { guardLimits, type Limits, type LimitsOf } from './limits.js';
import type { ServiceLimits } from './own-limits.js';

/** What `judge` needs to know. */
export interface Judgement<D extends Dimension> extends Certainty<D> {
  /** What is judged, in the trade's words: `'oil clearance'`. */
  readonly feature: string;
  /** Dimension of the value. */
  readonly dimension: D;
  /** The value, in the coherent SI unit of the dimension. */
  readonly value: Quantity<NoInfer<D>>;
  /** What it must lie between, in the same unit. */
  readonly limits: Limits<Quantity<NoInfer<D>>>;
  /** Who set the limits. */
  readonly basis: Basis;
  /** Whether the limits are of new parts or of worn ones. Say so of a part that wears, and it is graded. */
  readonly limitsOf?: LimitsOf;
  /** How far wear may take the part past the limits of new parts and leave it in service. */
  readonly service?: ServiceLimits<NoInfer<D>>;
}

/** A value, its limits and how it stands to them. Data: `describe` makes the sentence. */
export interface Finding<D extends Dimension = Dimension> extends Judgement<D> {
  /** `undecided` only where a limit lies within the guard band of the rule, which an uncertainty or the caller sets. */
  readonly verdict: Verdict;
  /** Distance to the nearest limit, in the same unit: inside it is positive, outside negative. */
  readonly margin: Quantity<D>;
  /** How a used part stands, where it was said what the limits are of. */
  readonly grade?: Grade;
}

const JUDGEMENT = [
  'feature',
  'dimension',
  'value',
  'limits',
  'basis',
  'limitsOf',
  'service',
  'uncertainty',
  'rule',
] as const;
const FINDING = [
  'feature',
  'dimension',
  'value',
  'limits',
  'basis',
  'limitsOf',
  'service',
  'uncertainty',
  'rule',
  'verdict',
  'margin',
  'grade',
] as const;

/** Refuses what cannot be judged, and says what its limits are of where that is told. */
export function guardJudgement<D extends Dimension>(judgement: Judgement<D>) {
  guardFields('judgement', judgement, JUDGEMENT);
  return guardJudged('', judgement);
}

/** Refuses a finding that `judge` did not make. */
export function guardFinding<D extends Dimension>(
  parameter: string,
  finding: Finding<D>,
): Finding<D> {
  guardFields(parameter, finding, FINDING);
  const { dimension } = guardJudged(`${parameter}.`, finding);
  guardQuantity(`${parameter}.margin`, finding.margin, dimension);
  guardWord(`${parameter}.verdict`, finding.verdict, VERDICTS);
  if (finding.grade !== undefined) guardWord(`${parameter}.grade`, finding.grade, GRADES);
  return finding;
}

/** Checks what a judgement and a finding have alike; `at` is put before the name of each field. */
function guardJudged<D extends Dimension>(at: string, judged: Judgement<D>) {
  const { feature, value } = judged;
  guardText(`${at}feature`, feature);
  const dimension = guardDimension(judged.dimension, `${at}dimension`);
  guardQuantity(`${at}value`, value, dimension);
  const limits = guardLimits(`${at}limits`, judged.limits, finite(dimension), dimension);
  const basis = guardBasis(`${at}basis`, judged.basis);
  const { uncertainty, rule } = guardCertainty(at, judged, dimension);
  const service = guardService(`${at}service`, judged.service, dimension);
  const limitsOf = guardLimitsOf(`${at}limitsOf`, judged.limitsOf, service);
  return { feature, dimension, value, limits, basis, uncertainty, rule, service, limitsOf };
}

const finite =
  <D extends Dimension>(dimension: D) =>
  (parameter: string, bound: Quantity<D>) =>
    guardQuantity(parameter, bound, dimension);

function guardService<D extends Dimension>(
  parameter: string,
  service: ServiceLimits<D> | undefined,
  dimension: D,
): ServiceLimits<D> | undefined {
  if (service === undefined) return undefined;
  guardFields(parameter, service, SERVICE);
  guardLimits(`${parameter}.limits`, service.limits, finite(dimension), dimension);
  guardBasis(`${parameter}.basis`, service.basis);
  return service;
}

const SERVICE = ['limits', 'basis'] as const;

/** What the limits are of: a service limit beside them tells that they are of new parts. */
function guardLimitsOf(
  parameter: string,
  limitsOf: LimitsOf | undefined,
  service: unknown,
): LimitsOf | undefined {
  if (limitsOf !== undefined) return guardWord(parameter, limitsOf, LIMITS_OF);
  return service === undefined ? undefined : 'new parts';
}

const LIMITS_OF = ['new parts', 'service'] as const;
const VERDICTS = ['within', 'below', 'above', 'undecided'] as const;
