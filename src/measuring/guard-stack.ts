import type { Limits, Span } from '../judging/index.js';
import {
  guardFields,
  guardLimits,
  guardList,
  guardSpan,
  guardText,
  guardWord,
  showLength,
} from '../judging/internal.js';
import { type Length, type Ratio, RebuildInputError } from '../quantities/index.js';
import { sigmaCoverage, sizeTolerance, stackedSize, stackSensitivity } from './stack-domains.js';
import type { SizeDistribution, StackContributor } from './stack-types.js';

/** A size of a stack once all defaults are filled in. */
export interface StackSize {
  readonly name: string;
  readonly span: Span<Length>;
  readonly nominal: Length;
  readonly sensitivity: number;
  readonly distribution: SizeDistribution;
}

const CONTRIBUTOR = [
  'name',
  'size',
  'tolerance',
  'nominal',
  'sensitivity',
  'distribution',
] as const;
const DISTRIBUTION = ['kind', 'sigmas'] as const;
const KIND_ALONE = ['kind'] as const;
const KINDS = ['uniform', 'triangular', 'normal'] as const;

/** Refuses sizes that cannot be stacked, and fills in what was left out. */
export function guardStack(contributors: readonly StackContributor[]): readonly StackSize[] {
  guardList('contributors', contributors, 1, 'contributor');
  return contributors.map((contributor, i) => {
    const at = `contributors[${i}]`;
    guardFields(at, contributor, CONTRIBUTOR);
    const name = guardText(`${at}.name`, contributor.name);
    const { distribution = { kind: 'uniform' }, sensitivity = 1 } = contributor;
    const span = guardSize(at, contributor);
    return {
      name,
      span,
      nominal: guardNominal(`${at}.nominal`, contributor.nominal, span),
      sensitivity: stackSensitivity(`${at}.sensitivity`, sensitivity as Ratio),
      distribution: guardDistribution(`${at}.distribution`, distribution),
    };
  });
}

function guardSize(at: string, { size, tolerance }: StackContributor): Span<Length> {
  const span = guardSpan(`${at}.size`, size, stackedSize);
  if (tolerance === undefined) return span;
  sizeTolerance(`${at}.tolerance`, tolerance);
  if (typeof size === 'number') {
    return { min: (size - tolerance) as Length, max: (size + tolerance) as Length };
  }
  throw new RebuildInputError({
    parameter: `${at}.tolerance`,
    value: tolerance,
    shown: showLength(tolerance),
    expected: 'a tolerance beside one size',
    problem: 'stands beside a span, which is a tolerance itself',
    hint: 'Give one size and its tolerance, or the span alone.',
  });
}

function guardNominal(
  parameter: string,
  nominal: Length | undefined,
  { min, max }: Span<Length>,
): Length {
  if (nominal === undefined) return ((min + max) / 2) as Length;
  stackedSize(parameter, nominal);
  if (nominal >= min && nominal <= max) return nominal;
  throw new RebuildInputError({
    parameter,
    value: nominal,
    shown: showLength(nominal),
    expected: `within its span, ${showLength(min)} to ${showLength(max)}`,
    hint: 'Is it the size of another part?',
  });
}

function guardDistribution(parameter: string, distribution: SizeDistribution): SizeDistribution {
  guardFields(parameter, distribution, DISTRIBUTION);
  guardWord(`${parameter}.kind`, distribution.kind, KINDS);
  if (distribution.kind === 'normal') {
    sigmaCoverage(`${parameter}.sigmas`, distribution.sigmas as Ratio);
    return distribution;
  }
  guardFields(parameter, distribution, KIND_ALONE);
  return distribution;
}

/** Refuses limits that a stack cannot be held to. */
export const guardStackLimits = (limits: Limits<Length> | undefined): Limits<Length> | undefined =>
  limits === undefined ? undefined : guardLimits('method.limits', limits, stackedSize, 'length');
