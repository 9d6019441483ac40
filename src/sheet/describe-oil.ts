import { describe, type Wording } from '../judging/index.js';
import { noteOf, say } from '../judging/internal.js';
import type { SaeGrades, TimeToDilution } from '../oil/index.js';
import {
  celsius,
  centistokes,
  format,
  type KinematicViscosity,
  percentByVolume,
  type UnitSystem,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { either } from '../reading/index.js';
import { describeFilm } from './describe-film.js';
import { wrecking } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';

type Sample = NonNullable<OilReport['sample']>;
type WithLeak = OilReport & Required<Pick<OilReport, 'leak'>>;

/**
 * Describes the oil in up to six lines: the fuel in it, its viscosity, the film in the bearing, whether the bearing
 * is good, the time left, and what to do. A line whose readings are missing is left out.
 */
export function describeOil(oil: OilReport, wording: Wording): readonly string[] {
  const { sample, film, leak } = oil;
  return [
    ...(sample ? [`Fuel now: ${fuelIn(sample, wording)}`] : []),
    ...(sample ? [`Viscosity now: ${viscosityOf(sample, wording)}`] : []),
    ...(film ? describeFilm(film, oil, wording) : []),
    ...(leak ? [`Time left: ${timeLeft({ ...oil, leak }, wording)}`] : []),
    `What to do: ${toDo(oil)}`,
  ];
}

const print = (viscosity: KinematicViscosity) => format(viscosity, centistokes, 1);

function fuelIn({ fuel, byLaw, dilution, fuelViscosity }: Sample, wording: Wording): string {
  if (!dilution || !byLaw) return 'unknown, as the sample is thicker than clean oil.';
  const taken = `fuel taken as ${format(fuelViscosity.value, centistokes)} ${noteOf(fuelViscosity.basis, wording)}`;
  if (fuel <= 0) return `the viscosity shows none by ASTM D7152, ${taken}.`;
  const { min, max } = byLaw.span;
  const span = `the blending laws range from ${formatNumber(min, percentByVolume)} to ${format(max, percentByVolume)}`;
  return `by ASTM D7152, ${describe(dilution.finding, wording)}; ${span}; ${taken}. Stage by ASTM D7152: ${dilution.stage}.`;
}

function viscosityOf(
  { temperature, viscosity, clean, dilution, hot }: Sample,
  wording: Wording,
): string {
  const at = say(temperature, 'temperature', wording.units);
  const cold = `${print(viscosity)} at ${at}, against ${print(clean)} for clean oil`;
  if (!dilution) return `${cold}: it has aged or is another grade.`;
  if (!hot) return `${cold}.`;
  const hundred = say(celsius(100), 'temperature', wording.units);
  return `${cold}; computed for ${hundred}: ${print(hot.now.viscosity)} now, ${gradeOf(hot.now.grades)}, and ${print(hot.clean.viscosity)} clean, ${gradeOf(hot.clean.grades)}.`;
}

/** `SAE 20`, `SAE 12, 16 or 20`, `thinner than SAE 8`. */
function gradeOf({ grades, standing }: SaeGrades): string {
  if (standing === 'graded') return `SAE ${either(grades)}`;
  return standing === 'thinner' ? 'thinner than SAE 8' : 'thicker than SAE 60';
}

function timeLeft({ sample, film, leak }: WithLeak, wording: Wording): string {
  const { flow, basis, left, untilAct, untilCritical } = leak;
  const { units } = wording;
  const leaking = `at a leak of ${say(flow, 'flow', units)} ${noteOf(basis, wording)}`;
  const isFilm = left.setBy === 'film';
  const limit = isFilm ? 'the film is too thin' : 'the fuel limit';
  if (flow === 0) return 'no leak was measured (0 flow).';
  if (film?.stand.outcome === 'too thin when clean') {
    return `none, even without a leak: the film is too thin in clean oil; ${leaking}.`;
  }
  const fresh = `Clean oil would last ${lasting(untilAct, 'action is due', units)} and ${lasting(untilCritical, limit, units)}, if no fuel evaporates.`;
  // Nothing is known of the oil that is in the sump.
  if (!sample?.dilution)
    return `unknown, as the fuel in the oil now is unknown; ${leaking}. ${fresh}`;
  const past = isFilm ? 'none, the film is already too thin' : 'none, already past the fuel limit';
  const isPast = left.until.reached && left.until.time === 0;
  return `${isPast ? past : lasting(left.until, limit, units)}, ${leaking}. ${fresh}`;
}

/** `2.8 h until the fuel limit`, `indefinitely`. */
function lasting(until: TimeToDilution, end: string, units: UnitSystem): string {
  return until.reached ? `${say(until.time, 'time', units)} until ${end}` : 'indefinitely';
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
    ...(leaks ? ['mend the needle valve before you refill'] : []),
    ...(film?.stand.outcome === 'too thin when clean'
      ? [
          'check the grade of the oil and the clearance and load of the bearing: clean oil alone does not cure this',
        ]
      : []),
    ...(film && wrecking(film.acceptance).length > 0
      ? [`${stop ? '' : 'stop the engine and '}put the bearing right before it runs again`]
      : []),
  ];
  const deed = steps.length > 0 ? steps.join(', ') : 'no action needed for what was measured';
  const caution =
    fuelled || leaks
      ? '; fuel vapour in a crankcase can ignite: keep flames and switches away, and ventilate'
      : '';
  return `${deed}${caution}.`;
}
