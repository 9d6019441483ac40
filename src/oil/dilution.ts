import { type Basis, type Finding, judge } from '../judging/index.js';
import { guardFields, ownBasisOr, showIn } from '../judging/internal.js';
import { percentByVolume, RebuildInputError, type VolumeFraction } from '../quantities/index.js';
import { dilutionLimit, fuelShare } from './domains.js';

/** How a fuel fraction stands: run on, change the oil and find the leak, or do not run at all. */
export type DilutionStage = 'normal' | 'act' | 'critical';

/** The fractions at which one stage gives way to the next. */
export interface DilutionThresholds {
  /** Above this the oil is changed and the leak found [-]. */
  readonly act: VolumeFraction;
  /** Above this the engine is not run [-]. */
  readonly critical: VolumeFraction;
}

/** A fuel fraction against its limit, and the stage it has reached. */
export interface DilutionFinding {
  /** Normal up to `act`, then act, above `critical` critical. */
  readonly stage: DilutionStage;
  /** The fraction against the threshold of its stage: `critical` if it is past that, else `act`. */
  readonly finding: Finding<'volumeFraction'>;
  /** The thresholds that were used. */
  readonly thresholds: DilutionThresholds;
}

/** Fuel in oil that laboratories commonly call for action at, and critical, by volume. No standard sets it. */
const COMMON: DilutionThresholds = {
  act: 0.025 as VolumeFraction,
  critical: 0.05 as VolumeFraction,
};
const RULE: Basis = {
  kind: 'common practice',
  rule: 'act on fuel above 2.5 % by volume, do not run above 5 %; no standard sets a limit',
};

/** Who says when there is too much fuel in an oil. */
export interface DilutionOptions {
  /** Thresholds of your own [-]. */
  readonly thresholds?: DilutionThresholds;
  /** Who set them; by default the caller. */
  readonly basis?: Basis;
}

const OPTIONS = ['thresholds', 'basis'] as const;
const THRESHOLDS = ['act', 'critical'] as const;

/**
 * Judges a fuel fraction. Without the caller's thresholds it uses what oil
 * laboratories commonly advise, marked as a rule of thumb: they differ, and
 * no standard sets a limit.
 *
 * @param fraction - fuel in the oil by volume; where `fuelFraction` gave less than none, the oil has
 * thickened, and its viscosity says nothing about fuel [-]
 * @param options - thresholds of your own, and who set them
 * @returns stage, finding and thresholds
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the thresholds are
 * reversed
 * @see Source: common practice
 * @example
 * ```ts
 * dilutionFinding(percentByVolume(3.1)).stage; // "act"
 * ```
 */
export function dilutionFinding(
  fraction: VolumeFraction,
  options: DilutionOptions = {},
): DilutionFinding {
  fuelShare('fraction', fraction);
  const { thresholds, basis } = dilutionThresholds(options);
  const judgeAgainst = (max: VolumeFraction) =>
    judge({
      feature: 'fuel in oil',
      dimension: 'volumeFraction',
      value: fraction,
      limits: { max },
      basis,
    });
  const against = {
    act: judgeAgainst(thresholds.act),
    critical: judgeAgainst(thresholds.critical),
  };
  if (against.critical.verdict === 'above') {
    return { stage: 'critical', finding: against.critical, thresholds };
  }
  const stage = against.act.verdict === 'above' ? 'act' : 'normal';
  return { stage, finding: against.act, thresholds };
}

/** The caller's thresholds, or the rule of thumb, and who says so. */
export function dilutionThresholds(options: DilutionOptions): Required<DilutionOptions> {
  guardFields('options', options, OPTIONS);
  const { thresholds = COMMON } = options;
  const basis = ownBasisOr('options', 'thresholds', options.thresholds, options.basis, RULE);
  return { thresholds: guardThresholds(thresholds), basis };
}

function guardThresholds(thresholds: DilutionThresholds): DilutionThresholds {
  guardFields('options.thresholds', thresholds, THRESHOLDS);
  const act = dilutionLimit('options.thresholds.act', thresholds.act);
  const critical = dilutionLimit('options.thresholds.critical', thresholds.critical);
  if (act <= critical) return { act, critical };
  throw new RebuildInputError({
    parameter: 'options.thresholds',
    value: thresholds,
    shown: `act ${showIn(act, percentByVolume)} and critical ${showIn(critical, percentByVolume)}`,
    expected: 'an act threshold that is not above the critical one',
    problem: 'are the wrong way round',
    hint: 'Swap the two.',
  });
}
