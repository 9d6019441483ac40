import { type FormulaCard, input } from '../card.js';

const BOOKER = 'J. F. Booker, short-bearing mobility, from memory';
const along = input('x', 'eccentricity ratio along the load', 'ratio', -0.7, 0.7);
const across = input('y', 'eccentricity ratio across the load', 'ratio', 0.01, 0.7);
const slenderness = input('lambda', 'length over diameter', 'ratio', 0.2, 0.6);

/** Formulas of the orbit of a journal. */
export const orbitCards = {
  mobilityAlong: {
    name: 'mobility of a short bearing, along the load',
    computedBy: 'shortBearingMobility',
    result: { symbol: 'M_x', meaning: 'mobility along the load', dimension: 'ratio' },
    inputs: [along, slenderness],
    where: [],
    expression: '(1 - x)^2.5 / (pi * lambda^2)',
    source: BOOKER,
  },
  mobilityAcross: {
    name: 'mobility of a short bearing, across the load',
    computedBy: 'shortBearingMobility',
    result: { symbol: 'M_y', meaning: 'mobility across the load', dimension: 'ratio' },
    inputs: [along, across, slenderness],
    where: [],
    expression: '-4 * y * (1 - x)^1.5 / (pi^2 * lambda^2)',
    source: BOOKER,
  },
} as const satisfies Record<string, FormulaCard>;
