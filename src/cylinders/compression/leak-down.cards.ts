import { card, defined, diameter } from '../../judging/internal.js';
import { p_a } from './card-letters.js';
import { dischargeCoefficient, heldAir, orificeBore, testAir, workshopAir } from './domains.js';
import { leakDown } from './leak-down.js';

const GAUGES = {
  p_s: {
    field: 'supply',
    meaning: 'gauge pressure supplied',
    domain: testAir,
    usual: [5e5, 6e5],
  },
  p_h: {
    field: 'held',
    meaning: 'gauge pressure held in the cylinder',
    domain: heldAir,
    usual: [3e5, 4.8e5],
  },
} as const;
const ORIFICE = {
  ...GAUGES,
  d: {
    field: 'orifice',
    meaning: 'bore of the orifice',
    domain: orificeBore,
    usual: [0.001, 0.0016],
  },
  p_a,
} as const;
const SONIC = '(2 / 2.4)^3.5';
const THROUGH = [
  defined('p_1 = p_s + p_a', 'absolute pressure supplied', 'supplyPressure'),
  defined('p_2 = p_h + p_a', 'absolute pressure in the cylinder', 'cylinderPressure'),
  defined(
    `x = max(p_2 / p_1, ${SONIC})`,
    'pressure after the orifice over that before it, or the critical ratio if that is more',
  ),
  defined(
    'q_in = p_1 * sqrt(7 * (x^(2 / 1.4) - x^(2.4 / 1.4)))',
    'flow through the orifice for its area, but for a factor that both have',
    'flowIn',
  ),
] as const;
const nozzle = 'isentropic flow of air through a nozzle';
const MORE_THAN_FED = {
  'the cylinder holds more than it is fed': { with: { p_h: 1e6 }, names: 'held' },
};

/** Formulas of what a leakage test shows of a cylinder. */
export const leakDownCards = {
  leakage: card({
    of: leakDown,
    name: 'share of the test pressure that a cylinder loses',
    gives: { symbol: 'x', meaning: 'share lost', dimension: 'ratio' },
    letters: GAUGES,
    read: ({ lost }) => lost,
    expression: '1 - p_h / p_s',
    refuses: MORE_THAN_FED,
    source: 'definition',
  }),
  leakArea: card({
    of: leakDown,
    name: 'area of a leak from a leakage test',
    gives: {
      symbol: 'A',
      meaning: 'area of the leak, as a hole like the orifice',
      dimension: 'area',
    },
    letters: ORIFICE,
    where: [
      ...THROUGH,
      defined(
        `y = max(p_a / p_2, ${SONIC})`,
        'pressure after the leak over that before it, or the critical ratio if that is more',
      ),
      defined(
        'q_out = p_2 * sqrt(7 * (y^(2 / 1.4) - y^(2.4 / 1.4)))',
        'flow through the leak for its area, but for the same factor',
        'flowOut',
      ),
    ],
    read: (test) => test.leakArea?.min,
    expression: 'pi / 4 * d^2 * q_in / q_out',
    refuses: MORE_THAN_FED,
    source: nozzle,
  }),
  leakageFlow: card({
    of: leakDown,
    name: 'air that a leaking cylinder is fed',
    gives: { symbol: 'Q', meaning: 'flow, at the pressure of the room', dimension: 'flow' },
    letters: {
      ...ORIFICE,
      C: {
        field: 'discharge',
        meaning: 'discharge coefficient of the orifice',
        domain: dischargeCoefficient,
        usual: [0.7, 1],
      },
      T: {
        field: 'temperature',
        meaning: 'temperature of the air',
        domain: workshopAir,
        usual: [280, 300],
      },
    },
    where: THROUGH,
    read: (test) => test.airFlow?.min,
    expression: 'C * pi / 4 * d^2 * q_in * sqrt(287.05 * (1 m^2/s^2/K) * T) / p_a',
    refuses: MORE_THAN_FED,
    source: nozzle,
  }),
  pistonForce: card({
    of: leakDown,
    name: 'force of a tester on the piston',
    gives: { symbol: 'F', meaning: 'force, if nothing leaks', dimension: 'force' },
    letters: {
      p_s: GAUGES.p_s,
      D: { field: 'bore', meaning: 'bore of the cylinder', domain: diameter, usual: [0.06, 0.09] },
    },
    call: ({ p_s, D }) => [{ supply: p_s, held: p_s, bore: D }],
    read: (test) => test.pistonForce,
    expression: 'pi / 4 * D^2 * p_s',
    source: 'definition of pressure',
  }),
};
