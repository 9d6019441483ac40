import type { LoadDiagram } from '../../motion/index.js';
import { CYCLE } from '../../motion/internal.js';
import type { Flow, Force, Length, Ratio, Temperature } from '../../quantities/index.js';
import { largestOf } from '../../quantities/internal.js';
import { eccentricityRatio } from '../film/domains.js';
import { flowsOf } from '../film/film-thickness.js';
import { finiteBearing } from '../film/finite-bearing.js';
import { type CheckedBearing, type WarmFilm, warmFilmOf } from '../film/heat-balance.js';
import { slenderness } from '../film/journal-bearing.js';
import { bigEndOrbit } from '../orbit/big-end-orbit.js';
import type { AcceptedOrbit, BearingAcceptance, FilmsSideBySide } from './acceptance-types.js';

/** Mean and most of the load: of the cycle where it is known, and no less than the steady load. */
export function loadsOn(
  steady: Force,
  diagram: LoadDiagram | undefined,
): BearingAcceptance['load'] {
  if (diagram === undefined) return { mean: steady, peak: steady, of: 'steady load' };
  const { loads } = diagram;
  const forces = loads.map(({ along, across }) => Math.hypot(along, across));
  const angle = (i: number) =>
    (loads.at(i % loads.length)?.crankAngle ?? 0) + (i < 0 ? -CYCLE : i < loads.length ? 0 : CYCLE);
  const sum = forces.reduce(
    (all, force, i) => all + (force * (angle(i + 1) - angle(i - 1))) / 2,
    0,
  );
  return {
    mean: (sum / CYCLE) as Force,
    peak: largestOf([steady, ...forces]) as Force,
    of: 'cycle',
  };
}

/**
 * The films at one clearance. Oil is as warm in the orbit as under the mean of the load: it takes many cycles
 * to warm.
 */
export function filmsAt(
  bearing: CheckedBearing,
  load: BearingAcceptance['load'],
  loads: LoadDiagram | undefined,
): FilmsSideBySide {
  const mean = warmFilmOf({ ...bearing, load: load.mean });
  const peak = load.peak === load.mean ? mean : warmFilmOf({ ...bearing, load: load.peak });
  const sideFlow = Math.max(sideFlowOf(bearing, mean), sideFlowOf(bearing, peak)) as Flow;
  const both = { clearance: bearing.clearance, mean, peak, sideFlow };
  if (loads === undefined) return { ...both, film: peak.film.film };
  const orbit = orbitOf(bearing, mean, loads);
  return { ...both, orbit, ...filmOfOrbit(orbit) };
}

/** The hottest of the steady films; one that is no film has no heat of its own. */
export function hottestOf({ mean, peak }: Pick<FilmsSideBySide, 'mean' | 'peak'>): WarmFilm {
  if (peak.film.outcome === 'no film' || mean.film.outcome === 'no film') return mean;
  return wayOut(peak) > wayOut(mean) ? peak : mean;
}

/** How hot the oil is on its way out, the hottest of it. */
export const wayOut = ({ temperature, rise }: WarmFilm): Temperature =>
  (temperature + rise / 2) as Temperature;

function orbitOf(bearing: CheckedBearing, mean: WarmFilm, loads: LoadDiagram): AcceptedOrbit {
  if (mean.film.outcome === 'no film') return { outcome: 'no film' };
  const { journal, length, clearance } = bearing;
  const orbit = bigEndOrbit({ journal, length, clearance, viscosity: mean.viscosity, loads });
  switch (orbit.outcome) {
    case 'no film':
      return { outcome: 'no film' };
    case 'not settled':
      return orbit.because === 'too many steps'
        ? { outcome: 'too thin to follow' }
        : { outcome: 'not settled' };
    case 'settled':
      return orbit.range.lengthToDiameter.verdict === 'within'
        ? { outcome: 'settled', film: orbit.leastFilm.film }
        : { outcome: 'out of range' };
  }
}

function filmOfOrbit(orbit: AcceptedOrbit): { readonly film?: Length } {
  switch (orbit.outcome) {
    case 'settled':
      return { film: orbit.film };
    case 'no film':
    case 'too thin to follow':
      return { film: 0 as Length };
    default:
      return {};
  }
}

/** What leaves at the ends; of a journal that hardly leaves the middle, as at the least eccentricity on the map. */
function sideFlowOf(bearing: CheckedBearing, { film }: WarmFilm): number {
  if (film.outcome === 'floats') return film.sideFlow;
  // Where no film lasts, the journal lies at the shell, and as much leaves as can.
  const eccentricity =
    film.outcome === 'no film' ? eccentricityRatio.most : eccentricityRatio.least;
  const place = {
    eccentricity: eccentricity as Ratio,
    lengthToDiameter: slenderness(bearing),
  };
  return flowsOf(bearing, finiteBearing(place)).sideFlow;
}
