import { z } from 'zod';
import {
  chamberMouth,
  chamberVolume,
  compressionReading,
  crownVolume,
  gasketThickness,
  readingsApart,
  shareOfReading,
} from '../cylinders/internal.js';
import { diameter } from '../judging/internal.js';
import {
  airPressure,
  deckClearance,
  dipperLength,
  dipperRoom,
  geometricCompression,
  heightFromCrank,
  oilDepth,
  pinHeight,
} from '../motion/internal.js';
import { parse, RebuildInputError } from '../quantities/index.js';
import type { DeadCentre, ValveReadings } from '../timing/index.js';
import {
  angleWithin,
  breakerSpeedRatio,
  guardCamTeeth,
  guardValveReadings,
  plugGap,
  pointsGap,
  rimDiameter,
  sparkAdvance,
  sparkLag,
  TEETH,
  turnFromCentre,
} from '../timing/internal.js';
import { chosen, count, fields, list, name, partial, word } from './fields.js';
import { statedLimits, statedLimitsOf } from './limit-fields.js';
import { marked } from './marks.js';
import { accepting } from './pieces.js';
import { quantity, textAs, valueOrSpan } from './quantity-fields.js';
import type { CompressionRuleData, PlaceData } from './setting-up-data.js';
import { writeQuantity } from './write-quantity.js';

const volume = valueOrSpan('volume', chamberVolume).exactOptional();
const thickness = quantity('length', gasketThickness);
const round = fields({ thickness, bore: quantity('length', diameter) });
const notRound = fields({ thickness, area: quantity('area', chamberMouth) });
const none = word('none');
const gasket = chosen<z.infer<typeof round> | z.infer<typeof notRound> | 'none'>(
  [round, notRound, none],
  (value) => {
    if (typeof value !== 'object' || value === null) return none;
    return 'area' in value ? notRound : round;
  },
);

const source = name.exactOptional();
const apart = quantity('pressure', readingsApart);
const reading = quantity('gaugePressure', compressionReading);
const RULES = {
  spread: fields({ kind: z.literal('spread'), most: apart, source }),
  'share of highest': fields({
    kind: z.literal('share of highest'),
    least: quantity('ratio', shareOfReading),
    source,
  }),
  'share of average': fields({
    kind: z.literal('share of average'),
    least: quantity('ratio', shareOfReading),
    source,
  }),
  'near a figure': fields({
    kind: z.literal('near a figure'),
    figure: reading,
    within: apart,
    source,
  }),
  'at least': fields({ kind: z.literal('at least'), least: reading, source }),
} as const;
const KINDS = Object.keys(RULES) as (keyof typeof RULES)[];
const noRule = fields({ kind: word(...KINDS) });
/** Of a rule whose kind is unknown nobody knows the other fields. */
const unknownRule = z.looseObject({ kind: word(...KINDS) });
const asRule = (schema: z.ZodType) => schema as unknown as z.ZodType<CompressionRuleData>;
const rule = chosen<CompressionRuleData>(Object.values(RULES).map(asRule), (value) => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return asRule(noRule);
  const kind = KINDS.find((each) => 'kind' in value && value.kind === each);
  return asRule(kind === undefined ? unknownRule : RULES[kind]);
});

/** The space above the piston, and how compression is tested. */
export const compressionSchema = partial({
  chamber: volume,
  blockChamber: volume,
  crown: valueOrSpan('volume', crownVolume).exactOptional(),
  gasket: gasket.exactOptional(),
  deckClearance: valueOrSpan('length', deckClearance).exactOptional(),
  deckHeight: valueOrSpan('length', heightFromCrank).exactOptional(),
  pinHeight: valueOrSpan('length', pinHeight).exactOptional(),
  ratio: statedLimitsOf('ratio', geometricCompression).exactOptional(),
  airPressure: quantity('pressure', airPressure).exactOptional(),
  rules: list(rule).exactOptional(),
});

/** `10 deg before top`: so far before or after a dead centre. */
const place = marked(textAs('a place of the crank, e.g. "10 deg before top"', placeIn), {
  write: ({ angle, before, after }: PlaceData, units) =>
    `${writeQuantity(angle, 'angle', units)} ${before ? `before ${before}` : `after ${after}`}`,
}).exactOptional();

function placeIn(text: string): PlaceData {
  const [, angle = '', side, centre] =
    /^(.*?)\s*\b(before|after)\s+(top|bottom)(?:\s+dead\s+centre)?$/i.exec(text.trim()) ?? [];
  if (side === undefined || centre === undefined) {
    throw new RebuildInputError({
      parameter: 'text',
      value: text,
      expected: 'how far before or after top or bottom',
      hint: 'Write for example "10 deg before top" or "45 deg after bottom".',
    });
  }
  const dead = centre.toLowerCase() as DeadCentre;
  const at = turnFromCentre('text', parse(angle, 'angle'));
  return side.toLowerCase() === 'before' ? { angle: at, before: dead } : { angle: at, after: dead };
}

const within = quantity('angle', angleWithin).exactOptional();
const teeth = count('teeth', ...TEETH);

/** Where valves and spark come. */
export const timingSchema = partial({
  rimDiameter: quantity('length', rimDiameter).exactOptional(),
  spark: fields({
    advance: quantity('angle', sparkAdvance),
    speedRatio: quantity('ratio', breakerSpeedRatio),
    lag: quantity('angle', sparkLag).exactOptional(),
    retard: quantity('angle', sparkLag).exactOptional(),
    within,
    starting: statedLimitsOf('angle', sparkAdvance).exactOptional(),
  }).exactOptional(),
  valves: fields({
    inletOpens: place,
    inletCloses: place,
    exhaustOpens: place,
    exhaustCloses: place,
    within,
  })
    .superRefine(accepting((places) => guardValveReadings('', places as ValveReadings)))
    .exactOptional(),
  gears: fields({ crankTeeth: teeth, camTeeth: teeth })
    .superRefine(accepting(({ crankTeeth, camTeeth }) => guardCamTeeth(crankTeeth, camTeeth)))
    .exactOptional(),
  pointsGap: statedLimits(pointsGap).exactOptional(),
  plugGap: statedLimits(plugGap).exactOptional(),
  source,
});

/** The dippers of a splash-oiled engine and their troughs. */
export const dipperSchema = fields({
  cylinder: word('upright', 'lying'),
  dipper: valueOrSpan('length', dipperLength),
  centreAboveFloor: valueOrSpan('length', heightFromCrank),
  oilDepth: valueOrSpan('length', oilDepth),
  dip: statedLimits(dipperRoom).exactOptional(),
  clearance: statedLimits(dipperRoom).exactOptional(),
});
