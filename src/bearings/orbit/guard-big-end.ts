import {
  guardBetween,
  guardDiameter,
  guardFields,
  guardLength,
  guardWord,
} from '../../judging/guards.js';
import { guardCycle, guardDegrees, guardSpeed } from '../../motion/guards.js';
import type { LoadDiagram } from '../../motion/index.js';
import type { Force, Ratio } from '../../quantities/dimensions.js';
import { guardFilmViscosity, guardRunningClearance } from '../film/journal-bearing.js';
import type { BigEnd } from './orbit-types.js';

/** A big end with nothing left open but the film of interest. */
export function guardBigEnd(
  bigEnd: BigEnd,
): BigEnd & { readonly tolerance: Ratio; readonly film: 'finite' | 'short' } {
  guardFields('bigEnd', bigEnd, [
    'journal',
    'length',
    'clearance',
    'viscosity',
    'loads',
    'film',
    'thinnerThan',
    'tolerance',
  ]);
  const journal = guardDiameter('journal', bigEnd.journal);
  const { thinnerThan } = bigEnd;
  if (thinnerThan !== undefined) guardLength('thinnerThan', thinnerThan, 0, 0.01);
  return {
    journal,
    length: guardLength('length', bigEnd.length, journal / 50, 2 * journal),
    clearance: guardRunningClearance('clearance', bigEnd.clearance, journal),
    viscosity: guardFilmViscosity('viscosity', bigEnd.viscosity),
    loads: guardLoads(bigEnd.loads),
    film: guardWord('film', bigEnd.film ?? 'finite', ['finite', 'short']),
    ...(thinnerThan !== undefined && { thinnerThan }),
    tolerance: guardBetween(
      'tolerance',
      bigEnd.tolerance ?? (1e-4 as Ratio),
      'ratio',
      [1e-6, 1e-2],
      'ratio(1e-4)',
    ),
  };
}

function guardLoads(diagram: LoadDiagram): LoadDiagram {
  guardFields('loads', diagram, ['speed', 'loads', 'meanTorque']);
  const speed = guardSpeed('loads.speed', diagram.speed);
  const guardForce = (parameter: string, value: Force) =>
    guardBetween(parameter, value, 'force', [-1e8, 1e8], 'kilonewton(12)');
  const loads = guardCycle('loads.loads', diagram.loads, (at, { along, across, rodAngle }) => {
    guardForce(`${at}.along`, along);
    guardForce(`${at}.across`, across);
    guardDegrees(`${at}.rodAngle`, rodAngle, [-60, 60]);
  });
  return { speed, loads };
}
