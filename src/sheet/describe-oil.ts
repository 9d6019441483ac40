import type { FilmStand } from '../bearings/index.js';
import type { Wording } from '../judging/index.js';
import { noteOf, say } from '../judging/internal.js';
import { format, type Length, micrometre, ratio, type UnitSystem } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { describeTolerance, leakLines } from './describe-leak.js';
import { fuelNow, isItFuel, viscosityNow } from './describe-sample.js';
import type { FilmReport } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';
import { isThinOil } from './inspect-sample.js';

/**
 * Describes the oil line by line: the fuel in it, its viscosity, the film in the bearing and the fuel that it
 * tolerates, the time left, the leak, and what to do. A line whose readings are missing is left out.
 */
export function describeOil(oil: OilReport, wording: Wording): readonly string[] {
  const { sample, film, tolerance, leak } = oil;
  return [
    ...(sample ? [`Fuel now: ${fuelNow(sample, wording)}`] : []),
    ...(sample ? [`Viscosity now: ${viscosityNow(sample, wording)}`] : []),
    ...(sample ? isItFuel(sample) : []),
    ...(film ? [`Film now: ${filmOf(film, oil, wording)}`] : []),
    ...(tolerance ? [`Fuel the film tolerates: ${describeTolerance(tolerance, wording)}`] : []),
    ...(leak ? leakLines(leak, tolerance, wording) : []),
    `What to do: ${toDo(oil)}`,
  ];
}

function filmOf(
  { bearing, load, now, finding, stand }: FilmReport,
  { sample, densityBasis }: OilReport,
  wording: Wording,
): string {
  const { film, temperature } = now;
  if (film.outcome === 'no film')
    return `none at ${bearing}: ${film.because}. ${oilTaken(sample)}`.trim();
  const { regime, thresholds, roughness } = finding;
  const microns = (length: Length) => format(length, micrometre);
  const times = `${formatNumber(finding.finding.value, ratio, 1)} times the roughness of ${microns(roughness)}`;
  const needed = `a full film takes ${formatNumber(thresholds.full, ratio, 1)} times ${noteOf(finding.finding.basis, wording)}`;
  const density =
    densityBasis.kind === 'specified'
      ? ''
      : `, its density taken by a rule of thumb ${noteOf(densityBasis, wording)}`;
  const oil = oilTaken(sample);
  return `computed as ${microns(film.film)} at ${bearing}, ${times}: ${regime} film (${needed}), under a steady ${say(load, 'force', wording.units)}, with the oil there at ${say(temperature, 'temperature', wording.units)}${density}; ${standOf(stand, wording.units)}. ${oil === '' ? '' : `${oil} `}The film says nothing about knock: a loose bearing hammers however thick its film.`;
}

/** Says so where the oil was taken as clean because a sample does not show otherwise. */
function oilTaken(sample: OilReport['sample']): string {
  if (sample === undefined) return 'No used oil was measured, so this holds for clean oil only.';
  return sample.dilution ? '' : 'This holds for clean oil, not for the thickened sample.';
}

/** How much fuel a film stands, in words. */
function standOf(stand: FilmStand, units: UnitSystem): string {
  switch (stand.outcome) {
    case 'stands':
      return `it tolerates up to ${say(stand.fraction, 'volumeFraction', units)} of fuel, by ASTM D7152`;
    case 'too thin when clean':
      return 'it is too thin even with clean oil';
    case 'stands anything':
      return 'at this light load it tolerates any amount of fuel';
  }
}

/** `the oil film at rod 2 is 1.2 µm, 2.1 times the roughness; a full film takes 3.0 times (…)`. */
export function describeThinFilm({ bearing, now, finding }: FilmReport, wording: Wording): string {
  const { finding: judged, thresholds } = finding;
  if (now.film.outcome === 'no film') return `no oil film carries ${bearing}: ${now.film.because}`;
  const [have, need] = [judged.value, thresholds.full].map((value) =>
    formatNumber(value, ratio, 1),
  );
  return `the oil film at ${bearing} is ${format(now.film.film, micrometre)}, ${have} times the roughness; a full film takes ${need} times ${noteOf(judged.basis, wording)}`;
}

function toDo({ sample, film, tolerance, leak }: OilReport): string {
  const leaks = leak !== undefined && (leak.flow.max > 0 || (leak.running ?? 0) > 0);
  const fuelled = sample?.dilution !== undefined && sample.dilution.finding.value > 0;
  const stop =
    sample?.dilution?.stage === 'critical' ||
    sample?.thinning?.stage === 'critical' ||
    (film?.finding.regime !== undefined && film.finding.regime !== 'full');
  const change = sample !== undefined && (sample.dilution?.stage !== 'normal' || isThinOil(sample));
  const inDoubt = film?.finding.regime === 'full' && tolerance?.span.min === 0;
  const steps = [
    ...(stop ? ['stop the engine', 'drain the oil'] : []),
    ...(!stop && change ? ['change the oil'] : []),
    ...(leaks && sample?.dilution === undefined ? ['measure the oil before you run on it'] : []),
    ...(leaks ? ['mend the needle valve before you refill'] : []),
    ...(film?.stand.outcome === 'too thin when clean'
      ? [
          'check the grade of the oil and the clearance and load of the bearing: clean oil alone does not cure this',
        ]
      : []),
    ...(inDoubt && leaks && !stop
      ? ['settle what the film hangs on before you run with fuel in the oil']
      : []),
  ];
  const deed = steps.length > 0 ? steps.join(', ') : 'no action needed for what was measured';
  const caution =
    fuelled || leaks
      ? '; fuel vapour in a crankcase can ignite: keep flames and switches away, and ventilate'
      : '';
  return `${deed}${caution}.`;
}
