import { card, diameter } from '../judging/internal.js';
import { elasticModulus, ofSteel } from '../measuring/internal.js';
import { metre, mm } from '../quantities/index.js';
import { crushHeight, shellWall } from './domains.js';
import { freeSpread, housingRoundness, shellNip } from './seating.js';

const D_h = {
  field: 'housingBore',
  meaning: 'housing bore, cap torqued, no shells',
  domain: diameter,
  usual: [0.04, 0.06],
} as const;
const h = {
  field: 'crush',
  meaning: 'how far one end stands proud, the other flush',
  domain: crushHeight,
  usual: [0.00002, 0.00008],
} as const;
const E = {
  field: 'elasticity',
  meaning: 'modulus of elasticity of the back',
  domain: elasticModulus,
  usual: [2e11, 2.1e11],
  made: ofSteel,
} as const;
const t = {
  field: 'back',
  meaning: 'thickness of the steel back',
  domain: shellWall,
  usual: [0.001, 0.002],
} as const;
const THICK = { 'the back is not thin beside the housing': { with: { t: 0.01 }, names: 'back' } };
const back = metre(0.0002);
const reading = { domain: diameter, usual: [0.05, 0.0501] } as const;
const source = 'thin ring under outside pressure';

/** Formulas of how a shell sits in its housing. */
export const seatingCards = {
  hoopStrain: card({
    of: shellNip,
    name: 'hoop strain of a crushed shell',
    gives: { symbol: 'epsilon_t', meaning: 'strain along the back', dimension: 'ratio' },
    letters: { D_h, h },
    call: ({ D_h, h }) => [{ housingBore: D_h, crush: h, back }],
    read: ({ hoopStrain }) => hoopStrain,
    expression: '2 * h / (pi * D_h)',
    source,
  }),
  hoopStress: card({
    of: shellNip,
    name: 'hoop stress of a crushed shell',
    gives: { symbol: 'sigma_t', meaning: 'stress along the back', dimension: 'pressure' },
    letters: { D_h, h, E },
    call: ({ D_h, h, E }) => [{ housingBore: D_h, crush: h, elasticity: E, back }],
    read: ({ hoopStress }) => hoopStress,
    expression: '2 * E * h / (pi * D_h)',
    source,
  }),
  seatingPressure: card({
    of: shellNip,
    name: 'seating pressure of a crushed shell',
    gives: { symbol: 'p', meaning: 'pressure of the back on the housing', dimension: 'pressure' },
    letters: { D_h, h, E, t },
    read: ({ seatingPressure }) => seatingPressure,
    expression: '4 * E * h * t / (pi * D_h^2)',
    refuses: THICK,
    source,
  }),
  freeSpread: card({
    of: freeSpread,
    name: 'free spread of a half shell',
    gives: { symbol: 's', meaning: 'free spread', dimension: 'length' },
    letters: {
      w: {
        field: 'acrossEnds',
        meaning: 'width across the ends, lying free',
        domain: diameter,
        usual: [0.0502, 0.0508],
      },
      D_h: { ...D_h, usual: [0.05, 0.0501] },
    },
    expression: 'w - D_h',
    source: 'definition of the trade',
  }),
  housingRoundness: card({
    of: housingRoundness,
    name: 'out-of-round of a housing',
    gives: { symbol: 'o', meaning: 'out-of-round', dimension: 'length' },
    letters: {
      D_1: { field: 'crown', meaning: 'bore at right angles to the joint', ...reading },
      D_2: { field: 'left', meaning: 'bore at 45° to the left', ...reading },
      D_3: { field: 'right', meaning: 'bore at 45° to the right', ...reading },
    },
    read: ({ outOfRound }) => outOfRound,
    expression: 'max(D_1, D_2, D_3) - min(D_1, D_2, D_3)',
    refuses: { 'the readings are not of one bore': { with: { D_2: 0.06 }, names: 'left' } },
    example: { D_1: mm(50.02), D_2: mm(50), D_3: mm(50.01) },
    source: 'definition of the trade',
  }),
};
