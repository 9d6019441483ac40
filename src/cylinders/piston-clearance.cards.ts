import { card, diameter, downFrom, upFrom } from '../judging/internal.js';
import { mm } from '../quantities/index.js';
import { pistonClearance, pistonClearanceSpan } from './piston-clearance.js';

const ANOTHER = 'the two are not of one cylinder';

/** Formulas of a piston's clearance. */
export const pistonClearanceCards = {
  pistonClearance: card({
    of: pistonClearance,
    name: 'piston clearance',
    gives: { symbol: 'c', meaning: 'diametral piston clearance', dimension: 'length' },
    letters: {
      D: { field: 'bore', meaning: 'bore diameter', domain: diameter, usual: [0.08, 0.081] },
      D_p: {
        field: 'piston',
        meaning: 'piston diameter across its thrust faces',
        domain: diameter,
        usual: [0.0795, 0.08],
      },
    },
    expression: 'D - D_p',
    refuses: { [ANOTHER]: { with: { D_p: 0.076 }, names: 'piston' } },
    example: { D: mm(80), D_p: mm(79.93) },
    source: 'geometry',
  }),
  leastPistonClearance: card({
    of: pistonClearanceSpan,
    name: 'least piston clearance of toleranced sizes',
    gives: { symbol: 'c_min', meaning: 'least diametral piston clearance', dimension: 'length' },
    letters: {
      D: {
        field: 'bore.min',
        written: 'bore.min',
        meaning: 'smallest bore diameter',
        domain: diameter,
        usual: [0.08, 0.081],
      },
      D_p: {
        field: 'piston.max',
        written: 'piston.max',
        meaning: 'largest piston diameter across its thrust faces',
        domain: diameter,
        usual: [0.0795, 0.08],
      },
    },
    call: ({ D, D_p }) => [
      {
        bore: upFrom(diameter, D),
        piston: downFrom(diameter, D_p),
      },
    ],
    read: ({ min }) => min,
    expression: 'D - D_p',
    refuses: { [ANOTHER]: { with: { D_p: 0.085 }, names: 'piston' } },
    example: { D: mm(80), D_p: mm(79.94) },
    source: 'geometry',
  }),
  mostPistonClearance: card({
    of: pistonClearanceSpan,
    name: 'most piston clearance of toleranced sizes',
    gives: { symbol: 'c_max', meaning: 'most diametral piston clearance', dimension: 'length' },
    letters: {
      D: {
        field: 'bore.max',
        written: 'bore.max',
        meaning: 'largest bore diameter',
        domain: diameter,
        usual: [0.0805, 0.081],
      },
      D_p: {
        field: 'piston.min',
        written: 'piston.min',
        meaning: 'smallest piston diameter across its thrust faces',
        domain: diameter,
        usual: [0.079, 0.0795],
      },
    },
    call: ({ D, D_p }) => [
      {
        bore: downFrom(diameter, D),
        piston: upFrom(diameter, D_p),
      },
    ],
    read: ({ max }) => max,
    expression: 'D - D_p',
    refuses: { [ANOTHER]: { with: { D_p: 0.0755 }, names: 'piston' } },
    example: { D: mm(80.02), D_p: mm(79.92) },
    source: 'geometry',
  }),
};
