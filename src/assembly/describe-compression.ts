import type { CompressionRule } from '../cylinders/index.js';
import type { Limits, Span, Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import { cubicInch, mL, type Ratio, type UnitSystem, type Volume } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { CompressionSetting } from './compression-setting.js';

/** Describes how far the cylinders compress, in sentences without full stops. */
export function describeCompression(
  { ratio, clearanceVolume, wanted, finding, standDown, cranking, notGiven }: CompressionSetting,
  wording: Wording,
): readonly string[] {
  const { units } = wording;
  const wants = wanted && `${sayRatios(wanted.limits)} ${noteOf(wanted.basis, wording)}`;
  const stands = finding && `: ${STANDS[finding.verdict]} ${wants}`;
  return [
    ratio && clearanceVolume
      ? `compression ratio ${sayRatios(ratio)} by the spaces given, with ${sayVolumes(clearanceVolume, units)} left above the piston${stands ?? ''}`
      : `compression ratio not computed, as these are not given: ${notGiven.join(', ')}${wants ? `; ${wants} is wanted` : ''}`,
    ...(standDown
      ? [
          `by the sizes of the parts the piston stops ${describeSpan(standDown.calculated, 'length', units)} below the deck at top dead centre${standDown.stands === undefined ? '' : `; it was read ${standDown.stands === 'as the sizes say' ? standDown.stands : `${standDown.stands}: look for a bent rod, another crankshaft or a planed block`}`}`,
        ]
      : []),
    ...(cranking
      ? [
          `a sound cylinder may show ${describeSpan(cranking.gauge, 'gaugePressure', units)} at cranking, throttle open ${noteOf(cranking.basis, wording)}: an estimate and no limit`,
        ]
      : []),
  ];
}

/** Describes a rule that a compression test is judged by. */
export function describeRule(rule: CompressionRule, wording: Wording): string {
  const { units } = wording;
  const { basis = { kind: 'specified' } } = rule;
  const by = noteOf(basis, wording);
  switch (rule.kind) {
    case 'spread':
      return `highest and lowest at most ${say(rule.most, 'pressure', units)} apart ${by}`;
    case 'share of highest':
      return `lowest at least ${percent(rule.least)} of the highest ${by}`;
    case 'share of average':
      return `every cylinder at least ${percent(rule.least)} of the average ${by}`;
    case 'near a figure':
      return `every cylinder within ${say(rule.within, 'pressure', units)} of ${say(rule.figure, 'gaugePressure', units)} ${by}`;
    case 'at least':
      return `every cylinder at least ${say(rule.least, 'gaugePressure', units)} ${by}`;
  }
}

const STANDS = {
  within: 'within',
  above: 'above',
  below: 'below',
  undecided: 'undecided against',
} as const;

/** `4.60 to 5.10`: ratios are told as the trade tells them. */
function sayRatios({ min, max }: Limits<Ratio>): string {
  const [low, high] = [min?.toFixed(2), max?.toFixed(2)];
  if (low === undefined) return `at most ${high}`;
  if (high === undefined) return `at least ${low}`;
  return low === high ? high : `${low} to ${high}`;
}

/** A chamber in cubic inches or millilitres. */
function sayVolumes({ min, max }: Span<Volume>, units: UnitSystem): string {
  const unit = units === 'inch' ? cubicInch : mL;
  const [low, high] = [formatNumber(min, unit), formatNumber(max, unit)];
  return low === high ? `${high} ${unit.symbol}` : `${low} to ${high} ${unit.symbol}`;
}

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
