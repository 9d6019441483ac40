import { card, defined, everyStep } from '../judging/internal.js';
import { degree, mm, ratio } from '../quantities/index.js';
import {
  breakerSpeedRatio,
  magnetoRotor,
  pointsAngle,
  pointsShare,
  rotorEdge,
  sparkAdvance,
  sparkLag,
} from './domains.js';
import { pointsDwell, sparkLaterByDwell } from './points.js';
import { rotorEdgeAngle } from './rotor-edge.js';
import { sparkSetting } from './spark.js';

const i = {
  field: 'speedRatio',
  meaning: 'turns of the magneto or cam for one turn of the crank',
  domain: breakerSpeedRatio,
  usual: [0.5, 1.5],
  made: [0.5, 1, 1.5],
} as const;
const held = {
  L: {
    field: 'lag',
    meaning: 'lag of the coupling',
    domain: sparkLag,
    usual: [0.1, 0.4],
    made: everyStep(degree, 8, 20, 1),
  },
  i,
  R: {
    field: 'retard',
    meaning: 'retard of the lever',
    domain: sparkLag,
    usual: [0.01, 0.2],
    made: everyStep(degree, 1, 8, 1),
  },
} as const;
const edge = {
  D_r: {
    field: 'rotorDiameter',
    meaning: 'diameter of the rotor',
    domain: magnetoRotor,
    usual: [0.03, 0.06],
  },
  e: { field: 'edgeDistance', meaning: 'edge distance', domain: rotorEdge, usual: [0.001, 0.006] },
} as const;
const OVER = {
  'the distance is more than the rotor': { with: { e: 0.07 }, names: 'edgeDistance' },
};
const geometry = 'geometry';

/** Formulas of the spark. */
export const sparkCards = {
  sparkHeldBack: card({
    of: sparkSetting,
    name: 'retard of the spark for starting',
    gives: { symbol: 'H', meaning: 'retard at the crank', dimension: 'angle' },
    letters: held,
    call: ({ L, i, R }) => [{ advance: degree(20), lag: L, speedRatio: i, retard: R }],
    read: ({ heldBack }) => heldBack,
    expression: 'L / i + R',
    example: { L: degree(15), i: ratio(1), R: degree(2) },
    source: geometry,
  }),
  startingSpark: card({
    of: sparkSetting,
    name: 'spark for starting',
    gives: { symbol: 'A_s', meaning: 'spark before top, starting', dimension: 'angle' },
    letters: {
      A: {
        field: 'advance',
        meaning: 'spark before top, running',
        domain: sparkAdvance,
        usual: [0.2, 0.5],
        made: everyStep(degree, 18, 30, 1),
      },
      ...held,
    },
    read: ({ starting }) => starting,
    where: [defined('H = L / i + R', 'retard at the crank', 'heldBack')],
    expression: 'A - H',
    example: { A: degree(20), L: degree(15), i: ratio(1), R: degree(2) },
    source: geometry,
  }),
  dwellByShare: card({
    of: pointsDwell,
    name: 'dwell of points on a four-lobe cam, from its share',
    gives: { symbol: 'w', meaning: 'dwell, as an angle of the cam', dimension: 'angle' },
    letters: {
      x: { field: 'share', meaning: 'share of the dwell', domain: pointsShare, usual: [0.4, 0.7] },
    },
    call: ({ x }) => [{ lobes: 4, share: x }],
    read: ({ dwell }) => dwell,
    where: [defined('n = 4', 'lobes of the cam', 'lobes')],
    tabled: ['n'],
    expression: 'x * 2 * pi / n * 1 rad',
    source: 'definition',
  }),
  dwellShare: card({
    of: pointsDwell,
    name: 'share of the dwell of points on a four-lobe cam',
    gives: { symbol: 'x', meaning: 'share of the dwell', dimension: 'ratio' },
    letters: {
      w: {
        field: 'dwell',
        meaning: 'dwell, as an angle of the cam',
        domain: pointsAngle,
        usual: [0.6, 1.2],
      },
    },
    call: ({ w }) => [{ lobes: 4, dwell: w }],
    read: ({ share }) => share,
    where: [defined('n = 4', 'lobes of the cam', 'lobes')],
    tabled: ['n'],
    expression: 'w / (1 rad) * n / (2 * pi)',
    refuses: { 'the points would never open': { with: { w: 1.57 }, names: 'dwell' } },
    source: 'definition',
  }),
  sparkLaterByDwell: card({
    of: sparkLaterByDwell,
    name: 'spark later by a change of dwell',
    gives: { symbol: 'B', meaning: 'spark later, at the crank', dimension: 'angle' },
    letters: {
      w_1: {
        field: 'from',
        meaning: 'dwell before',
        domain: pointsAngle,
        usual: [0.8, 0.91],
        made: everyStep(degree, 46, 52, 1),
      },
      w_2: {
        field: 'to',
        meaning: 'dwell after',
        domain: pointsAngle,
        usual: [0.91, 1.02],
        made: everyStep(degree, 52, 58, 1),
      },
      i,
    },
    expression: '(w_2 - w_1) / 2 / i',
    example: { w_1: degree(50), w_2: degree(54), i: ratio(1) },
    source: geometry,
  }),
  edgeAngleAtMagneto: card({
    of: rotorEdgeAngle,
    name: 'edge distance as an angle at the magneto',
    gives: { symbol: 'eta', meaning: 'angle at the magneto', dimension: 'angle' },
    letters: edge,
    call: ({ D_r, e }) => [{ rotorDiameter: D_r, edgeDistance: e, speedRatio: ratio(1) }],
    read: ({ atMagneto }) => atMagneto,
    expression: '2 * asin(e / D_r) * 1 rad',
    refuses: OVER,
    source: geometry,
  }),
  edgeAngleAtCrank: card({
    of: rotorEdgeAngle,
    name: 'edge distance as an angle at the crank',
    gives: { symbol: 'eta_c', meaning: 'angle at the crank', dimension: 'angle' },
    letters: { ...edge, i },
    read: ({ atCrank }) => atCrank,
    where: [defined('eta = 2 * asin(e / D_r) * 1 rad', 'angle at the magneto', 'atMagneto')],
    expression: 'eta / i',
    example: { D_r: mm(45), e: mm(3.5), i: ratio(1) },
    source: geometry,
  }),
};
