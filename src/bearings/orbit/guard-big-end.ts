import { diameter, guardFields, guardLength, guardWord } from '../../judging/internal.js';
import type { BigEndLoad, BigEndLoads, LoadDiagram } from '../../motion/index.js';
import { crankSpeed, guardCycle, pinForce, rodLean } from '../../motion/internal.js';
import type { Ratio } from '../../quantities/index.js';
import { oilFilm } from '../domains.js';
import { filmViscosity } from '../film/domains.js';
import { guardRunningClearance } from '../film/journal-bearing.js';
import { orbitLengthToDiameter, orbitTolerance } from './domains.js';
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
  const { thinnerThan, film = 'finite', tolerance = 1e-4 as Ratio } = bigEnd;
  const { least, most } = orbitLengthToDiameter;
  if (thinnerThan !== undefined) oilFilm('thinnerThan', thinnerThan);
  return {
    journal,
    length: guardLength('length', bigEnd.length, [least * journal, most * journal], 'mm(30)'),
    clearance: guardRunningClearance('clearance', bigEnd.clearance, journal),
    viscosity: filmViscosity('viscosity', bigEnd.viscosity),
    loads: guardLoads(bigEnd.loads),
    film: guardWord('film', film, ['finite', 'short']),
    ...(thinnerThan !== undefined && { thinnerThan }),
    tolerance: orbitTolerance('tolerance', tolerance),
  };
}

/** Refuses loads that do not go once around the cycle. */
export function guardLoads(diagram: LoadDiagram): LoadDiagram {
  guardFields('loads', diagram as BigEndLoads, DIAGRAM);
  const speed = crankSpeed('loads.speed', diagram.speed);
  const loads = guardCycle('loads.loads', diagram.loads, (at, load) => {
    guardFields(at, load as BigEndLoad, LOAD);
    const { along, across, rodAngle } = load;
    pinForce(`${at}.along`, along);
    pinForce(`${at}.across`, across);
    rodLean(`${at}.rodAngle`, rodAngle);
  });
  return { speed, loads };
}
