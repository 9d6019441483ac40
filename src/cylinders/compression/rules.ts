import type { Basis } from '../../judging/index.js';
import {
  guardBasis,
  guardBetween,
  guardFields,
  guardList,
  guardObject,
  guardWord,
} from '../../judging/internal.js';
import {
  type GaugePressure,
  type Pressure,
  psi,
  type Ratio,
  ratio,
} from '../../quantities/index.js';
import { compressionReading, readingsApart, shareOfReading } from './domains.js';

/** A rule that a compression test is judged by. Manuals disagree, so it is the caller's choice; by default the caller's own. */
export type CompressionRule = {
  /** Who set it; by default the caller. */
  readonly basis?: Basis;
} & (
  | {
      /** The highest and the lowest cylinder are so far apart at most. */
      readonly kind: 'spread';
      /** How far [Pa]. */
      readonly most: Pressure;
    }
  | {
      /** The lowest cylinder has at least such a share of the highest. */
      readonly kind: 'share of highest';
      /** The share [-]. */
      readonly least: Ratio;
    }
  | {
      /** Each cylinder has at least such a share of the average of all: 0.8 and 1.2 for within 20 %. */
      readonly kind: 'share of average';
      /** The share [-]. */
      readonly least: Ratio;
      /** The most that one may have; by default none is too high [-]. */
      readonly most?: Ratio;
    }
  | {
      /** Each cylinder is near a stated figure, above and below; moved to the air of the workshop first (`compressionInAir`). */
      readonly kind: 'near a figure';
      /** The figure [Pa]. */
      readonly figure: GaugePressure;
      /** How far from it at most [Pa]. */
      readonly within: Pressure;
    }
  | {
      /** Each cylinder has at least the maker's least figure, moved to the air of the workshop first. */
      readonly kind: 'at least';
      /** The figure [Pa]. */
      readonly least: GaugePressure;
    }
);

const KINDS = [
  'spread',
  'share of highest',
  'share of average',
  'near a figure',
  'at least',
] as const;
const SPREAD = ['kind', 'most', 'basis'] as const;
const LEAST = ['kind', 'least', 'basis'] as const;
const AVERAGE = ['kind', 'least', 'most', 'basis'] as const;
const NEAR = ['kind', 'figure', 'within', 'basis'] as const;

/** Refuses rules that say nothing. */
export function guardRules(
  parameter: string,
  rules: readonly CompressionRule[],
): readonly CompressionRule[] {
  guardList(parameter, rules, 1, 'rules');
  for (const [i, rule] of rules.entries()) guardRule(`${parameter}[${i}]`, rule);
  return rules;
}

function guardRule(at: string, rule: CompressionRule): void {
  guardObject(at, rule);
  guardWord(`${at}.kind`, rule.kind, KINDS);
  if (rule.basis !== undefined) guardBasis(`${at}.basis`, rule.basis);
  switch (rule.kind) {
    case 'spread':
      guardFields(at, rule, SPREAD);
      readingsApart(`${at}.most`, rule.most);
      break;
    case 'near a figure':
      guardFields(at, rule, NEAR);
      compressionReading(`${at}.figure`, rule.figure);
      readingsApart(`${at}.within`, rule.within);
      break;
    case 'share of average':
      guardFields(at, rule, AVERAGE);
      shareOfReading(`${at}.least`, rule.least);
      if (rule.most !== undefined) {
        guardBetween(
          `${at}.most`,
          rule.most,
          ratio,
          [rule.least, shareOfReading.most],
          'ratio(1.2)',
        );
      }
      break;
    case 'at least':
      guardFields(at, rule, LEAST);
      compressionReading(`${at}.least`, rule.least);
      break;
    default:
      guardFields(at, rule, LEAST);
      shareOfReading(`${at}.least`, rule.least);
  }
}

const manual = (source: string): Basis => ({
  kind: 'published',
  source,
  forAnotherEngine: true,
});

/**
 * Rules that four manuals print for their own engines. They contradict each other: a test may pass by one and fail by
 * the next. None is your engine's: its maker's own rule comes before all of them.
 *
 * @returns the rules, each with the manual that prints it
 * @see Source: TM 5-3895-359-14&P, TM 5-4210-230-14&P-1, TM 1-1500-204-23-1, TM 10-3930-618-20
 * @example
 * ```ts
 * const [spread] = publishedCompressionRules();
 * spread?.kind === 'spread' && format(spread.most, psi, 0); // "25 psi"
 * ```
 */
export function publishedCompressionRules(): readonly CompressionRule[] {
  return [
    {
      kind: 'spread',
      most: psi(25),
      basis: manual('TM 5-3895-359-14&P: no more than 25 psi between cylinders'),
    },
    {
      kind: 'share of highest',
      least: 0.75 as Ratio,
      basis: manual('TM 5-4210-230-14&P-1: lowest at least 75 % of the highest'),
    },
    {
      kind: 'share of average',
      least: 0.8 as Ratio,
      basis: manual('TM 1-1500-204-23-1: no cylinder 20 % below the average'),
    },
    {
      kind: 'spread',
      most: psi(10),
      basis: manual('TM 10-3930-618-20: within 10 psi'),
    },
  ];
}
