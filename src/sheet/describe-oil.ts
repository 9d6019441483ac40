import type { Wording } from '../judging/index.js';
import { describeFilm } from './describe-film.js';
import { describeTolerance, leakLines } from './describe-leak.js';
import { fuelNow, isItFuel, viscosityNow } from './describe-sample.js';
import { wrecking } from './inspect-film.js';
import type { OilReport } from './inspect-oil.js';
import { isThinOil } from './inspect-sample.js';

/**
 * Describes the oil line by line: the fuel in it, its viscosity, the film in the bearing, whether
 * the bearing is good, the fuel that its film tolerates, the time left, the leak, and what to do. A line whose readings are missing is left out.
 */
export function describeOil(oil: OilReport, wording: Wording): readonly string[] {
  const { sample, film, tolerance, leak } = oil;
  return [
    ...(sample ? [`Fuel now: ${fuelNow(sample, wording)}`] : []),
    ...(sample ? [`Viscosity now: ${viscosityNow(sample, wording)}`] : []),
    ...(sample ? isItFuel(sample) : []),
    ...(film ? describeFilm(film, oil, wording) : []),
    ...(tolerance && film
      ? [`Fuel the film tolerates: ${describeTolerance(tolerance, film, wording)}`]
      : []),
    ...(leak ? leakLines(leak, tolerance, wording) : []),
    `What to do: ${toDo(oil)}`,
  ];
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
    ...(stop ? ['do not run the engine', 'drain the oil'] : []),
    ...(!stop && change ? ['change the oil'] : []),
    ...(leaks && sample?.dilution === undefined ? ['measure the oil before you run on it'] : []),
    ...(leaks ? ['mend the needle valve before you refill'] : []),
    ...(tolerance?.asGiven.outcome === 'too thin when clean'
      ? [
          'check the grade of the oil and the clearance and load of the bearing: clean oil alone does not cure this',
        ]
      : []),
    ...(film && wrecking(film.acceptance).length > 0
      ? [`${stop ? '' : 'do not run the engine, '}put the bearing right before it runs again`]
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
