import { card, defined, diameter, everyStep, pistonStroke } from '../../judging/internal.js';
import { deckClearance, geometricCompression } from '../../motion/internal.js';
import { type Length, mL, mm, ratio, squareMm, type Volume } from '../../quantities/index.js';
import { clearanceVolumeByBurette, crownVolumeByBurette } from './burette.js';
import { compressionRatio } from './compression-ratio.js';
import {
  chamberMouth,
  chamberVolume,
  crownVolume,
  depthInBore,
  gasketThickness,
  pouringError,
} from './domains.js';
import { sweptVolume } from './swept-volume.js';
import { gasketForRatio, skimForRatio } from './wanted-ratio.js';

const SIZE = {
  D: { field: 'bore', meaning: 'bore diameter', domain: diameter, usual: [0.05, 0.1] },
  s: { field: 'stroke', meaning: 'stroke', domain: pistonStroke, usual: [0.05, 0.1] },
} as const;
const CHAMBER = {
  ...SIZE,
  V_h: {
    field: 'chamber',
    meaning: 'chamber in the head',
    domain: chamberVolume,
    usual: [3e-5, 1e-4],
  },
  V_b: {
    field: 'blockChamber',
    meaning: 'part of the chamber in the block',
    domain: chamberVolume,
    usual: [1e-5, 3e-5],
  },
  d: {
    field: 'deckClearance',
    meaning: 'piston below the deck',
    domain: deckClearance,
    usual: [1e-4, 1e-3],
  },
  V_c: {
    field: 'crown',
    meaning: 'volume of the crown, below zero for a dish',
    domain: crownVolume,
    usual: [-1e-5, 1e-5],
  },
} as const;
const GASKET = {
  D_g: {
    field: 'gasket.bore',
    written: 'gasketBore',
    meaning: 'bore of the gasket',
    domain: diameter,
    usual: [0.06, 0.11],
  },
  t: {
    field: 'gasket.thickness',
    meaning: 'thickness of the gasket once tightened',
    domain: gasketThickness,
    usual: [8e-4, 2e-3],
  },
} as const;
const epsilon = {
  field: 'wanted',
  meaning: 'compression ratio that is wanted',
  domain: geometricCompression,
  made: everyStep(ratio, 5, 12, 0.5),
} as const;
const SWEPT = defined('V_s = pi / 4 * D^2 * s', 'swept volume', 'sweptVolume');
const CLEARANCE = [
  defined('V_g = pi / 4 * D_g^2 * t', 'volume inside the gasket', 'gasketVolume'),
  defined('V_0 = V_h + V_b + V_g + pi / 4 * D^2 * d - V_c', 'clearance volume', 'clearanceVolume'),
];
const PLAIN = (v: { D: Length; s: Length; V_h: Volume; V_b: Volume; d: Length; V_c: Volume }) => ({
  bore: v.D,
  stroke: v.s,
  chamber: v.V_h,
  blockChamber: v.V_b,
  deckClearance: v.d,
  crown: v.V_c,
});
const geometry = 'geometry';
const POURED = {
  V_p: {
    field: 'poured[0]',
    written: 'leastPoured',
    meaning: 'volume poured in',
    domain: chamberVolume,
    usual: [5e-5, 7e-5],
  },
} as const;

/** Formulas of the spaces above a piston. */
export const compressionVolumeCards = {
  sweptVolume: card({
    of: sweptVolume,
    name: 'swept volume',
    gives: { symbol: 'V_s', meaning: 'swept volume', dimension: 'volume' },
    letters: SIZE,
    expression: 'pi / 4 * D^2 * s',
    source: geometry,
  }),
  pouredVolume: card({
    of: clearanceVolumeByBurette,
    name: 'least volume of a poured space',
    gives: { symbol: 'V_min', meaning: 'least volume', dimension: 'volume' },
    letters: {
      ...POURED,
      V_o: {
        field: 'besides',
        meaning: 'volume poured outside the space',
        domain: pouringError,
        usual: [0, 1e-6],
      },
      e: {
        field: 'within',
        meaning: 'error of the burette',
        domain: pouringError,
        usual: [0, 5e-7],
      },
    },
    call: ({ V_p, V_o, e }) => [{ poured: [V_p], besides: V_o, within: e }],
    read: ({ volume }) => volume.min,
    expression: 'V_p - V_o - e',
    refuses: {
      'nothing is left of a pouring': { with: { V_p: 1e-8, V_o: 1e-6 }, names: 'poured[0]' },
    },
    source: 'definition',
  }),
  crownVolume: card({
    of: crownVolumeByBurette,
    name: 'volume of a crown',
    gives: { symbol: 'V_c', meaning: 'volume of the crown, at most', dimension: 'volume' },
    letters: {
      D: { ...SIZE.D, usual: [0.08, 0.09] },
      h: {
        field: 'depth',
        meaning: 'edge of the crown below the deck',
        domain: depthInBore,
        usual: [0.012, 0.014],
      },
      ...POURED,
    },
    call: ({ D, h, V_p }) => [{ bore: D, depth: h, poured: [V_p] }],
    read: (crown) => crown.max,
    expression: 'pi / 4 * D^2 * h - V_p',
    refuses: { 'nothing is left of a pouring': { with: { V_p: 0 }, names: 'poured[0]' } },
    source: geometry,
  }),
  compressionRatio: card({
    of: compressionRatio,
    name: 'compression ratio',
    gives: { symbol: 'epsilon', meaning: 'compression ratio', dimension: 'ratio' },
    letters: { ...CHAMBER, ...GASKET },
    where: [SWEPT, ...CLEARANCE],
    call: (v) => [{ ...PLAIN(v), gasket: { bore: v.D_g, thickness: v.t } }],
    read: ({ ratio }) => ratio.min,
    expression: '1 + V_s / V_0',
    refuses: {
      'no room is left above the piston': {
        with: { V_h: 0, V_b: 0, d: -0.01, V_c: 1e-5 },
        names: 'chamber',
      },
    },
    example: {
      D: mm(75),
      s: mm(75),
      V_h: mL(65),
      V_b: mL(20),
      d: mm(0.55),
      V_c: mL(5),
      D_g: mm(85),
      t: mm(1.4),
    },
    source: 'definition',
  }),
  skimForRatio: card({
    of: skimForRatio,
    name: 'skim for a compression ratio',
    gives: { symbol: 'x', meaning: 'thickness to skim off', dimension: 'length' },
    letters: {
      ...CHAMBER,
      D: { ...SIZE.D, usual: [0.05, 0.06] },
      s: { ...SIZE.s, usual: [0.05, 0.06] },
      ...GASKET,
      epsilon: { ...epsilon, usual: [9, 12] },
      A: {
        field: 'skimArea',
        meaning: 'area of the chamber where it is cut',
        domain: chamberMouth,
        usual: [0.005, 0.01],
      },
    },
    where: [SWEPT, ...CLEARANCE],
    call: (v) => [
      {
        ...PLAIN(v),
        gasket: { bore: v.D_g, thickness: v.t },
        wanted: v.epsilon,
        skimArea: v.A,
      },
    ],
    read: (work) => (work.outcome === 'skim' ? work.by.min : undefined),
    expression: '(V_0 - V_s / (epsilon - 1)) / A',
    refuses: {
      'no room is left above the piston': {
        with: { V_h: 0, V_b: 0, d: -0.01, V_c: 1e-5 },
        names: 'chamber',
      },
    },
    example: {
      D: mm(55),
      s: mm(55),
      V_h: mL(15),
      V_b: mL(5),
      d: mm(0.5),
      V_c: mL(0),
      D_g: mm(58),
      t: mm(1.4),
      epsilon: ratio(6.5),
      A: squareMm(4000),
    },
    source: geometry,
  }),
  gasketForRatio: card({
    of: gasketForRatio,
    name: 'gasket for a compression ratio',
    gives: { symbol: 't', meaning: 'thickness of the gasket once tightened', dimension: 'length' },
    letters: {
      D: { ...SIZE.D, usual: [0.08, 0.1] },
      s: { ...SIZE.s, usual: [0.08, 0.1] },
      V_h: { ...CHAMBER.V_h, written: 'spaces', usual: [3e-5, 4e-5] },
      A: {
        field: 'gasket.area',
        written: 'opening',
        meaning: 'opening of the gasket',
        domain: chamberMouth,
        usual: [0.009, 0.01],
      },
      epsilon: { ...epsilon, usual: [5, 7] },
    },
    where: [SWEPT],
    call: (v) => [
      {
        bore: v.D,
        stroke: v.s,
        chamber: v.V_h,
        deckClearance: 0 as Length,
        gasket: { area: v.A },
        wanted: v.epsilon,
      },
    ],
    read: (found) => (found.outcome === 'gasket' ? found.thickness.min : undefined),
    expression: '(V_s / (epsilon - 1) - V_h) / A',
    example: { D: mm(90), s: mm(90), V_h: mL(101), A: squareMm(9500), epsilon: ratio(6) },
    source: geometry,
  }),
};
