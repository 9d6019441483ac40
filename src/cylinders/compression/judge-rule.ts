import { type Finding, judge } from '../../judging/index.js';
import { ROUNDING, worstOf } from '../../judging/internal.js';
import type { Dimension, GaugePressure, Quantity, Ratio } from '../../quantities/index.js';
import type { CompressionRule } from './rules.js';
import type { JudgedRule, RuleVerdict } from './test-types.js';

/** A cylinder that was read. */
export interface ReadCylinder {
  readonly name: string;
  readonly dry: GaugePressure;
}

/** The readings of a test in the order of their size, and their errors. */
export interface SortedReadings {
  readonly cylinders: readonly ReadCylinder[];
  readonly lowest: ReadCylinder;
  readonly highest: ReadCylinder;
  readonly average: number;
  /** Of each reading, by chance. */
  readonly repeats: number;
  /** Of all alike: it cancels where readings are compared. */
  readonly gauge: number;
  /** Whether a cylinder was not read, which may be the worst. */
  readonly incomplete: boolean;
}

/** Judges all readings by one rule. */
export function judgeRule(rule: CompressionRule, readings: SortedReadings): JudgedRule {
  const { finding, cylinder } = findingBy(rule, readings);
  const limit = lowLimit(rule, readings);
  const low = readings.cylinders.filter(({ dry }) => dry < limit * (1 - ROUNDING));
  return {
    rule,
    verdict: verdictOf(rule, finding, readings),
    cylinder,
    finding,
    low: low.map(({ name }) => name),
  };
}

/**
 * A cylinder that was not read may break any rule, and moves the average either way. One alone
 * compares with nothing.
 */
function verdictOf(
  { kind }: CompressionRule,
  { verdict }: JudgedRule['finding'],
  { cylinders, incomplete }: SortedReadings,
): RuleVerdict {
  const compares = kind !== 'at least' && kind !== 'near a figure';
  if (verdict === 'undecided' || (compares && cylinders.length < 2)) return 'undecided';
  if (incomplete && (verdict === 'within' || kind === 'share of average')) return 'undecided';
  return verdict === 'within' ? 'kept' : 'broken';
}

interface Decided {
  readonly finding: JudgedRule['finding'];
  readonly cylinder: string;
}

function findingBy(rule: CompressionRule, readings: SortedReadings): Decided {
  const { lowest, highest, average, repeats, gauge, cylinders } = readings;
  const { basis = { kind: 'specified' } } = rule;
  const made = <D extends Dimension>(
    dimension: D,
    value: number,
    limits: { readonly min?: number; readonly max?: number },
    uncertainty: number,
  ) =>
    judge<D>({
      feature: 'compression',
      dimension,
      value: value as Quantity<D>,
      limits: limits as { readonly min?: Quantity<D>; readonly max?: Quantity<D> },
      limitsOf: 'service',
      basis,
      ...(uncertainty > 0 && { uncertainty: uncertainty as Quantity<D> }),
    });
  switch (rule.kind) {
    case 'spread': {
      const apart = highest.dry - lowest.dry;
      // A gauge off by a share shows a spread off by that share.
      const off = Math.hypot(
        Math.SQRT2 * repeats,
        highest.dry > 0 ? (gauge * apart) / highest.dry : 0,
      );
      return { finding: made('pressure', apart, { max: rule.most }, off), cylinder: lowest.name };
    }
    case 'share of highest':
      return { finding: shareFinding(highest.dry, 1), cylinder: lowest.name };
    case 'share of average':
      return { finding: shareFinding(average, 1 / cylinders.length), cylinder: lowest.name };
    case 'at least': {
      const off = Math.hypot(repeats, gauge);
      return {
        finding: made('gaugePressure', lowest.dry, { min: rule.least }, off),
        cylinder: lowest.name,
      };
    }
    case 'near a figure': {
      const off = Math.hypot(repeats, gauge);
      const limits = { min: rule.figure - rule.within, max: rule.figure + rule.within };
      const both = [lowest, highest].map(({ name, dry }) => ({
        cylinder: name,
        finding: made('gaugePressure', dry, limits, off),
      }));
      const worst: Finding<'gaugePressure'> | undefined = worstOf(
        both.map(({ finding }) => finding),
      );
      return both.find(({ finding }) => finding === worst) ?? (both[0] as Decided);
    }
  }

  function shareFinding(of: number, weight: number): Finding<'ratio'> {
    const { least } = rule as { readonly least: Ratio };
    const share = lowest.dry / of;
    // The lowest reading is in what it is held against, with its weight; with the highest, that one alone is.
    const byChance =
      weight === 1
        ? Math.hypot(1, share)
        : Math.hypot(1 - share * weight, share * weight * Math.sqrt(1 / weight - 1));
    const off = Math.hypot(repeats * byChance, gauge * (1 - share)) / of;
    return made('ratio', share, { min: least }, off);
  }
}

/** The reading below which a cylinder is low by a rule. */
function lowLimit(rule: CompressionRule, { highest, average }: SortedReadings): number {
  switch (rule.kind) {
    case 'spread':
      return highest.dry - rule.most;
    case 'share of highest':
      return rule.least * highest.dry;
    case 'share of average':
      return rule.least * average;
    case 'near a figure':
      return rule.figure - rule.within;
    case 'at least':
      return rule.least;
  }
}
