import { card } from '../judging/internal.js';
import type { Pressure, Ratio } from '../quantities/index.js';
import { brinellNumber } from './domains.js';
import { type UnknownBolt, unknownBolt } from './unknown-bolt.js';

const hardness = {
  H: {
    field: 'hardness.number',
    written: 'hardness',
    meaning: 'Brinell hardness',
    domain: brinellNumber,
    usual: [100, 380],
  },
} as const;
const hard = ({ H }: { readonly H: Ratio }) =>
  [{ hardness: { scale: 'HB', number: H } }] as Parameters<typeof unknownBolt>;
const end = (of: 'proof' | 'tensile', at: 'min' | 'max') => (bolt: UnknownBolt) =>
  bolt.outcome === 'from hardness' ? bolt[of][at] : undefined;
const strength = (symbol: string, meaning: string) =>
  ({ symbol, meaning, dimension: 'pressure' }) as const;
const POINT = 'common practice: 500 psi for a point of Brinell, within 10 %';

const SHARE =
  'common practice: 500 psi of tensile strength for a point of Brinell, within 10 %; of it the least and the greatest share that a grade of SAE J429 or ISO 898-1 has as proof stress, 0.545 and 0.8';

/** Formulas of strength from hardness. */
export const unknownBoltCards = {
  leastTensileStrength: card({
    of: unknownBolt,
    name: 'least tensile strength from hardness',
    gives: strength('S_u', 'least tensile strength'),
    letters: hardness,
    call: hard,
    read: end('tensile', 'min'),
    expression: '3.1 MPa * H',
    source: POINT,
  }),
  mostTensileStrength: card({
    of: unknownBolt,
    name: 'most tensile strength from hardness',
    gives: strength('S_u', 'most tensile strength'),
    letters: hardness,
    call: hard,
    read: end('tensile', 'max'),
    expression: '3.8 MPa * H',
    source: POINT,
  }),
  leastProofStress: card({
    of: unknownBolt,
    name: 'least proof stress from hardness',
    gives: strength('S_p', 'least proof stress'),
    letters: hardness,
    call: hard,
    read: end('proof', 'min'),
    expression: '0.545 * 3.1 MPa * H',
    source: SHARE,
  }),
  mostProofStress: card({
    of: unknownBolt,
    name: 'most proof stress from hardness',
    gives: strength('S_p', 'most proof stress'),
    letters: hardness,
    call: hard,
    read: end('proof', 'max') as (bolt: UnknownBolt) => Pressure | undefined,
    expression: '0.8 * 3.8 MPa * H',
    source: SHARE,
  }),
};
