import { type Finding, judge } from '../../judging/index.js';
import { guardFields, guardWord } from '../../judging/internal.js';
import type { Flow } from '../../quantities/index.js';
import { oilBrought } from './domains.js';

/** How oil comes to a bearing. */
export interface OilSupply {
  /** A pump feeds it, or dippers throw the oil of the sump or of troughs about. */
  readonly by: 'pump' | 'splash';
  /** Oil that was measured to reach this bearing in a time; no book has a number for a splash [m³/s]. */
  readonly measured?: Flow;
}

/** Whether a bearing gets as much oil as leaves it. */
export type SupplyFinding =
  | {
      /** As much comes in as leaves at the ends, or less. */
      readonly outcome: 'enough' | 'too little';
      /** How it comes. */
      readonly by: OilSupply['by'];
      /** What comes in against what leaves. */
      readonly finding: Finding<'flow'>;
    }
  | {
      /** Nobody measured what comes in, so every film figure only holds if the bearing is kept flooded. */
      readonly outcome: 'unknown';
      /** How it comes, if that is known. */
      readonly by?: OilSupply['by'];
      /** What leaves at the ends and has to come in [m³/s]. */
      readonly need: Flow;
    };

const QUESTION = ['need', 'supply'] as const;
const SUPPLY = ['by', 'measured'] as const;
const WAYS = ['pump', 'splash'] as const;

/**
 * Whether a bearing gets as much oil as leaves it at its ends: the side flow of its film. A film is computed
 * for a bearing full of oil; what starves carries less, however thick its film comes out on paper.
 *
 * With a splash the level of the oil matters more than any film figure. The manual cited calls the system too
 * uncertain for later engines, because the level decides how much oil comes: a slightly low one is already too
 * little, a high one too much. So a splash counts only as far as you measured what it brings, at the lowest
 * level you let it run at.
 *
 * @param question - what leaves the bearing, and how oil comes to it, if that is known
 * @returns whether enough comes, or that it is unknown
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the supply is
 * neither a pump nor a splash
 * @see Source: TM 9-8000, chapter 8, on the splash system
 * @example
 * ```ts
 * const need = mLPerMinute(120);
 * supplyFinding({ need, supply: { by: 'splash' } }).outcome; // "unknown"
 * supplyFinding({ need, supply: { by: 'splash', measured: mLPerMinute(90) } }).outcome; // "too little"
 * ```
 */
export function supplyFinding(question: {
  /** What leaves at the ends and has to come in [m³/s]. */
  readonly need: Flow;
  /** How oil comes. */
  readonly supply?: OilSupply;
}): SupplyFinding {
  guardFields('question', question, QUESTION);
  return supplyOf(oilBrought('need', question.need), guardSupply('supply', question.supply));
}

/** Refuses a supply that is none. */
export function guardSupply<S extends OilSupply | undefined>(parameter: string, supply: S): S {
  if (supply === undefined) return supply;
  guardFields(parameter, supply as OilSupply, SUPPLY);
  guardWord(`${parameter}.by`, supply.by, WAYS);
  const { measured } = supply;
  if (measured !== undefined) oilBrought(`${parameter}.measured`, measured);
  return supply;
}

/** The same of what was checked. */
export function supplyOf(need: Flow, supply: OilSupply | undefined): SupplyFinding {
  if (supply?.measured === undefined) {
    return { outcome: 'unknown', need, ...(supply && { by: supply.by }) };
  }
  const finding = judge({
    feature: 'oil supply',
    dimension: 'flow',
    value: supply.measured,
    limits: { min: need },
    basis: {
      kind: 'computed',
      how: 'what leaves the bearing at its ends must come in again',
    },
  });
  const outcome = finding.verdict === 'within' ? 'enough' : 'too little';
  return { outcome, by: supply.by, finding };
}
