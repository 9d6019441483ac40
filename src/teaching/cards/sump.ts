import { type FormulaCard, input } from '../card.js';

const BALANCE = 'mass balance with first-order loss';

const leak = input('q', 'fuel that leaks in a time', 'flow', 1e-9, 1e-7);
const sump = input('V_o', 'clean oil in the sump', 'volume', 5e-4, 5e-3);
const atStart = input('V_1', 'fuel in it at the start', 'volume', 0, 2e-4);
const loss = input('k', 'share of the fuel that evaporates in a time', 'rate', 1e-7, 1e-5);
const limit = input('x', 'fuel fraction that is too much', 'volumeFraction', 0.001, 0.05);

/** Formulas of the oil room: fuel in a sump. */
export const sumpCards = {
  dripFlow: {
    name: 'flow of a drip',
    computedBy: 'dripFlow',
    result: { symbol: 'q', meaning: 'flow', dimension: 'flow' },
    inputs: [
      input('n', 'drops in a time', 'rate', 0.01, 2),
      input('V_d', 'volume of one drop', 'volume', 2e-8, 8e-8),
    ],
    where: [],
    expression: 'n * V_d',
    source: 'definition; 20 drops to the millilitre is common practice',
  },
  fuelInSump: {
    name: 'fuel in a sump after a time',
    computedBy: 'fuelInSump',
    result: { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' },
    inputs: [leak, loss, input('t', 'time', 'time', 3600, 360000)],
    where: [],
    expression: 'q / k * -expm1(-k * t)',
    source: BALANCE,
  },
  fuelInSumpFromStart: {
    name: 'fuel in a sump after a time, with fuel at the start',
    computedBy: 'fuelInSump',
    result: { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' },
    inputs: [leak, loss, atStart, input('t', 'time', 'time', 3600, 360000)],
    where: [],
    expression: 'V_1 * exp(-k * t) + q / k * -expm1(-k * t)',
    source: BALANCE,
  },
  fuelFractionInSump: {
    name: 'fuel fraction in a sump',
    computedBy: 'fuelInSump',
    result: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    inputs: [leak, sump, input('t', 'time', 'time', 3600, 360000)],
    where: ['V_f = q * t'],
    expression: 'V_f / (V_o + V_f)',
    source: 'volume balance with nothing evaporating',
  },
  timeToDilution: {
    name: 'time until oil is diluted',
    computedBy: 'timeToDilution',
    result: { symbol: 't', meaning: 'time', dimension: 'time' },
    inputs: [leak, sump, limit],
    where: ['V_f = V_o * x / (1 - x)'],
    expression: 'V_f / q',
    source: 'volume balance with nothing evaporating',
  },
  timeToDilutionWithLoss: {
    name: 'time until oil is diluted, with evaporation',
    computedBy: 'timeToDilution',
    result: { symbol: 't', meaning: 'time', dimension: 'time' },
    inputs: [
      input('q', 'fuel that leaks in a time', 'flow', 5e-9, 1e-7),
      input('V_o', 'clean oil in the sump', 'volume', 5e-4, 1e-3),
      input('x', 'fuel fraction that is too much', 'volumeFraction', 0.001, 0.02),
      input('k', 'share of the fuel that evaporates in a time', 'rate', 1e-7, 1e-4),
    ],
    where: ['V_f = V_o * x / (1 - x)'],
    expression: '-log1p(-k * V_f / q) / k',
    source: BALANCE,
  },
  timeToDilutionFromStart: {
    name: 'time until oil is diluted, with fuel at the start and evaporation',
    computedBy: 'timeToDilution',
    result: { symbol: 't', meaning: 'time', dimension: 'time' },
    inputs: [
      input('q', 'fuel that leaks in a time', 'flow', 5e-9, 1e-7),
      input('V_o', 'clean oil in the sump', 'volume', 5e-4, 1e-3),
      input('V_1', 'fuel in it at the start', 'volume', 0, 5e-6),
      input('x', 'fuel fraction that is too much', 'volumeFraction', 0.02, 0.03),
      input('k', 'share of the fuel that evaporates in a time', 'rate', 1e-7, 1e-4),
    ],
    where: ['V_f = V_o * x / (1 - x)'],
    expression: '-log1p(-(V_f - V_1) / (q / k - V_1)) / k',
    source: BALANCE,
  },
  fuelLeftWhenDrained: {
    name: 'fuel left when some of the mixture is drained',
    computedBy: 'sumpLog',
    result: { symbol: 'V_f', meaning: 'fuel left in the sump', dimension: 'volume' },
    inputs: [
      sump,
      input('V_1', 'fuel in it before', 'volume', 0, 2e-4),
      input('V_d', 'mixture that is drained', 'volume', 0, 4e-4),
    ],
    where: [],
    expression: 'V_1 * (1 - V_d / (V_o + V_1))',
    source: 'volume balance of a stirred sump',
  },
  fuelFromLevelRise: {
    name: 'fuel from a risen level',
    computedBy: 'fuelFromLevelRise',
    result: { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' },
    inputs: [
      input('h', 'rise of the level', 'length', 0, 0.02),
      input('A', 'free surface of the oil', 'area', 0.005, 0.05),
    ],
    where: [],
    expression: 'h * A',
    source: 'geometry',
  },
} as const satisfies Record<string, FormulaCard>;
