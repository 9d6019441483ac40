import type { CompressionRule } from '../cylinders/index.js';
import type { Finding, Limits, Span, Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import {
  cubicInch,
  type Length,
  mL,
  type Ratio,
  type UnitSystem,
  type Volume,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { CompressionSetting } from './compression-setting.js';

/** Describes how far the cylinders compress, by the spaces above their pistons, in sentences without full stops. */
export function describeSpaces(
  {
    ratio,
    clearanceVolume,
    pistonToHead,
    wanted,
    finding,
    standDown,
    notGiven,
  }: CompressionSetting,
  wording: Wording,
): readonly string[] {
  const { units } = wording;
  const wants = wanted && `${sayRatios(wanted.limits)} ${noteOf(wanted.basis, wording)}`;
  return [
    ratio && clearanceVolume
      ? `compression ratio ${sayRatios(ratio)} by the spaces given, with ${sayVolumes(clearanceVolume, units)} left above the piston${finding ? `: ${standing(ratio, finding, wording)}` : ''}`
      : `compression ratio not computed, as these are not given: ${notGiven.join(', ')}${wants ? `; ${wants} is wanted` : ''}`,
    ...(standDown
      ? [
          `by the sizes of the parts the piston stops ${sayStandDown(standDown.calculated, units)} at top dead centre${standDown.stands === undefined ? '' : `; it was read ${READ[standDown.stands]}`}`,
        ]
      : []),
    ...(pistonToHead && pistonToHead.min < 0
      ? [
          `the flat edge of the piston may stand ${say((0 - pistonToHead.min) as Length, 'length', units)} past the face of the head: it strikes unless the head is recessed there; turn the engine by hand over soft wire or clay first`,
        ]
      : []),
  ];
}

/** Describes what a gauge may show at cranking. */
export function describeCranking(
  { cranking }: CompressionSetting,
  wording: Wording,
): readonly string[] {
  return cranking
    ? [
        `a sound cylinder may show ${describeSpan(cranking.gauge, 'gaugePressure', wording.units)} at cranking, throttle open ${noteOf(cranking.basis, wording)}: an estimate and no limit`,
      ]
    : [];
}

const READ = {
  'as the sizes say': 'as the sizes say',
  'too low': 'too low for them: look for a bent rod or another crankshaft or piston',
  'too high': 'too high for them: look for a planed block, or carbon under the dial',
} as const;

/** How the ratio stands to what is wanted: where only one end of it is outside, the spaces do not tell. */
function standing(
  ratio: Span<Ratio>,
  { verdict, limits, basis }: Finding<'ratio'>,
  wording: Wording,
): string {
  const by = noteOf(basis, wording);
  const { min = -Infinity, max = Infinity } = limits;
  if (verdict === 'above') {
    return `${ratio.min > max ? '' : 'it may be '}above the limit of ${max.toFixed(2)} ${by}`;
  }
  if (verdict === 'below') {
    return `${ratio.max < min ? '' : 'it may be '}below the limit of ${min.toFixed(2)} ${by}`;
  }
  return `within ${sayRatios(limits)} ${by}`;
}

/** `0.0200 in below the deck`: no one reads a negative depth aloud. */
function sayStandDown({ min, max }: Span<Length>, units: UnitSystem): string {
  if (min >= 0) return `${describeSpan({ min, max }, 'length', units)} below the deck`;
  const above = -min as Length;
  if (max > 0) {
    return `between ${say(above, 'length', units)} above the deck and ${say(max, 'length', units)} below it`;
  }
  return `${describeSpan({ min: -max as Length, max: above }, 'length', units)} above the deck`;
}

/** Describes what a compression test is judged by: what goes before the rules, and each of them. Rules that manuals print disagree. */
export function describeRules(
  { rules }: Pick<CompressionSetting, 'rules'>,
  wording: Wording,
): { readonly before: string; readonly rules: readonly string[] } {
  const isOwn = rules.some(({ basis }) => basis?.kind !== 'published');
  const before = isOwn
    ? 'The readings must keep to:'
    : 'No rule of this engine is stated. These are rules of other engines, which disagree: they advise and condemn nothing.';
  return {
    before: onlyCompares(rules) ? `${before} ${BLIND}` : before,
    rules: rules.map((rule) => describeRule(rule, wording)),
  };
}

/** Whether no rule holds a cylinder against a figure. */
export const onlyCompares = (rules: readonly CompressionRule[]): boolean =>
  rules.every(({ kind }) => kind !== 'at least' && kind !== 'near a figure');

/** What rules that compare cylinders do not see. */
export const BLIND =
  'They only compare the cylinders with each other: where all are low, they do not show it.';

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
