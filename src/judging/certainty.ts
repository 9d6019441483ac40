import type { Dimension, Quantity } from '../quantities/index.js';
import { RebuildInputError } from '../quantities/index.js';
import { type DecisionRule, guardRule } from './decision-rule.js';
import { guardQuantity } from './guards.js';
import { showQuantity } from './showing.js';

/** How well a value is known, and what it takes to be judged by it. */
export interface Certainty<D extends Dimension> {
  /** Expanded uncertainty of the value at about 95 % (two standard uncertainties), if it is known [coherent SI unit]. */
  readonly uncertainty?: Quantity<NoInfer<D>>;
  /** How far from a limit a value must lie to be judged by it; by default by its whole uncertainty. */
  readonly rule?: DecisionRule<NoInfer<D>>;
}

/** Refuses a negative uncertainty and an unknown rule; gives what is there. `at` is put before the name of each field. */
export function guardCertainty<D extends Dimension>(
  at: string,
  { uncertainty, rule }: Certainty<D>,
  dimension: D,
): Certainty<D> {
  guardUncertainty(`${at}uncertainty`, uncertainty, dimension);
  guardRule(`${at}rule`, rule, dimension);
  return { ...(uncertainty !== undefined && { uncertainty }), ...(rule !== undefined && { rule }) };
}

function guardUncertainty<D extends Dimension>(
  parameter: string,
  uncertainty: Quantity<D> | undefined,
  dimension: D,
): void {
  if (uncertainty === undefined || guardQuantity(parameter, uncertainty, dimension) >= 0) return;
  throw new RebuildInputError({
    parameter,
    value: uncertainty,
    shown: showQuantity(uncertainty, dimension),
    expected: 'an uncertainty of zero or more',
    hint: 'Give the half width of the interval, without its sign.',
  });
}
