import { card, defined, diameter, within } from '../judging/internal.js';
import { degree, type Length, mm } from '../quantities/index.js';
import { type OpenValve, valveArea } from './area.js';
import {
  openLift,
  rockerArmRatio,
  stemDiameter,
  valveLash,
  valveSeatAngle,
  valveSeatWidth,
} from './domains.js';
import { valveLift } from './lift.js';

const B = {
  field: 'baseCircle',
  meaning: 'diameter of the base circle',
  domain: diameter,
  usual: [0.025, 0.03],
} as const;
const N = {
  field: 'acrossNose',
  meaning: 'from the heel to the tip of the nose',
  domain: diameter,
  usual: [0.032, 0.037],
} as const;
const NOT_ITS_NOSE = {
  'the nose does not belong to the base circle': { with: { N: 0.02 }, names: 'acrossNose' },
};

const D_v = {
  field: 'valveDiameter',
  meaning: 'diameter of the valve at the outer edge of its seat',
  domain: diameter,
  usual: [0.029, 0.032],
} as const;
const s = {
  field: 'seatWidth',
  meaning: 'width of the seat along its slope',
  domain: valveSeatWidth,
  usual: [0.0012, 0.0016],
} as const;
const beta = {
  field: 'seatAngle',
  meaning: 'angle of the seat',
  domain: valveSeatAngle,
  usual: [0.5, 0.8],
  made: [0.5235987755982988, 0.7853981633974483],
} as const;
const D_p = {
  field: 'portDiameter',
  meaning: 'diameter of the port where it is narrowest',
  domain: diameter,
  usual: [0.025, 0.027],
} as const;
const d_s = {
  field: 'stemDiameter',
  meaning: 'diameter of the stem',
  domain: stemDiameter,
  usual: [0.007, 0.009],
} as const;
const lift = {
  field: 'lift',
  meaning: 'lift of the valve off its seat',
  domain: openLift,
} as const;
const seat = { D_v, s, beta } as const;
const hole = { D_p, d_s } as const;
/** How wide a port is beside its valve. */
const PORT = 0.85;
/** A valve of which a formula needs a part; the rest is as large as goes with it. */
const valve = (valveDiameter: Length, given: Partial<OpenValve>) => ({
  valveDiameter,
  seatWidth: within(valveSeatWidth, valveDiameter / 20),
  seatAngle: degree(45),
  portDiameter: within(diameter, valveDiameter * PORT),
  stemDiameter: within(stemDiameter, valveDiameter / 4),
  lift: within(openLift, valveDiameter / 5),
  ...given,
});
/** A port with the valve that it goes with. */
const portOf = (portDiameter: Length, given: Partial<OpenValve>) =>
  valve(within(diameter, portDiameter / PORT), { portDiameter, ...given });
const across = [defined('w = s * cos(beta)', 'width of the seat, square to the stem')];
const port = defined('A_p = pi / 4 * (D_p^2 - d_s^2)', 'area of the port round the stem', 'port');
const heywood = 'Heywood, Internal Combustion Engine Fundamentals, section 6.3.2, from memory';
const geometry = 'geometry';

/** Formulas of how far a valve opens, and how much. */
export const openingCards = {
  camLift: card({
    of: valveLift,
    name: 'lift of a cam under a flat tappet',
    gives: { symbol: 'l_c', meaning: 'lift of the tappet', dimension: 'length' },
    letters: { N, B },
    read: ({ cam }) => cam,
    expression: 'N - B',
    refuses: NOT_ITS_NOSE,
    source: geometry,
  }),
  valveLift: card({
    of: valveLift,
    name: 'lift of a valve',
    gives: { symbol: 'l_v', meaning: 'lift of the valve', dimension: 'length' },
    letters: {
      N,
      B,
      r: {
        field: 'rockerRatio',
        meaning: 'ratio of the rocker',
        domain: rockerArmRatio,
        usual: [1, 1.6],
      },
      l: { field: 'lash', meaning: 'lash', domain: valveLash, usual: [0.0001, 0.0004] },
    },
    read: ({ valve }) => valve,
    expression: '(N - B) * r - l',
    refuses: NOT_ITS_NOSE,
    source: geometry,
  }),
  curtainArea: card({
    of: valveArea,
    name: 'curtain area of a valve',
    gives: { symbol: 'A_c', meaning: 'curtain area', dimension: 'area' },
    letters: { D_v, l: { ...lift, usual: [0.005, 0.009] } },
    call: ({ D_v, l }) => [valve(D_v, { lift: l })],
    read: ({ curtain }) => curtain,
    expression: 'pi * D_v * l',
    source: geometry,
  }),
  portArea: card({
    of: valveArea,
    name: 'area of a port round its stem',
    gives: { symbol: 'A_p', meaning: 'area of the port round the stem', dimension: 'area' },
    letters: hole,
    call: ({ D_p, d_s }) => [portOf(D_p, { stemDiameter: d_s })],
    read: ({ port }) => port,
    expression: 'pi / 4 * (D_p^2 - d_s^2)',
    refuses: {
      'the stem fills the port': { with: { d_s: 0.026 }, names: 'stemDiameter' },
    },
    source: geometry,
  }),
  areaAcrossSeat: card({
    of: valveArea,
    name: 'least area at a small lift',
    gives: { symbol: 'A_1', meaning: 'least area, across the seat', dimension: 'area' },
    letters: { ...seat, l: { ...lift, usual: [0.0001, 0.0013] } },
    call: ({ D_v, s, beta, l }) => [valve(D_v, { seatWidth: s, seatAngle: beta, lift: l })],
    where: across,
    read: ({ least }) => least,
    expression: 'pi * l * cos(beta) * (D_v - 2 * w + l / 2 * sin(2 * beta))',
    example: { D_v: mm(30.5), s: mm(1.4), beta: degree(45), l: mm(0.7) },
    source: heywood,
  }),
  areaToRim: card({
    of: valveArea,
    name: 'least area at a middling lift',
    gives: { symbol: 'A_2', meaning: 'least area, from the seat to the rim', dimension: 'area' },
    letters: { ...seat, l: { ...lift, usual: [0.0036, 0.0045] } },
    call: ({ D_v, s, beta, l }) => [valve(D_v, { seatWidth: s, seatAngle: beta, lift: l })],
    where: across,
    read: ({ least }) => least,
    expression: 'pi * (D_v - w) * sqrt((l - w * tan(beta))^2 + w^2)',
    refuses: {
      'the seat is wider than the valve bears': { with: { s: 0.009 }, names: 'seatWidth' },
    },
    example: { D_v: mm(30.5), s: mm(1.4), beta: degree(45), l: mm(4) },
    source: heywood,
  }),
  areaOfPort: card({
    of: valveArea,
    name: 'least area at a great lift',
    gives: { symbol: 'A_3', meaning: 'least area, in the port', dimension: 'area' },
    letters: hole,
    call: ({ D_p, d_s }) => [portOf(D_p, { stemDiameter: d_s, lift: within(openLift, D_p / 2) })],
    where: [port],
    read: ({ least }) => least,
    expression: 'A_p',
    source: heywood,
  }),
  curtainMeetsPort: card({
    of: valveArea,
    name: 'lift at which the curtain equals the port',
    gives: { symbol: 'l_p', meaning: 'lift at which they are equal', dimension: 'length' },
    letters: { D_v, ...hole },
    call: ({ D_v, D_p, d_s }) => [valve(D_v, { portDiameter: D_p, stemDiameter: d_s })],
    refuses: {
      'the port is wider than the valve': { with: { D_p: 0.04 }, names: 'portDiameter' },
    },
    where: [port],
    read: ({ curtainMeetsPort }) => curtainMeetsPort,
    expression: 'A_p / (pi * D_v)',
    source: geometry,
  }),
};
