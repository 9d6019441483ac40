import { card, defined } from '../judging/internal.js';
import { degree, mm } from '../quantities/index.js';
import {
  facingStock,
  springHeight,
  valveLash,
  valveMargin,
  valveRecession,
  valveSeatAngle,
} from './domains.js';
import { afterFacing } from './facing.js';

const l = {
  field: 'lash',
  meaning: 'lash before',
  domain: valveLash,
  usual: [0.0001, 0.0004],
} as const;
const beta = {
  field: 'seatAngle',
  meaning: 'angle of seat and face',
  domain: valveSeatAngle,
  usual: [0.5, 0.8],
  made: [0.5235987755982988, 0.7853981633974483],
} as const;
const c = {
  field: 'seatCut',
  meaning: 'depth cut into the seat, along the stem',
  domain: facingStock,
  usual: [0, 0.0003],
} as const;
const f = {
  field: 'faceGround',
  meaning: 'taken off the face, square to it',
  domain: facingStock,
  usual: [0, 0.0003],
} as const;
const geometry = 'geometry of two cones';
const length = (symbol: string, meaning: string) =>
  ({ symbol, meaning, dimension: 'length' }) as const;

/** Formulas of what grinding does to a valve. */
export const facingCards = {
  valveSink: card({
    of: afterFacing,
    name: 'sink of a valve by grinding',
    gives: length('s', 'how much deeper the valve sits'),
    letters: { beta, c, f },
    read: ({ sink }) => sink,
    expression: 'c + f / cos(beta)',
    example: { beta: degree(45), c: mm(0.05), f: mm(0.1) },
    source: geometry,
  }),
  lashAfterFacing: card({
    of: afterFacing,
    name: 'lash after seat and face were ground',
    gives: length('l_f', 'lash that is left'),
    letters: { l, beta, c, f },
    where: [defined('s = c + f / cos(beta)', 'how much deeper the valve sits', 'sink')],
    read: ({ lash }) => lash,
    expression: 'l - s',
    example: { l: mm(0.4), beta: degree(45), c: mm(0.05), f: mm(0.1) },
    source: geometry,
  }),
  marginAfterFacing: card({
    of: afterFacing,
    name: 'margin after the face was ground',
    gives: length('m_f', 'margin that is left'),
    letters: {
      m: { field: 'margin', meaning: 'margin before', domain: valveMargin, usual: [0.0008, 0.002] },
      beta,
      f,
    },
    read: ({ margin }) => margin,
    expression: 'm - f / cos(beta)',
    example: { m: mm(1.4), beta: degree(45), f: mm(0.1) },
    source: geometry,
  }),
  recessionAfterFacing: card({
    of: afterFacing,
    name: 'recession after seat and face were ground',
    gives: length('r_f', 'how far the head lies below the deck'),
    letters: {
      r: {
        field: 'recession',
        meaning: 'recession before',
        domain: valveRecession,
        usual: [0, 0.001],
      },
      beta,
      c,
      f,
    },
    where: [defined('s = c + f / cos(beta)', 'how much deeper the valve sits', 'sink')],
    read: ({ recession }) => recession,
    expression: 'r + s',
    example: { r: mm(0.5), beta: degree(45), c: mm(0.05), f: mm(0.1) },
    source: geometry,
  }),
  springHeightAfterFacing: card({
    of: afterFacing,
    name: 'height of a spring after seat and face were ground',
    gives: length('h_f', 'height of the spring, valve closed'),
    letters: {
      h: {
        field: 'installedHeight',
        meaning: 'height before, valve closed',
        domain: springHeight,
        usual: [0.03, 0.05],
      },
      beta,
      c,
      f,
    },
    where: [defined('s = c + f / cos(beta)', 'how much deeper the valve sits', 'sink')],
    read: ({ installedHeight }) => installedHeight,
    expression: 'h + s',
    example: { h: mm(40), beta: degree(45), c: mm(0.05), f: mm(0.1) },
    source: geometry,
  }),
};
