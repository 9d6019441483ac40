import { card } from '../judging/internal.js';
import { rimDiameter, rimMark, turnFromCentre } from './domains.js';
import { rimAngle, rimDistance } from './rim.js';

const D = {
  field: 'diameter',
  meaning: 'diameter of the rim',
  domain: rimDiameter,
  usual: [0.2, 0.4],
} as const;
const turn = {
  D,
  a: { field: 'angle', meaning: 'turn of the crank', domain: turnFromCentre, usual: [0.1, 1] },
} as const;
const s = { field: 'arc', meaning: 'distance along the rim', domain: rimMark } as const;
const c = { field: 'chord', meaning: 'distance across', domain: rimMark } as const;
const geometry = 'geometry of a circle';

/** Formulas of marks on a rim. */
export const rimCards = {
  rimArc: card({
    of: rimDistance,
    name: 'distance along a rim',
    gives: { symbol: 's', meaning: 'distance along the rim', dimension: 'length' },
    letters: turn,
    read: ({ arc }) => arc,
    expression: 'D / 2 * a / (1 rad)',
    source: geometry,
  }),
  rimChord: card({
    of: rimDistance,
    name: 'distance straight across a rim',
    gives: { symbol: 'c', meaning: 'distance straight across', dimension: 'length' },
    letters: turn,
    read: ({ chord }) => chord,
    expression: 'D * sin(a / 2)',
    source: geometry,
  }),
  angleByArc: card({
    of: rimAngle,
    name: 'angle from a distance along a rim',
    gives: { symbol: 'a', meaning: 'turn of the crank', dimension: 'angle' },
    letters: { D, s: { ...s, usual: [0.01, 0.1] } },
    expression: '2 * s / D * 1 rad',
    refuses: { 'the arc is longer than half the rim': { with: { s: 0.8 }, names: 'arc' } },
    source: geometry,
  }),
  angleByChord: card({
    of: rimAngle,
    name: 'angle from a distance straight across a rim',
    gives: { symbol: 'a', meaning: 'turn of the crank', dimension: 'angle' },
    letters: { D, c: { ...c, usual: [0.01, 0.1] } },
    expression: '2 * asin(c / D) * 1 rad',
    refuses: { 'the chord is longer than the diameter': { with: { c: 0.5 }, names: 'chord' } },
    source: geometry,
  }),
};
