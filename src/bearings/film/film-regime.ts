import { type Basis, type Finding, judge } from '../../judging/index.js';
import { guardFields, ownBasisOr, ROUNDING, showIn } from '../../judging/internal.js';
import { type Length, type Ratio, RebuildInputError, ratio } from '../../quantities/index.js';
import { oilFilm, surfaceRoughness } from '../domains.js';
import { filmToRoughness } from './domains.js';

/** How two surfaces run on each other: they touch, they touch at their peaks, or oil keeps them apart. */
export type Regime = 'boundary' | 'mixed' | 'full';

/** Roughness of the two surfaces of a bearing, as a root mean square (Rq): about 1.25 times Ra. */
export interface Roughness {
  /** Root mean square roughness Rq of the journal [m]. */
  readonly journal: Length;
  /** Root mean square roughness Rq of the shell [m]. */
  readonly shell: Length;
}

/** The film ratios at which one regime gives way to the next. */
export interface RegimeThresholds {
  /** Below this the surfaces touch all over [-]. */
  readonly mixed: Ratio;
  /** From this on oil keeps them apart [-]. */
  readonly full: Ratio;
}

/** A film against the roughness of its surfaces. */
export interface FilmFinding {
  /** Boundary below `mixed`, full from `full` on. */
  readonly regime: Regime;
  /** Combined roughness: root of the sum of both squares [m]. */
  readonly roughness: Length;
  /** The film ratio against the least for a full film. */
  readonly finding: Finding<'ratio'>;
  /** The thresholds that were used. */
  readonly thresholds: RegimeThresholds;
}

const OPTIONS = ['thresholds', 'basis'] as const;
const ROUGHNESS = ['journal', 'shell'] as const;
const THRESHOLDS = ['mixed', 'full'] as const;

/** The thresholds that are used by default. */
export const COMMON: RegimeThresholds = { mixed: 1 as Ratio, full: 3 as Ratio };
/** Who set the thresholds that are used by default. */
export const NORTON: Basis = {
  kind: 'published',
  source: 'Norton, Machine Design, 4th ed., specific film thickness: boundary below 1, full from 3',
};

/**
 * Judges a least film by the roughness of the two surfaces. The caller's thresholds win.
 *
 *     q = √(roughness.journal² + roughness.shell²)   the combined roughness
 *     film ratio = film / q
 *
 * @param film - least film [m]
 * @param roughness - root mean square roughness of journal and shell [m]
 * @param options - thresholds of your own, and who set them
 * @returns regime, combined roughness and finding
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the
 * thresholds are reversed
 * @see Source: Norton, Machine Design, 4th ed., specific film thickness; for bearings that fit closely
 * Hamrock, NASA RP-1255 (1991), asks for 5 where Norton has 3
 * @example
 * ```ts
 * const roughness = { journal: micrometre(0.3), shell: micrometre(0.4) };
 * const { regime, finding } = filmRegime(micrometre(2.5), roughness);
 * regime; // "full"
 * valueIn(finding.value, ratio); // 5
 * ```
 */
export function filmRegime(
  film: Length,
  roughness: Roughness,
  options: {
    /** Thresholds of your own [-]. */
    readonly thresholds?: RegimeThresholds;
    /** Who set them; by default the caller. */
    readonly basis?: Basis;
  } = {},
): FilmFinding {
  oilFilm('film', film);
  const combined = combinedRoughness(roughness);
  guardFields('options', options, OPTIONS);
  const basis = ownBasisOr('options', 'thresholds', options.thresholds, options.basis, NORTON);
  const { thresholds: asked = COMMON } = options;
  const thresholds = guardThresholds(asked);
  const finding = judge({
    feature: 'film over roughness',
    dimension: 'ratio',
    value: (film / combined) as Ratio,
    limits: { min: thresholds.full },
    basis,
  });
  const touching = finding.value < thresholds.mixed * (1 - ROUNDING) ? 'boundary' : 'mixed';
  const regime = finding.verdict === 'within' ? 'full' : touching;
  return { regime, roughness: combined, finding, thresholds };
}

/** Root of the sum of the squares of both. */
export function combinedRoughness(roughness: Roughness): Length {
  guardFields('roughness', roughness, ROUGHNESS);
  const journal = surfaceRoughness('roughness.journal', roughness.journal);
  const shell = surfaceRoughness('roughness.shell', roughness.shell);
  return Math.hypot(journal, shell) as Length;
}

function guardThresholds(thresholds: RegimeThresholds): RegimeThresholds {
  guardFields('options.thresholds', thresholds, THRESHOLDS);
  const guard = (key: keyof RegimeThresholds) =>
    filmToRoughness(`options.thresholds.${key}`, thresholds[key]);
  const [mixed, full] = [guard('mixed'), guard('full')];
  if (mixed <= full) return { mixed, full };
  throw new RebuildInputError({
    parameter: 'options.thresholds',
    value: thresholds,
    shown: `mixed ${showIn(mixed, ratio)} and full ${showIn(full, ratio)}`,
    expected: 'a mixed threshold that is not above the full one',
    problem: 'are the wrong way round',
    hint: 'Swap the two.',
  });
}
