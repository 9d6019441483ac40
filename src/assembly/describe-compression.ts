import type { CompressionRule } from '../cylinders/index.js';
import { sayPastHead, sayRatios, sayVolumes } from '../cylinders/internal.js';
import type { Finding, Span, Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import { sayProud, sayStandDown } from '../motion/internal.js';
import type { Ratio } from '../quantities/index.js';
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
    deckClearance,
    notGiven,
  }: CompressionSetting,
  wording: Wording,
): readonly string[] {
  const { units } = wording;
  const wants = wanted && `${sayRatios(wanted.limits)} ${noteOf(wanted.basis, wording)}`;
  return [
    ...(deckClearance ? sayProud(deckClearance, units) : []),
    ...(pistonToHead ? sayPastHead(pistonToHead, units) : []),
    ratio && clearanceVolume
      ? `compression ratio ${sayRatios(ratio)} by the spaces given, with ${sayVolumes(clearanceVolume, units)} left above the piston${finding ? `: ${standing(ratio, finding, wording)}` : ''}`
      : `compression ratio not computed, as these are not given: ${notGiven.join(', ')}${wants ? `; ${wants} is wanted` : ''}`,
    ...(standDown ? [sayStandDown(standDown, units)] : []),
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

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
