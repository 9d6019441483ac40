import { card, everyStep } from '../judging/internal.js';
import { gramPerCubicCm, minute, mL, mm, newtonPerMetre, ratio } from '../quantities/index.js';
import {
  countedDrops,
  countingTime,
  drippingEdge,
  dropShare,
  liquidDensity,
  singleDrop,
  surfaceTension,
} from './domains.js';
import { dripFlow, dropVolume } from './drip.js';

/** Formulas of a drip. */
export const dripCards = {
  dropVolume: card({
    of: dropVolume,
    name: 'volume of a falling drop',
    gives: { symbol: 'V_d', meaning: 'volume of one drop', dimension: 'volume' },
    letters: {
      f: {
        field: 'falls',
        meaning: 'share of the hanging drop that falls',
        domain: dropShare,
        usual: [0.6, 0.7],
      },
      d: {
        field: 'edge',
        meaning: 'diameter of the edge that the drop hangs from',
        domain: drippingEdge,
        usual: [1e-3, 6e-3],
      },
      sigma: {
        field: 'surfaceTension',
        meaning: 'surface tension',
        domain: surfaceTension,
        usual: [0.02, 0.073],
      },
      rho: {
        field: 'density',
        meaning: 'density of the liquid',
        domain: liquidDensity,
        usual: [700, 1000],
      },
    },
    expression: 'f * pi * d * sigma / (rho * 9.80665 m/s^2)',
    example: { f: ratio(0.65), d: mm(3), sigma: newtonPerMetre(0.022), rho: gramPerCubicCm(0.74) },
    source: "Tate's law; the share after Harkins and Brown, from memory",
  }),
  dripFlow: card({
    of: dripFlow,
    name: 'flow of a drip',
    gives: { symbol: 'q', meaning: 'flow of the drip', dimension: 'flow' },
    letters: {
      n: {
        field: 'drops',
        meaning: 'drops counted',
        domain: countedDrops,
        usual: [5, 40],
        made: everyStep(ratio, 5, 40, 1),
      },
      t: {
        field: 'time',
        meaning: 'time counted for',
        domain: countingTime,
        usual: [30, 300],
        made: [minute(1), minute(2), minute(3), minute(5)],
      },
      V_d: {
        field: 'dropVolume',
        meaning: 'volume of one drop',
        domain: singleDrop,
        usual: [2e-8, 8e-8],
      },
    },
    read: ({ max }) => max,
    expression: 'n * V_d / t',
    example: { n: ratio(12), t: minute(1), V_d: mL(0.02) },
    source: "definition; the drop by Tate's law, or 20 to the millilitre",
  }),
};
