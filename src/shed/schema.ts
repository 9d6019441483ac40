import { z } from 'zod';
import { shimThickness, thrustFaceWidth } from '../crankshaft/internal.js';
import { cylinderWall } from '../cylinders/internal.js';
import { diameter, outOfTrue, sizeStep } from '../judging/internal.js';
import {
  asReadSoFar,
  benchFields,
  boreFieldsSoFar,
  chosen,
  count,
  fields,
  HAPPENINGS,
  housingBore,
  journalFieldsSoFar,
  list,
  listOfDifferent,
  marked,
  name,
  oversize,
  partial,
  quantity,
  ring,
  shellFields,
  sizeOrSpan,
  word,
} from '../reading/index.js';
import { valveMargin } from '../valves/internal.js';
import { engineSchema } from './engine-schema.js';
import { type Fault, faultsOf, SURFACE_FAULTS } from './faults.js';
import { type PartTest, TESTED_FOR } from './history.js';
import { price } from './price-schema.js';
import { coreRecord, partRecord, remarks } from './record-schema.js';
import type { Section } from './sections.js';
import type { Shed } from './shed.js';
import { toMakeSchema } from './to-make-schema.js';
import { WORKS } from './works.js';

const width = quantity('length', thrustFaceWidth);
const thickness = quantity('length', shimThickness);
const size = marked(sizeOrSpan(diameter), { inCsv: true });

const faults = (of: readonly Fault[]) => listOfDifferent(word(...of)).exactOptional();
const happened = listOfDifferent(word(...HAPPENINGS)).exactOptional();
/** Weights by section or kind of part. */
const weights = z.record(
  name,
  z
    .number({ error: 'must be a number without quotes' })
    .positive('must be above 0')
    .max(1000, 'must be at most 1000'),
);
const partFields = (section: Section) => ({
  name,
  from: name.exactOptional(),
  ...partRecord,
  faults: faults(faultsOf(section)),
  happened,
});
/** One test, or several. */
const testFor = (...what: readonly PartTest['for'][]) => {
  const test = fields({
    for: word(...what),
    how: name,
    by: name.exactOptional(),
    found: word('none', 'some'),
  });
  const one = marked(
    test.transform((each): readonly PartTest[] => [each]),
    {
      write: ([each]: readonly PartTest[]) => each,
    },
  );
  const several: z.ZodType<readonly PartTest[]> = list(test);
  const tested = chosen<readonly PartTest[]>([one, several], (value) =>
    Array.isArray(value) ? several : one,
  );
  return { tested: tested.exactOptional() };
};
const castingTest = testFor('cracks');
const forgingTest = testFor(...TESTED_FOR);
const counted = { count: count('pieces', 1).exactOptional() };
const housing = fields({ name, housingBore: housingBore.exactOptional() });
const onSurface = faults(SURFACE_FAULTS);
const journalPlace = fields({ name, ...journalFieldsSoFar, faults: onSurface }).superRefine(
  asReadSoFar,
);
const borePlace = fields({
  name,
  ...boreFieldsSoFar,
  wall: quantity('length', cylinderWall).exactOptional(),
  faults: onSurface,
}).superRefine(asReadSoFar);

const pistonPlace = fields({ name, diameter: size.exactOptional() });

/** The places of parts, by the lists they stand in. */
export const placeSchemas = {
  bores: borePlace,
  mainHousings: housing,
  rodJournals: journalPlace,
  mainJournals: journalPlace,
  rods: housing,
  pistons: pistonPlace,
  rings: ring,
};

/** The fields of each section of parts. The number of places is compared with the engine later. */
export const parts = {
  blocks: {
    ...partFields('blocks'),
    ...castingTest,
    bores: list(borePlace, 0).exactOptional(),
    mainHousings: list(housing, 0).exactOptional(),
    thrustWidth: width.exactOptional(),
  },
  crankshafts: {
    ...partFields('crankshafts'),
    ...forgingTest,
    rodJournals: list(journalPlace, 0).exactOptional(),
    mainJournals: list(journalPlace, 0).exactOptional(),
    thrustWidth: width.exactOptional(),
    runoutOnceStraight: quantity('length', outOfTrue).exactOptional(),
  },
  rods: { ...partFields('rods'), ...forgingTest, rods: list(housing, 0).exactOptional() },
  pistonSets: {
    ...partFields('pistonSets'),
    ...counted,
    oversize: oversize(sizeStep).exactOptional(),
    pistons: list(pistonPlace, 0).exactOptional(),
  },
  ringSets: {
    ...partFields('ringSets'),
    ...counted,
    oversize: oversize(sizeStep).exactOptional(),
    rings: list(ring, 0).exactOptional(),
  },
  shells: {
    ...partFields('shells'),
    fits: shellFields.fits.exactOptional(),
    undersize: shellFields.undersize.exactOptional(),
    wall: shellFields.wall.exactOptional(),
    pairs: shellFields.pairs.exactOptional(),
  },
  thrustWashers: {
    ...partFields('thrustWashers'),
    ...counted,
    thickness: marked(thickness, { inCsv: true }).exactOptional(),
  },
  heads: {
    ...partFields('heads'),
    ...castingTest,
    flatness: quantity('length', outOfTrue).exactOptional(),
    guideBore: size.exactOptional(),
  },
  valveSets: {
    ...partFields('valveSets'),
    ...counted,
    stem: size.exactOptional(),
    margin: quantity('length', valveMargin).exactOptional(),
  },
  otherParts: { ...partFields('otherParts'), ...counted, kind: name },
};

const section = <S extends z.ZodRawShape>(shape: S) => list(partial(shape), 0);
/** The same with a price, for parts to buy. */
const offers = <S extends z.ZodRawShape>(shape: S) =>
  list(partial({ ...shape, price }), 0).exactOptional();

/** The sections of a shed file. Each is read on its own, so a mistake in one hides none in another. */
export const shedSections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  shed: name,
  notes: remarks.optional(),
  units: word('inch', 'metric'),
  ...benchFields,
  engine: engineSchema,
  blocks: section(parts.blocks).optional(),
  crankshafts: section(parts.crankshafts).optional(),
  rods: section(parts.rods).optional(),
  pistonSets: section(parts.pistonSets).optional(),
  ringSets: section(parts.ringSets).optional(),
  shells: section(parts.shells).optional(),
  thrustWashers: section(parts.thrustWashers).optional(),
  heads: section(parts.heads).optional(),
  valveSets: section(parts.valveSets).optional(),
  otherParts: section(parts.otherParts).optional(),
  cores: section({ name, from: name.exactOptional(), ...coreRecord, happened }).optional(),
  machining: list(partial({ work: word(...WORKS), shop: name, price }), 0).optional(),
  toBuy: partial({
    blocks: offers(parts.blocks),
    crankshafts: offers(parts.crankshafts),
    rods: offers(parts.rods),
    pistonSets: offers(parts.pistonSets),
    ringSets: offers(parts.ringSets),
    shells: offers(parts.shells),
    thrustWashers: offers(parts.thrustWashers),
    heads: offers(parts.heads),
    valveSets: offers(parts.valveSets),
    otherParts: offers(parts.otherParts),
  }).optional(),
  toMake: toMakeSchema.optional(),
  hardToGet: weights.optional(),
} satisfies {
  readonly [K in Exclude<keyof Required<Shed>, 'asWritten'>]: z.ZodType<Shed[K]>;
};
