import { card, defined } from '../judging/internal.js';
import { metre, ratio } from '../quantities/index.js';
import { boltDiameter, preload as F, pitch } from './card-letters.js';
import { bearingFace, screwFriction } from './domains.js';
import { screwTorque } from './screw-torque.js';

const METRIC = 'ISO metric' as const;
const d = { ...boltDiameter, field: 'thread.diameter' } as const;
const P = { ...pitch, field: 'thread.pitch' } as const;

/** Formulas of the screw. */
export const screwTorqueCards = {
  screwTorque: card({
    of: screwTorque,
    name: 'torque by the full equation of the screw',
    gives: { symbol: 'T', meaning: 'torque on nut or head', dimension: 'torque' },
    letters: {
      d,
      P,
      F,
      m_t: {
        field: 'threadFriction',
        meaning: 'coefficient of friction in the thread',
        domain: screwFriction,
        usual: [0.08, 0.2],
      },
      m_f: {
        field: 'faceFriction',
        meaning: 'coefficient of friction under the nut or head',
        domain: screwFriction,
        usual: [0.08, 0.2],
      },
      D: {
        field: 'faceDiameter',
        meaning: 'mean diameter of the bearing face',
        domain: bearingFace,
        usual: [0.0125, 0.0145],
      },
    },
    call: ({ d, P, F, m_t, m_f, D }) => [
      {
        thread: { form: METRIC, diameter: d, pitch: P },
        preload: F,
        threadFriction: m_t,
        faceFriction: m_f,
        faceDiameter: D,
      },
    ],
    read: ({ torque }) => torque.max,
    where: [
      defined('f = 3 * sqrt(3) / 8', 'outside less pitch diameter, over the pitch'),
      defined('a = pi / 6', 'half of the angle of the thread, in radians'),
      defined('d_m = d - f * P', 'pitch diameter', 'dm'),
      defined('s = P / (pi * d_m)', 'slope of the thread', 'slope'),
    ],
    tabled: ['f', 'a'],
    expression: 'F * (d_m / 2 * (s + m_t / cos(a)) / (1 - m_t * s / cos(a)) + m_f * D / 2)',
    refuses: {
      'the pitch is too coarse for the diameter': {
        with: { d: 0.006, P: 0.002 },
        names: 'thread.pitch',
      },
      'the face is smaller than the thread': { with: { D: 0.005 }, names: 'faceDiameter' },
    },
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-26",
  }),
  torqueToStretch: card({
    of: screwTorque,
    name: 'torque that stretches the bolt',
    gives: { symbol: 'T_s', meaning: 'torque without any friction', dimension: 'torque' },
    letters: { P, F },
    call: ({ P, F }) => [
      {
        thread: { form: METRIC, diameter: metre(0.01), pitch: P },
        preload: F,
        threadFriction: ratio(0.15),
        faceFriction: ratio(0.15),
      },
    ],
    read: ({ toStretch }) => toStretch,
    expression: 'F * P / (2 * pi)',
    source: 'work of one turn',
  }),
};
