import type { AcceptanceCheck, SupplyFinding } from '../bearings/index.js';
import { TRUMPLER, trumplerHottest } from '../bearings/internal.js';
import type { Basis, Finding, Wording } from '../judging/index.js';
import { noteOf, say, sayFilm, sayFinding } from '../judging/internal.js';
import {
  type Flow,
  format,
  type Length,
  mLPerMinute,
  percent,
  type Ratio,
  ratio,
  type Temperature,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { FilmReport } from './inspect-film.js';

/** Whether a bearing is accepted, what is against it, what is unknown and what holds. */
export function describeAcceptance(film: FilmReport, wording: Wording): string {
  const { bearing, acceptance } = film;
  const { outcome, checks } = acceptance;
  const sayAll = (wanted: AcceptanceCheck['outcome']) =>
    checks
      .filter(
        (check) => check.outcome === wanted && check.check !== 'material' && !isTooNear(check),
      )
      .map((check) => sayCheck(check, wording));
  const noMetal = checks.some(({ check }) => check === 'material');
  const against = [
    ...(noMetal ? ['material unknown, so neither pressure nor heat can be judged'] : []),
    ...sayAll('fails'),
  ];
  const [unknown, holds] = [listed(sayAll('unknown')), listed(sayAll('holds'))];
  const rest = [
    tooNear(film, wording),
    care(listed(sayAll('caution'))),
    holding(holds),
    judgedUnder(film, wording),
  ];
  const sentences = (...all: readonly string[]) => all.filter((each) => each !== '').join(' ');
  switch (outcome) {
    case 'accepted':
      return sentences(
        `${bearing} is accepted: ${holds}.`,
        ...rest.filter((each) => each !== holding(holds)),
      );
    case 'undecided':
      return sentences(
        unknown === ''
          ? `${bearing} is not accepted yet.`
          : `${bearing} is not accepted until these are known: ${unknown}.`,
        ...rest,
      );
    case 'not accepted':
      return sentences(
        `${bearing} is not accepted: ${listed(against)}.`,
        unknown === '' ? '' : `Unknown: ${unknown}.`,
        ...rest,
      );
  }
}

const isTooNear = (check: AcceptanceCheck): boolean =>
  check.outcome === 'unknown' && check.tooNear !== undefined;

/** What holds only if the load is no more than was given: `Too near to tell: …, as the load is in doubt by 25 % (…).` */
function tooNear({ acceptance, loadDoubt }: FilmReport, wording: Wording): string {
  const near = acceptance.checks.flatMap((check) => {
    if (check.outcome !== 'unknown' || !check.tooNear || !check.finding) return [];
    const { finding } = check.tooNear;
    const worst = finding
      ? `but ${sayValue(finding, wording)} at the most`
      : 'but unknown at the most';
    return [`${sayInItsUnit(check.finding, wording)}, ${worst}`];
  });
  if (near.length === 0) return '';
  return `Too near to tell: ${listed(near)}, as the load is in doubt by ${format(loadDoubt.share, percent, 0)} ${noteOf(loadDoubt.basis, wording)}.`;
}

/** What the steady load of the sheet is used for, where the loads of the cycle are known. */
export function useOfSteady({ load, acceptance }: FilmReport, { units }: Wording): string {
  const steady = `the steady ${say(load, 'force', units)} of the sheet is`;
  return load < acceptance.load.peak
    ? `${steady} used only for the fuel that the film tolerates`
    : `${steady} more than the cycle has, so it counts as the most of the load, for the pressure and the oil needed, but not around the orbit`;
}

/** What the loads were. */
function judgedUnder(film: FilmReport, wording: Wording): string {
  const { load } = film.acceptance;
  const { units } = wording;
  if (load.of === 'cycle') {
    return `All this is by the loads of the cycle, with gas of a simple trace; ${useOfSteady(film, wording)}.`;
  }
  return `All this is under one steady load of ${say(load.peak, 'force', units)}; the loads of the cycle were not given.`;
}

const care = (cautions: string): string => (cautions === '' ? '' : `With care: ${cautions}.`);
const holding = (holds: string): string => (holds === '' ? '' : `These hold: ${holds}.`);

/** One check with its numbers. */
export function sayCheck(check: AcceptanceCheck, wording: Wording): string {
  if (!('give' in check)) return sayInItsUnit(check.finding, wording);
  const { finding, give } = check;
  return `${finding ? sayInItsUnit(finding, wording) : check.check} (give ${give})`;
}

/** A finding; films and flows in the units that they are read in. */
function sayInItsUnit(finding: Finding, wording: Wording): string {
  const { feature, value, limits, basis, dimension } = finding;
  const least = limits.min as number;
  const note = noteOf(basis, wording);
  switch (dimension) {
    case 'ratio':
      return `${feature} ${times(value as Ratio, least as Ratio)} needed ${note}`;
    case 'flow':
      return `${feature} ${flow(value as Flow)} measured, of ${flow(least as Flow)} that leave at the ends ${note}`;
    case 'length':
      return `${feature} ${sayFilm(value as Length, wording.units)}, of ${sayFilm(least as Length, wording.units)} needed ${note}`;
    case 'temperature':
      return `${sayFinding(finding, wording)}${feature === 'film temperature' ? heat(value as Temperature, wording) : ''}`;
    default:
      return sayFinding(finding, wording);
  }
}

/** What the limit of the metal does not say. */
function heat(value: Temperature, wording: Wording): string {
  const most = trumplerHottest();
  const warm =
    value > most
      ? `; above ${say(most, 'temperature', wording.units)}, the hottest that oil should become ${noteOf(TRUMPLER, wording)}`
      : '';
  return `, the limit of the metal, not a running temperature${warm}`;
}

/** A value alone, in the unit that it is read in. */
function sayValue({ value, dimension }: Finding, { units }: Wording): string {
  switch (dimension) {
    case 'ratio':
      return `${formatNumber(value as Ratio, ratio, 1)} times`;
    case 'flow':
      return flow(value as Flow);
    case 'length':
      return sayFilm(value as Length, units);
    default:
      return say(value, dimension, units);
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
