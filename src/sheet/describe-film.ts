import type { WarmFilm } from '../bearings/index.js';
import type { Wording } from '../judging/index.js';
import { describeSpan, noteOf, say, sayFilm } from '../judging/internal.js';
import { type Ratio, ratio } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import {
  describeAcceptance,
  describeSupply,
  listed,
  sayCheck,
  useOfSteady,
} from './describe-acceptance.js';
import { agrees } from './film-sizes.js';
import { type FilmReport, wrecking } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';

/** The film of the bearing that the sheet names, and whether the bearing is good, a line each. */
export function describeFilm(
  film: FilmReport,
  oil: OilReport,
  wording: Wording,
): readonly string[] {
  return [`Film: ${filmOf(film, oil, wording)}`, `Bearing: ${describeAcceptance(film, wording)}`];
}

function filmOf(report: FilmReport, { sample, densityBasis }: OilReport, wording: Wording): string {
  const { supply } = report.acceptance;
  const density =
    densityBasis.kind === 'specified'
      ? ''
      : ` Its density is taken by a rule of thumb ${noteOf(densityBasis, wording)}.`;
  return [
    describeSupply(supply, wording),
    `${supply.outcome === 'enough' ? 'At' : 'If kept flooded, at'} ${bearingOf(report, wording)}: ${thicknessOf(report, wording)}.${density}`,
    oilTaken(sample),
    'The film says nothing about knock: a loose bearing hammers however thick its film.',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** `rod 2 with "rod 30 under" (clearance 0.0017 to 0.0025 in at its worse end; 0.0018 in was typed in)`. */
function bearingOf({ bearing, sizes }: FilmReport, { units }: Wording): string {
  const { as, shells, clearance, typed, found } = sizes;
  const span = describeSpan(clearance, 'length', units);
  const differs = agrees(sizes) ? '' : `, not the ${say(typed, 'length', units)} typed in`;
  const wasFound = found && describeSpan(found, 'length', units);
  switch (as) {
    case 'found':
      return `${bearing} as found with "${shells}" (the worse end of its clearance, ${span}${differs})`;
    case 'planned':
      return `${bearing} as it will be with "${shells}" (the worse end of its clearance, ${span}${differs}${wasFound ? `; as found it has ${wasFound}, so this film is not that of the bearing as it is` : ''})`;
    case 'typed':
      return wasFound
        ? `${bearing} with the clearance typed in, ${span} (as found it has ${wasFound}, so this film is not that of the bearing as it is)`
        : `${bearing} with the clearance typed in, ${span}, as it was not measured`;
  }
}

/** The film that counts, against the roughness; the steady films beside it where it is an orbit's. */
function thicknessOf(report: FilmReport, wording: Wording): string {
  const { load, now, finding, acceptance } = report;
  const { films, load: loads } = acceptance;
  const { regime, thresholds, roughness } = finding;
  const force = (of: typeof load) => say(of, 'force', wording.units);
  const decimals = alike(finding.finding.value, thresholds.full) ? 2 : 1;
  const needed = `a full film takes ${formatNumber(thresholds.full, ratio, decimals)} times ${noteOf(finding.finding.basis, wording)}`;
  const against = `${formatNumber(finding.finding.value, ratio, decimals)} times the roughness of ${sayFilm(roughness, wording.units)}: ${regime} film${regime === 'full' ? onlyIf(acceptance) : ''} (${needed})`;
  if (films.orbit === undefined) {
    return `${steady(now, wording)} under a steady ${force(load)}${now.film.outcome === 'no film' ? '' : `, ${against}`}`;
  }
  if (films.mean.film.outcome === 'no film') return `no film, as ${films.mean.film.because}`;
  const beside = `steady, it would be ${steady(films.mean, wording)} under the mean load of ${force(loads.mean)} and ${steady(films.peak, wording)} under the most, ${force(loads.peak)}`;
  return films.orbit.outcome === 'settled'
    ? `${sayFilm(films.orbit.film, wording.units)} at the thinnest of the orbit by the loads of the cycle, ${against}; ${beside}; the gas pressure is that of a simple trace, not measured; ${useOfSteady(report, wording)}`
    : `${ORBIT[films.orbit.outcome]}; ${beside}; ${useOfSteady(report, wording)}`;
}

/** What a full film is not full without. */
function onlyIf({ checks }: FilmReport['acceptance']): string {
  const failing = checks
    .filter(({ outcome, check }) => outcome === 'fails' && check.endsWith('pressure'))
    .map(({ check }) => check);
  if (failing.length > 0) {
    return `, but only at the loads computed, and its ${failing.join(' and ')} ${failing.length === 1 ? 'fails' : 'fail'}`;
  }
  const near = checks.some(
    (check) =>
      check.check === 'film over roughness' && check.outcome === 'unknown' && check.tooNear,
  );
  return near ? ', but too near to tell, as the load is in doubt' : '';
}

/** Whether two ratios print alike to one decimal, though one is the larger. */
const alike = (one: Ratio, other: Ratio): boolean =>
  one !== other && formatNumber(one, ratio, 1) === formatNumber(other, ratio, 1);

const ORBIT = {
  'no film': 'no film carries the pin around its orbit',
  'too thin to follow': 'the film of the orbit becomes too thin to be followed',
  'not settled': 'the orbit does not settle, so its film is unknown',
  'out of range':
    'the bearing is too long or too short for its orbit to be trusted, so its film is unknown',
} as const;

/** `2.0 µm with the oil at 198.2 °F`, `none: it stands still`. */
function steady({ film, temperature, rise }: WarmFilm, { units }: Wording): string {
  if (film.outcome === 'no film') return `none: ${film.because}`;
  const out = say((temperature + rise / 2) as typeof temperature, 'temperature', units);
  return `${sayFilm(film.film, units)} with the oil at ${say(temperature, 'temperature', units)} in the film and ${out} on its way out`;
}

/** Says so where the oil was taken as clean because a sample does not show otherwise. */
function oilTaken(sample: OilReport['sample']): string {
  if (sample === undefined) return 'No used oil was measured, so this holds for clean oil only.';
  return sample.dilution
    ? 'This holds for the oil as it was sampled.'
    : 'This holds for clean oil, not for the thickened sample.';
}

/** `the oil film at rod 2 is 1.2 µm, 2.1 times the roughness; a full film takes 3.0 times (…)`. */
export function describeThinFilm(report: FilmReport, wording: Wording): string {
  const { bearing, now, finding, acceptance } = report;
  const failing = wrecking(acceptance);
  if (finding.regime === 'full') {
    return `${bearing} is not fit to run: ${listed(failing.map((check) => sayCheck(check, wording)))}`;
  }
  const besides = failing.map((check) => `; ${sayCheck(check, wording)}`).join('');
  const { finding: judged, thresholds } = finding;
  const film = acceptance.films.film ?? now.film.film;
  if (film === 0 && now.film.outcome === 'no film') {
    return `no oil film carries ${bearing}: ${now.film.because}${besides}`;
  }
  const [have, need] = [judged.value, thresholds.full].map((value) =>
    formatNumber(value, ratio, 1),
  );
  return `the oil film at ${bearing} is ${sayFilm(film, wording.units)}, ${have} times the roughness; a full film takes ${need} times ${noteOf(judged.basis, wording)}${besides}`;
}
