import { judge, type Limits } from '../../judging/index.js';
import { ROUNDING } from '../../judging/internal.js';
import type { GaugePressure, Quantity } from '../../quantities/index.js';
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
  switch (rule.kind) {
    case 'spread': {
      const apart = highest.dry - lowest.dry;
      // A gauge off by a share shows a spread off by that share.
      const off = Math.hypot(Math.SQRT2 * repeats, (gauge * apart) / highest.dry);
      return decided(lowest, 'pressure', apart, { max: rule.most }, off, rule);
    }
    case 'share of highest': {
      const share = lowest.dry / highest.dry;
      const off = Math.hypot(repeats * Math.hypot(1, share), gauge * (1 - share)) / highest.dry;
      return decided(lowest, 'ratio', share, { min: rule.least }, off, rule);
    }
    case 'share of average': {
      const { least: min, most: max } = rule;
      const limits = { min, ...(max !== undefined && { max }) };
      const held = (one: ReadCylinder) => {
        const share = one.dry / average;
        // The reading is in the average that it is held against, with its weight.
        const weight = share / cylinders.length;
        const byChance = Math.hypot(1 - weight, weight * Math.sqrt(cylinders.length - 1));
        const off = Math.hypot(repeats * byChance, gauge * (1 - share)) / average;
        return decided(one, 'ratio', share, limits, off, rule);
      };
      return worse(held(lowest), held(highest));
    }
    case 'at least': {
      const off = Math.hypot(repeats, gauge);
      return decided(lowest, 'gaugePressure', lowest.dry, { min: rule.least }, off, rule);
    }
    case 'near a figure': {
      const off = Math.hypot(repeats, gauge);
      const limits = { min: rule.figure - rule.within, max: rule.figure + rule.within };
      const held = (one: ReadCylinder) => decided(one, 'gaugePressure', one.dry, limits, off, rule);
      return worse(held(lowest), held(highest));
    }
  }
}

function decided<D extends 'pressure' | 'gaugePressure' | 'ratio'>(
  { name }: ReadCylinder,
  dimension: D,
  value: number,
  limits: { readonly min?: number; readonly max?: number },
  uncertainty: number,
  { basis = { kind: 'specified' } }: CompressionRule,
): Decided {
  const finding = judge<D>({
    feature: 'compression',
    dimension,
    value: value as Quantity<D>,
    limits: limits as Limits<Quantity<D>>,
    limitsOf: 'service',
    basis,
    ...(uncertainty > 0 && { uncertainty: uncertainty as Quantity<D> }),
  });
  return { finding: finding as JudgedRule['finding'], cylinder: name };
}

/** The one that is past its limits before one in doubt, and that before one within; of two alike the one with less margin. */
function worse(a: Decided, b: Decided): Decided {
  const badness = ({ finding: { verdict } }: Decided) =>
    verdict === 'within' ? 0 : verdict === 'undecided' ? 1 : 2;
  const more = badness(b) - badness(a) || a.finding.margin - b.finding.margin;
  return more > 0 ? b : a;
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
