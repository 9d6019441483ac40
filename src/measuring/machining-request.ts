import type { Basis, OwnLimits, Span } from '../judging/index.js';
import {
  type Domain,
  diameter,
  guardBandOf,
  guardList,
  guardOwnLimits,
  guardSpan,
  guardWord,
  sizeStep,
  toleratedWear,
} from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { statedUncertainty } from './domains.js';
import { withStandard } from './size-steps.js';

/** What is asked alike when journals are to be ground to a common step and cylinders bored to one. */
export interface MachiningRequest {
  readonly standard: Span<Length>;
  readonly steps: readonly Length[];
  readonly sizeAllowance?: Length;
  readonly wear?: 'one side' | 'all round';
  readonly shape?: OwnLimits<'length'>;
  readonly sizeUncertainty?: Length;
}

/** An amount by a rule of thumb. */
export interface AmountRule {
  readonly amount: Length;
  readonly basis: Basis;
}

/** Checks what is asked alike, and fills in what was left out. `list` are the parts, by their name. */
export function guardMachining(
  {
    standard,
    steps,
    sizeAllowance,
    wear = 'one side',
    shape = {},
    sizeUncertainty,
  }: MachiningRequest,
  list: { readonly name: string; readonly parts: unknown; readonly one: string },
  stepWord: string,
  sizeRule: AmountRule,
) {
  guardOwnLimits('shape', shape);
  const guarded = guardSpan('standard', standard, diameter);
  guardList(list.name, list.parts, 1, list.one);
  guardList('steps', steps, 1, stepWord);
  const { amount, basis } = amountOr('sizeAllowance', sizeAllowance, sizeRule, toleratedWear);
  return {
    standard: guarded,
    steps: withStandard(steps),
    sizeAllowance: { most: amount, basis, band: bandOf(sizeUncertainty, shape) },
    wear: guardWord('wear', wear, ['one side', 'all round']),
    shape,
  };
}

/** How far a size must be from a bound to be judged by it: by the rule that the shape is judged by. */
function bandOf(uncertainty: Length | undefined, { rule }: OwnLimits<'length'>): Length {
  if (uncertainty === undefined) return 0 as Length;
  const known = statedUncertainty('sizeUncertainty', uncertainty);
  return guardBandOf<'length'>({ uncertainty: known, ...(rule && { rule }) });
}

/** The caller's own amount, or that of the rule of thumb; either says who set it. */
export function amountOr(
  parameter: string,
  own: Length | undefined,
  rule: AmountRule,
  domain: Domain<'length'>,
): AmountRule {
  if (own === undefined) return rule;
  return { amount: domain(parameter, own), basis: { kind: 'specified' } };
}

/** The steps that shells or pistons are at hand for, if that was said. */
export function guardStepsAtHand(
  parameter: string,
  steps: readonly Length[] | undefined,
  word: string,
): readonly Length[] | undefined {
  if (steps === undefined) return undefined;
  guardList(parameter, steps, 0, word);
  return steps.map((step, i) => sizeStep(`${parameter}[${i}]`, step));
}
