import { card, defined, pistonStroke } from '../judging/internal.js';
import { rodCentres } from '../motion/internal.js';
import { pistonDepth, turnFromCentre } from './domains.js';
import { angleAtTravel, pistonTravel } from './piston-travel.js';

const crank = {
  s: { field: 'stroke', meaning: 'stroke', domain: pistonStroke, usual: [0.07, 0.1] },
  l: {
    field: 'rodLength',
    meaning: 'rod from centre to centre',
    domain: rodCentres,
    usual: [0.15, 0.25],
  },
} as const;
const NO_ROD = {
  'the rod cannot belong to the stroke': { with: { l: 0.03 }, names: 'rodLength' },
};

/** Formulas of the travel of a piston. */
export const pistonTravelCards = {
  pistonTravel: card({
    of: pistonTravel,
    name: 'travel of the piston from top dead centre',
    gives: { symbol: 'x', meaning: 'piston below top dead centre', dimension: 'length' },
    letters: {
      ...crank,
      a: {
        field: 'angle',
        meaning: 'crank from top dead centre',
        domain: turnFromCentre,
        usual: [0.1, 1],
      },
    },
    where: [defined('r = s / 2', 'radius of the crank')],
    expression: 'r * (1 - cos(a)) + l - sqrt(l^2 - (r * sin(a))^2)',
    refuses: NO_ROD,
    source: 'geometry of the slider-crank',
  }),
  angleAtTravel: card({
    of: angleAtTravel,
    name: 'angle of the crank from the travel of the piston',
    gives: { symbol: 'a', meaning: 'crank from top dead centre', dimension: 'angle' },
    letters: {
      ...crank,
      x: {
        field: 'travel',
        meaning: 'piston below top dead centre',
        domain: pistonDepth,
        usual: [0.002, 0.06],
      },
    },
    expression: '2 * atan(sqrt(x * (2 * l - x) / ((s - x) * (s + 2 * l - x)))) * 1 rad',
    refuses: {
      ...NO_ROD,
      'the travel is more than the stroke': { with: { x: 0.15 }, names: 'travel' },
    },
    source: 'law of cosines',
  }),
};
