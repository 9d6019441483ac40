import { z } from 'zod';
import type { ShellMaterial } from '../bearings/index.js';
import {
  guardBearing,
  NO_FILTER,
  oilBrought,
  particleSize,
  shellMetals,
  shellPressure,
  shellTemperature,
  surfaceRoughness,
} from '../bearings/internal.js';
import { diameter, diametralClearance, pistonStroke } from '../judging/internal.js';
import {
  bearingLoad,
  crankSpeed,
  geometricCompression,
  movingMass,
  rodCentres,
} from '../motion/internal.js';
import { oilTemperature } from '../oil/internal.js';
import type { Ratio } from '../quantities/index.js';
import { accepting, chosen, fields, name, quantity, word } from '../reading/index.js';
import type { FilmSheet } from './oil-sheet.js';

const size = quantity('length', diameter);
const roughness = quantity('length', surfaceRoughness);
const pressure = quantity('pressure', shellPressure);
const load = quantity('force', bearingLoad);
const mass = quantity('mass', movingMass);

const plainNumber = (least: number, most: number) =>
  z
    .number({ error: 'must be a number, without quotes' })
    .min(least, `must be from ${least} to ${most}`)
    .max(most, `must be from ${least} to ${most}`)
    .transform((value) => value as Ratio);

const metal = word(...shellMetals);
const ownMetal = fields({
  name,
  meanPressure: pressure,
  peakPressure: pressure.exactOptional(),
  temperature: quantity('temperature', shellTemperature),
  by: name.exactOptional(),
});

/** A metal by its name, or limits of your own. */
const material = chosen<ShellMaterial>([metal, ownMetal], (value) =>
  typeof value === 'object' && value !== null ? ownMetal : metal,
);

const particle = quantity('length', particleSize);
const unfiltered = word(NO_FILTER);

/** A size, or that there is no filter. */
const largestParticle = chosen<NonNullable<FilmSheet['largestParticle']>>(
  [particle, unfiltered],
  (value) => (value === NO_FILTER ? unfiltered : particle),
);

const { least, most } = geometricCompression;

const bigEnd = fields({
  stroke: quantity('length', pistonStroke),
  rodLength: quantity('length', rodCentres),
  bore: size,
  compressionRatio: plainNumber(least, most),
  pistonMass: mass,
  smallEndMass: mass,
  bigEndMass: mass,
});

/** The bearing whose film to judge. */
export const filmBearing = fields({
  name,
  journal: size,
  length: size,
  clearance: quantity('length', diametralClearance),
  speed: quantity('rotationalSpeed', crankSpeed),
  load,
  inlet: quantity('temperature', oilTemperature),
  roughness: fields({ journal: roughness, shell: roughness }),
  filmRatio: plainNumber(0.1, 1000).exactOptional(),
  material: material.exactOptional(),
  duty: word('general', 'closely fitted').exactOptional(),
  largestParticle: largestParticle.exactOptional(),
  supply: fields({
    by: word('pump', 'splash'),
    measured: quantity('flow', oilBrought).exactOptional(),
  }).exactOptional(),
  bigEnd: bigEnd.exactOptional(),
  rule: word('Trumpler').exactOptional(),
  startUpLoad: load.exactOptional(),
}).superRefine(accepting(guardBearing));
