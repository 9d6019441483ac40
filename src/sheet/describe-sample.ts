import type { Wording } from '../judging/index.js';
import { describeSpan, noteOf, say, sayFinding } from '../judging/internal.js';
import type { BlendingLaw, SaeGrades, ThinningFinding } from '../oil/index.js';
import {
  celsius,
  centistokes,
  format,
  type KinematicViscosity,
  percent,
  percentByVolume,
  type VolumeFraction,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { either } from '../reading/index.js';
import type { SampleReport } from './inspect-sample.js';

const print = (viscosity: KinematicViscosity) => format(viscosity, centistokes, 1);

/** The fuel in the oil: the most that a law finds, the least, and the stage. */
export function fuelNow(sample: SampleReport, wording: Wording): string {
  const { byLaw, dilution, fuelViscosity } = sample;
  if (!dilution || !byLaw) return 'unknown, as the sample is thicker than clean oil.';
  const { span, basis } = fuelViscosity;
  const fuels =
    span.min === span.max
      ? format(span.min, centistokes)
      : `${formatNumber(span.min, centistokes)} to ${format(span.max, centistokes)}`;
  const taken = `fuel taken as ${fuels} ${noteOf(basis, wording)}`;
  if (byLaw.span.max <= 0) {
    return `the viscosity shows none, ${taken}; an oil that has thickened with age can hide some.`;
  }
  const weathers = span.min < span.max;
  const by = (law: BlendingLaw, fuel: string) =>
    `by ${law === 'log-mean' ? 'the log-mean' : law}${weathers ? ` with ${fuel} petrol` : ''}`;
  const most = by(byLaw.lawOf.max, 'weathered');
  const least = `${by(byLaw.lawOf.min, 'fresh')}, ${format(byLaw.span.min, percentByVolume)}`;
  return `if fuel thinned it, at most, ${most}, ${sayFinding(dilution.finding, wording)}; at least, ${least}; ${taken}. Stage at the upper end, ${most}: ${dilution.stage}. ${NO_LAW}`;
}

/**
 * The fuel in the oil in few words, for an action: `5.7 to 16.6 vol% of fuel, if it is fuel; the limit is 5.0 vol% (…)`.
 * The viscosity alone does not show that it is fuel.
 */
export function describeFuelSpan(
  { byLaw, dilution }: Pick<SampleReport, 'byLaw' | 'dilution'>,
  wording: Wording,
): string {
  if (!dilution || !byLaw) return 'fuel unknown, as the sample is thicker than clean oil';
  const { limits, basis, value } = dilution.finding;
  const found = { min: Math.max(0, byLaw.span.min) as VolumeFraction, max: value };
  return `${describeSpan(found, 'volumeFraction', wording.units)} of fuel, if it is fuel; the limit is ${format(limits.max as VolumeFraction, percentByVolume)} ${noteOf(basis, wording)}`;
}

/** Why a sample is thicker than clean oil. */
export const WHY_THICK =
  'it has aged, is another grade, has water or coolant in it (milky), or soot';

/** What ASTM D7152 says of itself in sections 1.3 and 5.4. */
const NO_LAW =
  'No law is exact for fuel in oil: ASTM D7152 may not hold with viscosity improvers and additive packages (1.3), and for fuel blends found mass fractions more accurate (5.4).';

/** The viscosity of the sample against clean oil, what it has lost, and its grade when hot. */
export function viscosityNow(sample: SampleReport, wording: Wording): string {
  const { temperature, viscosity, clean, dilution, thinning, hot } = sample;
  const at = say(temperature, 'temperature', wording.units);
  const cold = `${print(viscosity)} at ${at}, against ${print(clean)} for clean oil`;
  if (!dilution) return `${cold}: ${WHY_THICK}.`;
  const lost = thinning && viscosity < clean ? `; ${lostOf(thinning, wording)}` : '';
  if (!hot) return `${cold}${lost}.`;
  const hundred = say(celsius(100), 'temperature', wording.units);
  const left = hot.leftGrade ? ': it has left its grade' : '';
  return `${cold}${lost}; computed for ${hundred}: ${print(hot.now.viscosity)} now, ${gradeOf(hot.now.grades)}, and ${print(hot.clean.viscosity)} clean, ${gradeOf(hot.clean.grades)}${left}.`;
}

/** `it has lost 62 % of its viscosity, critical above 20 % (…)`. */
function lostOf({ stage, finding, thresholds }: ThinningFinding, wording: Wording): string {
  const lost = `it has lost ${format(finding.value, percent, 0)} of its viscosity`;
  const note = noteOf(finding.basis, wording);
  const limit = format(thresholds[stage === 'critical' ? 'critical' : 'act'], percent, 0);
  if (stage === 'normal') return `${lost}, within the limit of ${limit} ${note}`;
  return `${lost}, above the ${limit} at which ${stage === 'critical' ? 'it is critical' : 'one acts'} ${note}`;
}

/** What to do with an oil that is too thin by its viscosity. */
export function describeThinOil(thinning: ThinningFinding, wording: Wording): string {
  const first = thinning.stage === 'critical' ? 'DO NOT RUN: drain the oil' : 'change the oil';
  return `${first} and find out why it is thin, fuel, a wrong grade or age; ${lostOf(thinning, wording)}`;
}

/** How to tell fuel from what looks like it; nothing where the oil is thick enough. */
export function isItFuel({ dilution, thinning, hot }: SampleReport): readonly string[] {
  const thin = [dilution?.stage, thinning?.stage].some(
    (stage) => stage !== undefined && stage !== 'normal',
  );
  return thin || hot?.leftGrade ? [`Is it fuel: ${TELL_APART}`] : [];
}

const TELL_APART =
  'the viscosity alone does not show it. A wrong grade, a viscosity improver that has sheared down, and a sample warmer than it was read at look the same. Fuel shows by its smell, by a level that has risen, and by a lighter ring round a drop on blotting paper; a laboratory finds it by a low flash point, or measures it by gas chromatography. Never try oil with a flame.';

/** `SAE 20`, `SAE 12, 16 or 20`, `thinner than SAE 8`. */
function gradeOf({ grades, standing }: SaeGrades): string {
  if (standing === 'graded') return `SAE ${either(grades)}`;
  return standing === 'thinner' ? 'thinner than SAE 8' : 'thicker than SAE 60';
}
