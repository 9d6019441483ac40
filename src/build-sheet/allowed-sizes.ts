import type { BasedLimits, Basis, Limits, Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { BuildBearing, BuildCylinder } from '../planning/index.js';
import { type Length, minus, plus } from '../quantities/index.js';
import { type EngineKind, own, type StatedLimits } from '../reading/index.js';
import { isMadeToSuit } from './machined.js';
import { boreLimits, housingLimits, journalLimits } from './size-limits.js';

/** What a size may be, and who set each end of it. */
export interface AllowedSize {
  readonly limits: Limits<Length>;
  readonly by: readonly Basis[];
}

const SHED: Basis = { kind: 'specified', by: 'the shed file' };
const AS_READ: Basis = {
  kind: 'computed',
  how: 'the part is used as it was read, past the sizes that the shed file states',
};

/** Sizes of a journal: within those of its step, and within the clearance, unless its shells are made to suit it. */
export function allowedJournal(bearing: BuildBearing, engine: EngineKind): AllowedSize {
  const { kind, undersize, journalSize, finding } = bearing;
  const journals = kind === 'rods' ? engine.rodJournals : engine.mainJournals;
  const clearance = isMadeToSuit(bearing)
    ? []
    : [{ ...finding, limits: journalLimits(bearing, finding.limits) }];
  if (!journals) return both(clearance);
  const { standard, minimum, sizeAllowance } = journals;
  const step = { min: minus(standard.min, undersize), max: minus(standard.max, undersize) };
  return both([
    ...(minimum === undefined ? [] : [{ limits: { min: minimum }, basis: SHED }]),
    ...ofStep(step, journalSize, sizeAllowance),
    ...clearance,
  ]);
}

/**
 * Sizes of a housing: within the shed's limits, and within the clearance, unless its shells are made to suit it. The
 * clearance alone allows no housing: shells in one that is too large have lost their crush, whatever clearance they leave.
 */
export function allowedHousing(bearing: BuildBearing, engine: EngineKind): AllowedSize {
  const { kind, finding } = bearing;
  const [stated] = based(kind === 'rods' ? engine.rodHousing : engine.mainHousing);
  if (stated === undefined || isMadeToSuit(bearing)) return both(stated ? [stated] : []);
  const { min, max } = housingLimits(bearing, finding.limits);
  const within = {
    ...(stated.limits.min !== undefined && min !== undefined && { min }),
    ...(stated.limits.max !== undefined && max !== undefined && { max }),
  };
  return both([stated, { ...finding, limits: within }]);
}

/** Sizes of a bore: within those of its step, and within the piston clearance if it has limits. */
export function allowedBore(cylinder: BuildCylinder, { bores }: EngineKind): AllowedSize {
  const { oversize, boreSize, pistonSize, finding } = cylinder;
  const { standard, sizeAllowance } = bores;
  const step = { min: plus(standard.min, oversize), max: plus(standard.max, oversize) };
  return both([
    ...ofStep(step, boreSize, sizeAllowance),
    ...(finding ? [{ ...finding, limits: boreLimits(pistonSize, finding.limits) }] : []),
  ]);
}

/** Limits that the shed states, as a list of none or one. */
export function based(
  stated: StatedLimits<'length'> | undefined,
): readonly BasedLimits<'length'>[] {
  const { limits, basis } = own(stated);
  return limits && basis ? [{ limits, basis }] : [];
}

/**
 * The sizes of a step. What was machined to it lies within; what is used as it is may be off by the
 * allowance that the shed gives, or as far as it was measured to be.
 */
function ofStep(
  step: Span<Length>,
  { min, max }: Span<Length>,
  allowance: Length | undefined,
): readonly BasedLimits<'length'>[] {
  const isMachined = same(min, step.min) && same(max, step.max);
  const more = isMachined ? 0 : (allowance ?? 0);
  const [low, high] = [step.min - more, step.max + more] as [Length, Length];
  return [
    min < low - NANOMETRE
      ? { limits: { min }, basis: AS_READ }
      : { limits: { min: low }, basis: SHED },
    max > high + NANOMETRE
      ? { limits: { max }, basis: AS_READ }
      : { limits: { max: high }, basis: SHED },
  ];
}

/** The sizes that keep to all limits. At each end the closest limit rules; of two alike, the first. */
function both(all: readonly BasedLimits<'length'>[]): AllowedSize {
  const low = closest(all, ({ min }) => min);
  const high = closest(all, ({ max }) => (max === undefined ? undefined : -max));
  return {
    limits: {
      ...(low?.limits.min !== undefined && { min: low.limits.min }),
      ...(high?.limits.max !== undefined && { max: high.limits.max }),
    },
    by: [...new Set([low, high].flatMap((end) => (end ? [end.basis] : [])))],
  };
}

function closest(
  all: readonly BasedLimits<'length'>[],
  bound: (limits: Limits<Length>) => number | undefined,
): BasedLimits<'length'> | undefined {
  const having = all.filter(({ limits }) => bound(limits) !== undefined);
  return having.reduce<BasedLimits<'length'> | undefined>((best, each) => {
    if (!best) return each;
    const ahead = (bound(each.limits) as number) - (bound(best.limits) as number);
    return ahead > NANOMETRE ? each : best;
  }, undefined);
}

const same = (a: Length, b: Length) => Math.abs(a - b) <= NANOMETRE;
