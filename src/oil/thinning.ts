import { type Basis, type Finding, judge } from '../judging/index.js';
import { guardFields, ownBasisOr, showIn } from '../judging/internal.js';
import {
  type KinematicViscosity,
  percent,
  type Ratio,
  RebuildInputError,
} from '../quantities/index.js';
import type { DilutionStage } from './dilution.js';
import { liquidViscosity, thinningLimit } from './domains.js';

/** The shares of its viscosity that an oil may lose before one stage gives way to the next. */
export interface ThinningThresholds {
  /** Above this the oil is changed and the cause found [-]. */
  readonly act: Ratio;
  /** Above this the engine is not run [-]. */
  readonly critical: Ratio;
}

/** How much of its viscosity an oil has lost, and the stage it has reached. */
export interface ThinningFinding {
  /** Normal up to `act`, then act, above `critical` critical. */
  readonly stage: DilutionStage | 'thicker';
  /** The share that is lost against the threshold of its stage: `critical` if it is past that, else `act`. */
  readonly finding: Finding<'ratio'>;
  /** The thresholds that were used. */
  readonly thresholds: ThinningThresholds;
}

/** Who says when an oil is too thin. */
export interface ThinningOptions {
  /** Thresholds of your own [-]. */
  readonly thresholds?: ThinningThresholds;
  /** Who set them; by default the caller. */
  readonly basis?: Basis;
}

// source: engine guide of an oil laboratory: alarm at 10 % below the new oil, critical at 20 %.
const COMMON: ThinningThresholds = { act: 0.1 as Ratio, critical: 0.2 as Ratio };
const RULE: Basis = {
  kind: 'common practice',
  rule: 'act on an oil that has lost 10 % of its viscosity, do not run on one that has lost 20 %; laboratories differ, and measure at 40 or 100 °C, where fuel takes less of it than when cold',
};

/** A sample that is thicker than so many times the clean oil is so beyond the error of measurement. */
export const THICKENED = 1.05;

const THINNED = ['oil', 'sample'] as const;
const OPTIONS = ['thresholds', 'basis'] as const;
const THRESHOLDS = ['act', 'critical'] as const;

/**
 * Judges how much of its viscosity an oil has lost, whatever has thinned it: fuel, a wrong grade, a viscosity
 * improver that has sheared down. A sample measured warmer than it is said to be looks thinned too.
 *
 *     lost = 1 - sample / oil
 *
 * A sample that is thicker than the clean oil by more than a twentieth has the stage `thicker`, never `normal`: both
 * readings may be swapped, the sample colder than it was read at, another grade, aged, or mixed with water or soot.
 *
 * Fuel takes a greater share of the viscosity of cold oil than of hot. The thresholds are for 40 or 100 °C, so a
 * sample measured cold is judged on the safe side.
 *
 * @param thinned - viscosity of the clean oil and of the sample, both at one temperature
 * @param options - thresholds of your own, and who set them
 * @returns stage, finding and thresholds; the share that is lost is negative if the sample is thicker
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the thresholds are
 * reversed
 * @see Source: common practice; engine guide of an oil laboratory, seen; no standard sets a limit
 * @example
 * ```ts
 * const { stage, finding } = thinningFinding({ oil: centistokes(100), sample: centistokes(85) });
 * stage; // "act"
 * format(finding.value, percent, 0); // "15 %"
 * ```
 */
export function thinningFinding(
  thinned: {
    /** Kinematic viscosity of the clean oil [m²/s]. */
    readonly oil: KinematicViscosity;
    /** Kinematic viscosity of the sample, at the same temperature [m²/s]. */
    readonly sample: KinematicViscosity;
  },
  options: ThinningOptions = {},
): ThinningFinding {
  guardFields('thinned', thinned, THINNED);
  const oil = liquidViscosity('oil', thinned.oil);
  const sample = liquidViscosity('sample', thinned.sample);
  guardFields('options', options, OPTIONS);
  const basis = ownBasisOr('options', 'thresholds', options.thresholds, options.basis, RULE);
  const { thresholds: asked = COMMON } = options;
  const thresholds = guardThresholds(asked);
  const judgeAgainst = (max: Ratio) =>
    judge({
      feature: 'viscosity lost',
      dimension: 'ratio',
      value: (1 - sample / oil) as Ratio,
      limits: { max },
      basis,
    });
  const critical = judgeAgainst(thresholds.critical);
  if (critical.verdict === 'above') return { stage: 'critical', finding: critical, thresholds };
  const finding = judgeAgainst(thresholds.act);
  if (sample > THICKENED * oil) return { stage: 'thicker', finding, thresholds };
  return { stage: finding.verdict === 'above' ? 'act' : 'normal', finding, thresholds };
}

function guardThresholds(thresholds: ThinningThresholds): ThinningThresholds {
  guardFields('options.thresholds', thresholds, THRESHOLDS);
  const act = thinningLimit('options.thresholds.act', thresholds.act);
  const critical = thinningLimit('options.thresholds.critical', thresholds.critical);
  if (act <= critical) return { act, critical };
  throw new RebuildInputError({
    parameter: 'options.thresholds',
    value: thresholds,
    shown: `act ${showIn(act, percent)} and critical ${showIn(critical, percent)}`,
    expected: 'an act threshold that is not above the critical one',
    problem: 'are the wrong way round',
    hint: 'Swap the two.',
  });
}
