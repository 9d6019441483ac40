import {
  diameter,
  guardBetween,
  guardFields,
  guardLength,
  guardWord,
} from '../../judging/internal.js';
import type { BigEndLoad, BigEndLoads, LoadDiagram } from '../../motion/index.js';
import { guardCycle, guardDegrees, guardSpeed } from '../../motion/internal.js';
import { type Force, kilonewton, type Ratio, ratio } from '../../quantities/index.js';
import { oilFilm } from '../domains.js';
import { guardFilmViscosity, guardRunningClearance } from '../film/journal-bearing.js';
import type { BigEnd } from './orbit-types.js';

const BIG_END = [
  'journal',
  'length',
  'clearance',
  'viscosity',
  'loads',
  'film',
  'thinnerThan',
  'tolerance',
] as const;
/** Of the loads as `bigEndLoads` gives them, the torques are not looked at. */
const DIAGRAM = ['speed', 'loads', 'meanTorque'] as const;
const LOAD = ['crankAngle', 'along', 'across', 'rodAngle', 'torque'] as const;

/** A big end with nothing left open but the film of interest. */
export function guardBigEnd(
  bigEnd: BigEnd,
): BigEnd & { readonly tolerance: Ratio; readonly film: 'finite' | 'short' } {
  guardFields('bigEnd', bigEnd, BIG_END);
  const journal = diameter('journal', bigEnd.journal);
  const { thinnerThan } = bigEnd;
  if (thinnerThan !== undefined) oilFilm('thinnerThan', thinnerThan);
  return {
    journal,
    length: guardLength('length', bigEnd.length, [journal / 50, 2 * journal], 'mm(30)'),
    clearance: guardRunningClearance('clearance', bigEnd.clearance, journal),
    viscosity: guardFilmViscosity('viscosity', bigEnd.viscosity),
    loads: guardLoads(bigEnd.loads),
    film: guardWord('film', bigEnd.film ?? 'finite', ['finite', 'short']),
    ...(thinnerThan !== undefined && { thinnerThan }),
    tolerance: guardBetween(
      'tolerance',
      bigEnd.tolerance ?? (1e-4 as Ratio),
      ratio,
      [1e-6, 1e-2],
      'ratio(1e-4)',
    ),
  };
}

function guardLoads(diagram: LoadDiagram): LoadDiagram {
  guardFields('loads', diagram as BigEndLoads, DIAGRAM);
  const speed = guardSpeed('loads.speed', diagram.speed);
  const guardForce = (parameter: string, value: Force) =>
    guardBetween(parameter, value, kilonewton, [-1e8, 1e8], 'kilonewton(12)');
  const loads = guardCycle('loads.loads', diagram.loads, (at, load) => {
    guardFields(at, load as BigEndLoad, LOAD);
    const { along, across, rodAngle } = load;
    guardForce(`${at}.along`, along);
    guardForce(`${at}.across`, across);
    guardDegrees(`${at}.rodAngle`, rodAngle, [-60, 60]);
  });
  return { speed, loads };
}
