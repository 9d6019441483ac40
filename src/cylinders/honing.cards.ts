import { card, diameter, pistonStroke } from '../judging/internal.js';
import { honeSpeed, honeStrokeRate, includedAngle } from './domains.js';
import { crosshatchAngle, strokeRateForCrosshatch } from './honing.js';

const motion = {
  L: {
    field: 'strokeLength',
    meaning: 'travel of the hone one way',
    domain: pistonStroke,
    usual: [0.05, 0.2],
  },
  w: { field: 'spindleSpeed', meaning: 'speed of the hone', domain: honeSpeed, usual: [5, 50] },
  D: { field: 'bore', meaning: 'bore diameter', domain: diameter, usual: [0.05, 0.12] },
} as const;

/** Formulas of honing. */
export const honingCards = {
  crosshatchAngle: card({
    of: crosshatchAngle,
    name: 'crosshatch from the strokes of a hone',
    gives: { symbol: 'a', meaning: 'included angle of the crosshatch', dimension: 'angle' },
    letters: {
      f: {
        field: 'strokeRate',
        meaning: 'rate of double strokes, down and up',
        domain: honeStrokeRate,
        usual: [0.3, 2],
      },
      ...motion,
    },
    expression: '2 * atan(4 * L * f / (w / (1 rad) * D)) * 1 rad',
    source: 'kinematics',
  }),
  strokeRateForCrosshatch: card({
    of: strokeRateForCrosshatch,
    name: 'strokes of a hone for a crosshatch',
    gives: {
      symbol: 'f',
      meaning: 'rate of double strokes, down and up',
      dimension: 'rate',
    },
    letters: {
      a: {
        field: 'includedAngle',
        meaning: 'included angle of the crosshatch',
        domain: includedAngle,
        usual: [0.5, 1.2],
      },
      ...motion,
    },
    expression: 'w / (1 rad) * D * tan(a / 2) / (4 * L)',
    source: 'kinematics',
  }),
};
