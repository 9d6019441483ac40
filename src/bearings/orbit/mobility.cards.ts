import { card } from '../../judging/internal.js';
import { ratio } from '../../quantities/index.js';
import { eccentricityAlong, orbitLengthToDiameter } from './domains.js';
import { shortBearingMobility } from './mobility.js';

const along = {
  field: 'along',
  meaning: 'eccentricity ratio along the load',
  domain: eccentricityAlong,
  usual: [-0.7, 0.7],
} as const;
const lengthToDiameter = {
  field: 'lengthToDiameter',
  meaning: 'length over diameter',
  domain: orbitLengthToDiameter,
  usual: [0.2, 0.6],
} as const;
const OUTSIDE = 'the journal is not inside its clearance';
const BOOKER = 'J. F. Booker, short-bearing mobility, from memory';

/** Formulas of the mobility of a short bearing. */
export const mobilityCards = {
  mobilityAlong: card({
    of: shortBearingMobility,
    name: 'mobility of a short bearing, along the load',
    gives: { symbol: 'M_x', meaning: 'mobility along the load', dimension: 'ratio' },
    letters: { x: along, lambda: lengthToDiameter },
    call: ({ x, lambda }) => [{ along: x, across: ratio(0.2), lengthToDiameter: lambda }],
    read: ({ along }) => along,
    expression: '(1 - x)^2.5 / (pi * lambda^2)',
    refuses: { [OUTSIDE]: { with: { x: -0.99 }, names: 'place' } },
    example: { x: ratio(0.3), lambda: ratio(0.5) },
    source: BOOKER,
  }),
  mobilityAcross: card({
    of: shortBearingMobility,
    name: 'mobility of a short bearing, across the load',
    gives: { symbol: 'M_y', meaning: 'mobility across the load', dimension: 'ratio' },
    letters: {
      x: along,
      y: {
        field: 'across',
        meaning: 'eccentricity ratio across the load',
        domain: eccentricityAlong,
        usual: [0.01, 0.7],
      },
      lambda: lengthToDiameter,
    },
    read: ({ across }) => across,
    expression: '-4 * y * (1 - x)^1.5 / (pi^2 * lambda^2)',
    refuses: { [OUTSIDE]: { with: { x: 0.8, y: 0.8 }, names: 'place' } },
    example: { x: ratio(0.3), y: ratio(0.2), lambda: ratio(0.5) },
    source: BOOKER,
  }),
};
