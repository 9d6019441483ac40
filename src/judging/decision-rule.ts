import { type Dimension, type Quantity, RebuildInputError } from '../quantities/index.js';
import { guardFields, guardQuantity, guardWord } from './guards.js';
import { showQuantity } from './showing.js';

/**
 * How far inside its limits a value must lie to be within them, and how far outside to be outside them: by
 * more than a guard band. `simple acceptance`: no band; the value decides as it was read, and a part that was
 * read at its limit is as likely as not outside it. `ISO 14253-1:2017`: 1.645 standard
 * uncertainties, 0.8225 of the expanded uncertainty, so that less than 5 % of the verdicts on a value at the edge of
 * the band are wrong. `full expanded uncertainty`: the whole of it (ISO 14253-1:1998), for which that is
 * less than 2.5 %; this is the rule where none is named. A guard band of the caller's own stands whatever the uncertainty.
 */
export type DecisionRule<D extends Dimension = Dimension> = NamedRule | OwnGuardBand<D>;

/** A decision rule that has a name. */
export type NamedRule = 'simple acceptance' | 'ISO 14253-1:2017' | 'full expanded uncertainty';

/** A guard band that the caller sets. */
export interface OwnGuardBand<D extends Dimension = Dimension> {
  /** How far inside a limit a value must lie to be within it, in the coherent SI unit of its dimension. */
  readonly guardBand: Quantity<D>;
}

/** The guard band of each rule over the expanded uncertainty, which is two standard uncertainties. */
const SHARES = {
  'simple acceptance': 0,
  'ISO 14253-1:2017': 0.8225,
  'full expanded uncertainty': 1,
} as const satisfies Record<NamedRule, number>;

const RULES = [
  'simple acceptance',
  'ISO 14253-1:2017',
  'full expanded uncertainty',
] as const satisfies readonly NamedRule[];

/** How far from a limit a value must lie to be judged by it. Without an uncertainty a named rule asks for nothing. */
export function guardBandOf<D extends Dimension>({
  rule = 'full expanded uncertainty',
  uncertainty = 0 as Quantity<D>,
}: {
  readonly rule?: DecisionRule<D>;
  readonly uncertainty?: Quantity<D>;
}): Quantity<D> {
  if (typeof rule === 'object') return rule.guardBand;
  return (shareOf(rule) * uncertainty) as Quantity<D>;
}

/** The guard band of a named rule over the expanded uncertainty. */
export const shareOf = (rule: NamedRule): number => SHARES[rule];

/** Refuses what is no decision rule. */
export function guardRule<D extends Dimension>(
  parameter: string,
  rule: DecisionRule<D> | undefined,
  dimension: D,
): DecisionRule<D> | undefined {
  if (rule === undefined) return undefined;
  if (typeof rule !== 'object' || rule === null) return guardWord(parameter, rule, RULES);
  guardFields(parameter, rule, OWN);
  guardQuantity(`${parameter}.guardBand`, rule.guardBand, dimension);
  if (rule.guardBand >= 0) return rule;
  throw new RebuildInputError({
    parameter: `${parameter}.guardBand`,
    value: rule.guardBand,
    shown: showQuantity(rule.guardBand, dimension),
    expected: 'a guard band of zero or more',
    hint: 'Give how far inside its limits a value must lie.',
  });
}

const OWN = ['guardBand'] as const;
