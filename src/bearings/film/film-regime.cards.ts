import { card, defined } from '../../judging/internal.js';
import { type Length, micrometre } from '../../quantities/index.js';
import { oilFilm, surfaceRoughness } from '../domains.js';
import { filmRegime } from './film-regime.js';

const rough = { domain: surfaceRoughness, usual: [5e-8, 1e-6] } as const;
const roughness = {
  q_j: {
    field: 'roughness.journal',
    written: 'roughness.journal',
    meaning: 'roughness Rq of the journal',
    ...rough,
  },
  q_s: {
    field: 'roughness.shell',
    written: 'roughness.shell',
    meaning: 'roughness Rq of the shell',
    ...rough,
  },
} as const;
const SOURCE = 'Norton, Machine Design, 4th ed., specific film thickness';

/** Formulas of a film against the roughness of its surfaces. */
export const filmRegimeCards = {
  combinedRoughness: card({
    of: filmRegime,
    name: 'combined roughness',
    gives: { symbol: 'q', meaning: 'combined roughness', dimension: 'length' },
    letters: roughness,
    call: ({ q_j, q_s }) => [micrometre(2), { journal: q_j, shell: q_s }],
    read: ({ roughness }) => roughness,
    expression: 'sqrt(q_j^2 + q_s^2)',
    source: SOURCE,
  }),
  filmRatio: card({
    of: filmRegime,
    name: 'film ratio',
    gives: { symbol: 'R', meaning: 'film ratio', dimension: 'ratio' },
    letters: {
      h: { field: 'film', meaning: 'least film', domain: oilFilm, usual: [1e-7, 1e-5] },
      ...roughness,
    },
    call: ({ h, q_j, q_s }: Readonly<Record<'h' | 'q_j' | 'q_s', Length>>) => [
      h,
      { journal: q_j, shell: q_s },
    ],
    read: ({ finding }) => finding.value,
    where: [defined('q = sqrt(q_j^2 + q_s^2)', 'combined roughness')],
    expression: 'h / q',
    source: SOURCE,
  }),
};
