import type { FilmStand } from '../bearings/index.js';
import { describe, type Wording } from '../judging/index.js';
import { noteOf, say } from '../judging/internal.js';
import type { SaeGrades, TimeToDilution } from '../oil/index.js';
import {
  celsius,
  centistokes,
  format,
  type KinematicViscosity,
  type Length,
  micrometre,
  percentByVolume,
  ratio,
  type UnitSystem,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { FilmReport } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';

type Sample = NonNullable<OilReport['sample']>;
type Leak = NonNullable<OilReport['leak']>;

/**
 * The oil in five lines: the fuel in it, how thick that leaves it, the film in the bearing, the time left, and
 * what to do. A line of what was not measured is left out.
 */
export function describeOil(oil: OilReport, wording: Wording): readonly string[] {
  const { sample, film, leak } = oil;
  return [
    ...(sample ? [`Fuel now: ${fuelIn(sample, wording)}`] : []),
    ...(sample ? [`Viscosity now: ${viscosityOf(sample, wording)}`] : []),
    ...(film ? [`Film now: ${filmOf(film, oil, wording)}`] : []),
    ...(leak ? [`Time left: ${timeLeft(leak, film, wording)}`] : []),
    `What to do: ${toDo(oil)}`,
  ];
}

const print = (viscosity: KinematicViscosity) => format(viscosity, centistokes, 1);

function fuelIn({ fuel, byLaw, dilution, fuelViscosity }: Sample, wording: Wording): string {
  if (!dilution || !byLaw) return 'it cannot be told, as the oil is thicker than when clean.';
  const taken = `fuel taken as ${format(fuelViscosity.value, centistokes)} ${noteOf(fuelViscosity.basis, wording)}`;
  if (fuel <= 0) return `none to be seen by the law of ASTM D7152, ${taken}.`;
  const { min, max } = byLaw.span;
  const span = `${formatNumber(min, percentByVolume)} to ${format(max, percentByVolume)} between the laws`;
  return `by the law of ASTM D7152, ${describe(dilution.finding, wording)}; ${span}, ${taken}. Stage by that law: ${dilution.stage}.`;
}

function viscosityOf(
  { temperature, viscosity, clean, dilution, hot }: Sample,
  wording: Wording,
): string {
  const at = say(temperature, 'temperature', wording.units);
  const cold = `${print(viscosity)} at ${at}, ${print(clean)} when clean`;
  if (!dilution) return `${cold}: it has aged or is another grade.`;
  if (!hot) return `${cold}.`;
  const hundred = say(celsius(100), 'temperature', wording.units);
  return `${cold}; at ${hundred} ${print(hot.now.viscosity)}, ${gradeOf(hot.now.grades)}, and ${print(hot.clean.viscosity)}, ${gradeOf(hot.clean.grades)}, when clean.`;
}

/** `SAE 20`, `SAE 16 or 20`, `thinner than SAE 8`. */
function gradeOf({ grades, standing }: SaeGrades): string {
  if (standing === 'graded') return `SAE ${grades.join(' or ')}`;
  return standing === 'thinner' ? 'thinner than SAE 8' : 'thicker than SAE 60';
}

function filmOf(
  { bearing, load, now, finding, stand }: FilmReport,
  { densityBasis }: OilReport,
  wording: Wording,
): string {
  const { film, temperature } = now;
  if (film.outcome === 'no film') return `none at ${bearing}: ${film.because}.`;
  const { regime, thresholds, roughness } = finding;
  const microns = (length: Length) => format(length, micrometre);
  const times = `${formatNumber(finding.finding.value, ratio, 1)} times the roughness of ${microns(roughness)}`;
  const needed = `full film from ${formatNumber(thresholds.full, ratio, 1)} times ${noteOf(finding.finding.basis, wording)}`;
  const density =
    densityBasis.kind === 'specified'
      ? ''
      : `, its density a rule of thumb ${noteOf(densityBasis, wording)}`;
  return `${microns(film.film)} at ${bearing}, ${times}: ${regime} (${needed}), under a steady ${say(load, 'force', wording.units)} with the oil at ${say(temperature, 'temperature', wording.units)} there${density}; ${standOf(stand, wording.units)}. A film says nothing of knock: a loose bearing hammers however thick its film.`;
}

/** What fuel a film stands, in words. */
function standOf(stand: FilmStand, units: UnitSystem): string {
  switch (stand.outcome) {
    case 'stands':
      return `it stands ${say(stand.fraction, 'volumeFraction', units)} of fuel`;
    case 'too thin when clean':
      return 'it is too thin even with clean oil';
    case 'stands anything':
      return 'it is loaded so lightly that it stands any amount of fuel';
  }
}

/** `the oil film at rod 2 is 1.2 µm, 2.1 times the roughness, where a full film takes 3.0 times (…)`. */
export function describeThinFilm({ bearing, now, finding }: FilmReport, wording: Wording): string {
  const { finding: judged, thresholds } = finding;
  if (now.film.outcome === 'no film') return `no oil film carries ${bearing}: ${now.film.because}`;
  const [have, need] = [judged.value, thresholds.full].map((value) =>
    formatNumber(value, ratio, 1),
  );
  return `the oil film at ${bearing} is ${format(now.film.film, micrometre)}, ${have} times the roughness, where a full film takes ${need} times ${noteOf(judged.basis, wording)}`;
}

function timeLeft(
  { flow, basis, left, untilAct, untilCritical }: Leak,
  film: FilmReport | undefined,
  wording: Wording,
): string {
  const { units } = wording;
  const leaking = `at a leak of ${say(flow, 'flow', units)} ${noteOf(basis, wording)}`;
  const end = left.setBy === 'film' ? 'the film is too thin' : 'it must not run';
  if (flow === 0) return 'nothing leaks.';
  if (film?.stand.outcome === 'too thin when clean') {
    return `none, whatever leaks: the film is too thin even with clean oil; ${leaking}.`;
  }
  return `${lasting(left.until, end, units)}, ${leaking}. Clean oil lasts ${lasting(untilAct, 'action is due', units)}, ${lasting(untilCritical, end, units)}, if none of the fuel evaporates.`;
}

/** `2.8 h until it must not run`. */
function lasting(until: TimeToDilution, end: string, units: UnitSystem): string {
  if (!until.reached) return `so long that it never comes to the point where ${end}`;
  return until.time === 0 ? `none: ${end}` : `${say(until.time, 'time', units)} until ${end}`;
}

function toDo({ sample, film, leak }: OilReport): string {
  const leaks = leak !== undefined && leak.flow > 0;
  const fuelled = sample?.dilution !== undefined && sample.fuel > 0;
  const over = leaks && leak.left.until.reached && leak.left.until.time === 0;
  const stop =
    sample?.dilution?.stage === 'critical' ||
    (film?.finding.regime !== undefined && film.finding.regime !== 'full') ||
    over;
  const steps = [
    ...(stop ? ['stop the engine', 'drain the oil'] : []),
    ...(!stop && sample && sample.dilution?.stage !== 'normal' ? ['change the oil'] : []),
    ...(leaks ? ['mend the needle valve before oil goes in'] : []),
    ...(film?.stand.outcome === 'too thin when clean'
      ? [
          'check its grade, and clearance and load of the bearing: clean oil alone does not cure this',
        ]
      : []),
  ];
  const deed = steps.length > 0 ? steps.join(', ') : 'no action needed for what was measured';
  const caution =
    fuelled || leaks
      ? '; fuel vapour in a crankcase can ignite: keep flames and switches away, and ventilate'
      : '';
  return `${deed}${caution}.`;
}
