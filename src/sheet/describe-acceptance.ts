import type { AcceptanceCheck, SupplyFinding } from '../bearings/index.js';
import { type Basis, describe, type Finding, type Wording } from '../judging/index.js';
import { noteOf, say } from '../judging/internal.js';
import {
  type Flow,
  format,
  type Length,
  micrometre,
  mLPerMinute,
  type Ratio,
  ratio,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { FilmReport } from './inspect-film.js';

/** Whether a bearing is accepted, what is against it, what is unknown and what holds. */
export function describeAcceptance({ bearing, acceptance }: FilmReport, wording: Wording): string {
  const { outcome, checks } = acceptance;
  const sayAll = (wanted: AcceptanceCheck['outcome']) =>
    checks
      .filter((check) => check.outcome === wanted && check.check !== 'material')
      .map((check) => sayCheck(check, wording));
  const noMetal = checks.some(({ check }) => check === 'material');
  const against = [
    ...(noMetal ? ['material unknown, so neither pressure nor heat can be judged'] : []),
    ...sayAll('fails'),
  ];
  const [unknown, holds] = [listed(sayAll('unknown')), listed(sayAll('holds'))];
  const under = judgedUnder(acceptance, wording);
  switch (outcome) {
    case 'accepted':
      return `${bearing} is accepted: ${holds}. ${under}`.trim();
    case 'undecided':
      return `${bearing} is not accepted until these are known: ${unknown}. ${holding(holds)} ${under}`.trim();
    case 'not accepted':
      return [
        `${bearing} is not accepted: ${listed(against)}.`,
        ...(unknown === '' ? [] : [`Unknown: ${unknown}.`]),
        holding(holds),
        under,
      ]
        .filter((sentence) => sentence !== '')
        .join(' ');
  }
}

/** What the loads were, where they are not those of the cycle. */
function judgedUnder({ load }: FilmReport['acceptance'], { units }: Wording): string {
  if (load.of === 'cycle') return '';
  return `All this is under one steady load of ${say(load.peak, 'force', units)}; the loads of the cycle were not given.`;
}

const holding = (holds: string): string => (holds === '' ? '' : `These hold: ${holds}.`);

/** One check with its numbers. */
export function sayCheck(check: AcceptanceCheck, wording: Wording): string {
  if (check.outcome !== 'unknown') return sayFinding(check.finding, wording);
  const { finding, give } = check;
  return `${finding ? sayFinding(finding, wording) : check.check} (give ${give})`;
}

/** A finding; films and flows in the units that they are read in. */
function sayFinding(finding: Finding, wording: Wording): string {
  const { feature, value, limits, basis, dimension } = finding;
  const least = limits.min as number;
  const note = noteOf(basis, wording);
  switch (dimension) {
    case 'ratio':
      return `${feature} ${times(value as Ratio, least as Ratio)} needed ${note}`;
    case 'flow':
      return `${feature} ${flow(value as Flow)} measured, of ${flow(least as Flow)} that leave at the ends ${note}`;
    case 'length':
      return `${feature} ${format(value as Length, micrometre)}, of ${format(least as Length, micrometre)} needed ${note}`;
    default:
      return describe(finding, wording);
  }
}

/** `3.4 times, of 3.0`; with more decimals where one would print both alike. */
function times(value: Ratio, least: Ratio): string {
  const [one, two] = [1, 2].map((decimals) =>
    [value, least].map((each) => formatNumber(each, ratio, decimals)),
  ) as [string[], string[]];
  const [have, need] = one[0] === one[1] ? two : one;
  return `${have} times, of ${need}`;
}

const flow = (value: Flow): string => format(value, mLPerMinute, 0);

const SPLASH: Basis = { kind: 'published', source: 'TM 9-8000, chapter 8, splash system' };

/** What the supply means for every figure that follows; the oil level first. */
export function describeSupply(supply: SupplyFinding, wording: Wording): string {
  const need = supply.outcome === 'unknown' ? supply.need : (supply.finding.limits.min as Flow);
  const splash =
    supply.by === 'splash'
      ? `The oil level matters more than any figure here: keep it at its mark, as with a splash a slightly low level is already too little ${noteOf(SPLASH, wording)}. `
      : '';
  switch (supply.outcome) {
    case 'unknown':
      return `${splash}The bearing needs ${flow(need)}, and what it gets was not measured.`;
    case 'too little':
      return `${splash}The bearing needs ${flow(need)} and gets ${flow(supply.finding.value)}: it starves.`;
    case 'enough':
      return splash.trim();
  }
}

/** Reasons one after the other. */
export const listed = (reasons: readonly string[]): string => reasons.join('; ');
