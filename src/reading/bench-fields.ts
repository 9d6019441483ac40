import type { EngineMaterial } from '../measuring/index.js';
import {
  instrumentError,
  partTemperature,
  scaleDivision,
  shownLength,
  statedUncertainty,
  temperaturesApart,
} from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import type { InstrumentOfBench } from './bench.js';
import { chosen, fields, list, word } from './fields.js';
import { marked } from './marks.js';
import { plusMinus, quantity } from './quantity-fields.js';
import { writeQuantity } from './write-quantity.js';

const stated = marked(
  plusMinus(statedUncertainty).transform((within): InstrumentOfBench => ({ within })),
  {
    write: ({ within }: { readonly within?: Length }, units) =>
      within === undefined ? undefined : `±${writeQuantity(within, 'length', units)}`,
  },
);
const budget = fields({
  division: quantity('length', scaleDivision),
  error: plusMinus(instrumentError),
  repeats: list(quantity('length', shownLength), 2).max(1000, 'must have at most 1000 entries'),
});
const instrument = chosen<InstrumentOfBench>([stated, budget], (value) =>
  typeof value === 'object' ? budget : stated,
).exactOptional();

const material = word<EngineMaterial>(
  'steel',
  'grey iron',
  'aluminium alloy',
  'cast piston alloy',
  'forged piston alloy',
  'magnesium alloy',
  'bronze',
  'brass',
  'white metal',
).exactOptional();
const temperature = quantity('temperature', partTemperature);

/** How the sizes of a file were read: the same of a sheet and of a shed. */
export const benchFields = {
  instruments: fields({
    micrometer: instrument,
    boreGauge: instrument,
    wallGauge: instrument,
    feelerGauge: instrument,
    dialIndicator: instrument,
    depthGauge: instrument,
  }).optional(),
  decisionRule: word(
    'simple acceptance',
    'ISO 14253-1:2017',
    'full expanded uncertainty',
  ).optional(),
  warmth: fields({
    parts: temperature,
    instruments: temperature.exactOptional(),
    within: quantity('temperatureDifference', temperaturesApart).exactOptional(),
    journals: material,
    housings: material,
    bores: material,
    pistons: material,
  }).optional(),
};
