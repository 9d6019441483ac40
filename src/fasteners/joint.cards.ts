import { card, defined } from '../judging/internal.js';
import { ofGreyIron } from '../measuring/internal.js';
import { newton } from '../quantities/index.js';
import { E, preload as F, pitch, SPRINGS, stiffnesses } from './card-letters.js';
import { bearingFace, boltHole, externalPull, gripLength, snugLoad } from './domains.js';
import { jointUnderLoad } from './joint.js';
import { memberStiffness } from './member-stiffness.js';
import { turnOfNut } from './turn-of-nut.js';

const loaded = {
  F,
  P: {
    field: 'pull',
    meaning: 'pull on the joint, for each bolt',
    domain: externalPull,
    usual: [1000, 5000],
  },
  ...stiffnesses,
} as const;
const SHARE = defined('C = k_b / (k_b + k_m)', 'share of the pull on the bolt', 'share');
const JOINT = "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-24 to 8-30";

/** Formulas of bolts as springs. */
export const jointCards = {
  memberStiffness: card({
    of: memberStiffness,
    name: 'stiffness of clamped parts',
    gives: { symbol: 'k_m', meaning: 'stiffness of the clamped parts', dimension: 'stiffness' },
    letters: {
      d: {
        field: 'hole',
        meaning: 'diameter of the hole',
        domain: boltHole,
        usual: [0.009, 0.011],
      },
      D: {
        field: 'face',
        meaning: 'outer diameter of the bearing face',
        domain: bearingFace,
        usual: [0.014, 0.02],
      },
      L: {
        field: 'layers[0].thickness',
        meaning: 'thickness of the parts, of one material',
        domain: gripLength,
        usual: [0.01, 0.05],
      },
      E: {
        ...E,
        field: 'layers[0].elasticity',
        meaning: 'modulus of elasticity of the parts',
        usual: [1e11, 1.2e11],
        made: ofGreyIron,
      },
    },
    call: ({ d, D, L, E }) => [{ hole: d, face: D, layers: [{ thickness: L, elasticity: E }] }],
    where: [defined('h = L / sqrt(3)', 'depth of the cones of pressure', 'depth')],
    expression: 'pi * E * d / sqrt(3) / (2 * log((h + D - d) * (D + d) / ((h + D + d) * (D - d))))',
    refuses: { 'the face is not wider than the hole': { with: { D: 0.01 }, names: 'face' } },
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-20",
  }),
  shareOnBolt: card({
    of: jointUnderLoad,
    name: 'share of a pull taken by the bolt',
    gives: { symbol: 'C', meaning: 'share of the pull on the bolt', dimension: 'ratio' },
    letters: stiffnesses,
    call: ({ k_b, k_m }) => [
      { preload: newton(20_000), pull: newton(5000), boltStiffness: k_b, memberStiffness: k_m },
    ],
    read: ({ share }) => share,
    expression: 'k_b / (k_b + k_m)',
    source: JOINT,
  }),
  loadOnBolt: card({
    of: jointUnderLoad,
    name: 'load on a bolt in a closed joint',
    gives: { symbol: 'F_b', meaning: 'load on the bolt', dimension: 'force' },
    letters: loaded,
    read: ({ boltLoad }) => boltLoad.max,
    where: [SHARE],
    expression: 'F + C * P',
    source: JOINT,
  }),
  clampLeft: card({
    of: jointUnderLoad,
    name: 'clamping force left under a pull',
    gives: { symbol: 'F_m', meaning: 'clamping force left', dimension: 'force' },
    letters: loaded,
    read: ({ clampLeft }) => clampLeft.min,
    where: [SHARE],
    expression: 'F - (1 - C) * P',
    source: JOINT,
  }),
  opensAt: card({
    of: jointUnderLoad,
    name: 'pull that opens a joint',
    gives: {
      symbol: 'P_0',
      meaning: 'pull that opens the joint, for each bolt',
      dimension: 'force',
    },
    letters: { F, ...stiffnesses },
    call: ({ F, k_b, k_m }) => [
      { preload: F, pull: newton(5000), boltStiffness: k_b, memberStiffness: k_m },
    ],
    read: ({ opensAt }) => opensAt.min,
    where: [SHARE],
    expression: 'F / (1 - C)',
    source: JOINT,
  }),
  turnOfNut: card({
    of: turnOfNut,
    name: 'turn of a nut from snug',
    gives: { symbol: 'a', meaning: 'turn of the nut from snug', dimension: 'angle' },
    letters: {
      F,
      F_0: { field: 'snug', meaning: 'preload at snug', domain: snugLoad, usual: [1000, 4000] },
      P: pitch,
      ...stiffnesses,
    },
    expression: '2 * pi * (F - F_0) / P * (1 / k_b + 1 / k_m) * 1 rad',
    refuses: { 'snug is above the preload': { with: { F_0: 40_000 }, names: 'snug' } },
    source: SPRINGS,
  }),
};
