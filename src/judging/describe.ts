import {
  type Dimension,
  type Length,
  type Quantity,
  RebuildInputError,
  ratio,
  type UnitSystem,
} from '../quantities/index.js';
import { flowUnit, guardSystem } from '../quantities/internal.js';
import { type Basis, describeBasis } from './basis.js';
import { type DecisionRule, guardBandOf } from './decision-rule.js';
import { type Finding, guardFinding } from './finding.js';
import { guardFields } from './guards.js';
import { comparisonTolerance } from './judge.js';
import type { Limits } from './limits.js';
import {
  describeBounds,
  describeLimits,
  type PrintIn,
  say,
  sayClosely,
  sayDistance,
  sayWithDoubt,
} from './say.js';

/** How to word a sentence. */
export interface Wording {
  /** The unit system to print in. */
  readonly units: UnitSystem;
  /** How to name who set a limit; by default in full, in parentheses. A report numbers them. */
  readonly nameBasis?: (basis: Basis) => string;
  /**
   * Whether to tell why other steps were passed over, and place by place what fits as it is. The `describe…`
   * functions tell it unless this is false, a report only if it is true.
   */
  readonly why?: boolean;
}

/**
 * Describes a finding in one sentence, in the units asked for.
 *
 * @param finding - what `judge` gave
 * @param wording - the units to print in
 * @returns one sentence: feature, value, where it stands against its limits, and who set them
 * @throws {RebuildInputError} when a field is misspelt, the finding is not one, or the unit system is unknown
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'end play', dimension: 'length', value: thou(12),
 *   limits: { min: thou(4), max: thou(10) }, basis: { kind: 'specified' },
 * });
 * describe(finding, { units: 'inch' });
 * // ["end play 0.0120 in: 0.0020 in above the limit of 0.0100 in (specified)"]
 * ```
 */
export function describe<D extends Dimension>(
  finding: Finding<D>,
  wording: Wording,
): readonly string[] {
  return [sayFinding(finding, wording)];
}

/** The sentence of a finding. */
export function sayFinding<D extends Dimension>(finding: Finding<D>, wording: Wording): string {
  guardWording(wording);
  const { dimension, feature, value, limits, verdict, margin, uncertainty, rule, basis } =
    guardFinding('finding', finding);
  const as = printIn(finding, wording);
  const print = (quantity: Quantity<D>) => say(quantity, dimension, as);
  const distance = (quantity: number) => sayDistance(quantity, dimension, as);
  const closely = (quantity: number) => sayClosely(quantity, dimension, as);
  const known =
    uncertainty === undefined ? print(value) : sayWithDoubt(value, uncertainty, dimension, as);
  const byRule = rule && describeRule(rule, closely);
  const standing = () => {
    switch (verdict) {
      case 'within': {
        const limit = limitAt(value, limits, dimension);
        if (limit !== undefined) return `within, exactly at the limit of ${print(limit)}`;
        // What must be at least so much is not inside anything.
        return limits.max === undefined
          ? `above the least of ${print(limits.min as Quantity<D>)}`
          : `within ${describeLimits(limits, dimension, as)}`;
      }
      case 'undecided':
        return `undecided${byRule ? ` by ${byRule}` : ''}, as it may be inside or outside ${describeLimits(limits, dimension, as)}`;
      default: {
        const limit = (verdict === 'above' ? limits.max : limits.min) as Quantity<D>;
        return `${distance(-margin)} ${verdict} the limit of ${print(limit)}`;
      }
    }
  };
  const first = `${feature} ${known}: ${standing()} ${noteOf(basis, wording)}`;
  // A rule that is laxer than the uncertainty says so of what it decides.
  const noise = comparisonTolerance(dimension, [value]);
  const isLax = verdict !== 'undecided' && Math.abs(margin) + noise < (uncertainty ?? 0);
  const lax = isLax && byRule ? `, by ${byRule}: its uncertainty reaches past the limit` : '';
  return `${first}${lax}${worn(finding, wording)}`;
}

/** Whether a ratio is told as a multiple: a film is 5.15 times the roughness, where a share is told in percent. */
export const isMultiple = ({ dimension, limits, service }: Finding<Dimension>): boolean =>
  dimension === 'ratio' &&
  [limits, service?.limits ?? {}].some(({ min = 0, max = 0 }: Limits<number>) =>
    [min, max].some((end) => Math.abs(end) > 2),
  );

/** One unit for a whole sentence, so that what stands in it can be compared. */
function printIn(finding: Finding<Dimension>, { units }: Wording): PrintIn {
  if (isMultiple(finding)) return ratio;
  if (finding.dimension !== 'flow') return units;
  const { value, limits } = finding;
  const { min = 0, max = 0 }: Limits<number> = limits;
  return flowUnit(Math.max(Math.abs(value), Math.abs(min), Math.abs(max)));
}

/** How the rule that decided is called; nothing of the one that is used where none is named. */
function describeRule<D extends Dimension>(
  rule: DecisionRule<D>,
  closely: (quantity: number) => string,
): string | undefined {
  if (typeof rule === 'object') return `a guard band of ${closely(rule.guardBand)}`;
  if (rule === 'full expanded uncertainty') return undefined;
  return rule === 'simple acceptance' ? rule : `the rule of ${rule}`;
}

/** What a value outside the limits of new parts says of a used part: `, of new parts; within the service limit of …`. */
function worn<D extends Dimension>(finding: Finding<D>, wording: Wording): string {
  const { value, uncertainty, rule, verdict, limitsOf, service, grade, dimension } = finding;
  if (verdict === 'within' || grade === undefined || grade === 'out of limits') return '';
  if (limitsOf === 'service') return grade === 'worn out' ? ': worn out' : '';
  if (service === undefined) {
    // What is tighter than new is not worn.
    return verdict === 'above' ? ', of new parts; no service limit is given' : '';
  }
  const limit = `${whose(service.basis)} ${describeBounds(service.limits, dimension, printIn(finding, wording))} ${noteOf(service.basis, wording)}`;
  const { min = -Infinity, max = Infinity } = service.limits;
  const band = guardBandOf<D>({ ...(rule && { rule }), ...(uncertainty && { uncertainty }) });
  const isPast = value - band > max || value + band < min;
  switch (grade) {
    case 'serviceable':
      return `, of new parts; serviceable, within ${limit}`;
    case 'worn out':
      return `, of new parts; worn out, past ${limit}`;
    default:
      return `, of new parts; ${isPast ? 'past' : 'undecided against'} ${limit}`;
  }
}

/** Whose service limit it is: one of another engine, or a rule of thumb, is not this engine's. */
function whose(basis: Basis): string {
  if (basis.kind === 'common practice') return 'the rule of thumb for worn parts,';
  return basis.kind === 'published' && basis.forAnotherEngine
    ? "another engine's service limit of"
    : 'the service limit of';
}

/** The limit that a value is equal to within the tolerance of comparison, if there is one. */
function limitAt<D extends Dimension>(
  value: Quantity<D>,
  { max, min }: Limits<Quantity<D>>,
  dimension: D,
): Quantity<D> | undefined {
  return [max, min].find(
    (limit) =>
      limit !== undefined &&
      Math.abs(value - limit) <= comparisonTolerance(dimension, [value, limit]),
  );
}

/** How far a clearance is inside its limits, to follow its name: `stays 0.0004 in inside its limits`. */
export function describeMargin(margin: Length, units: UnitSystem): string {
  if (Math.abs(margin) <= comparisonTolerance('length', [])) return 'is exactly at its limit';
  return `stays ${sayDistance(margin, 'length', units)} inside its limits`;
}

const WORDING = ['units', 'nameBasis', 'why'] as const;

/** Refuses a wording without a unit system. */
export function guardWording(wording: Wording): void {
  guardFields('wording', wording, WORDING);
  guardSystem('wording.units', wording.units);
  const { nameBasis, why } = wording;
  if (nameBasis !== undefined && typeof nameBasis !== 'function') {
    throw new RebuildInputError({
      parameter: 'wording.nameBasis',
      value: nameBasis,
      expected: 'a function from a basis to text',
      hint: 'Leave it out to have every basis named in full.',
    });
  }
  if (why === undefined || typeof why === 'boolean') return;
  throw new RebuildInputError({
    parameter: 'wording.why',
    value: why,
    expected: 'true or false',
    hint: 'A report tells why steps were passed over only if this is true.',
  });
}

/** Names who set a limit, in the way the wording asks for. */
export function noteOf(basis: Basis, { nameBasis }: Wording): string {
  return nameBasis ? nameBasis(basis) : `(${describeBasis(basis)})`;
}
