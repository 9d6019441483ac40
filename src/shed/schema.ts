import { z } from 'zod';
import { shimThickness, thrustFaceWidth } from '../crankshaft/internal.js';
import { cylinderWall, toleratedBoreWear } from '../cylinders/internal.js';
import {
  diameter,
  machiningStock,
  outOfTrue,
  pistonStroke,
  sizeStep,
  toleratedWear,
} from '../judging/internal.js';
import {
  asBore,
  asJournal,
  benchFields,
  boreFields,
  CYLINDERS,
  chosen,
  count,
  fields,
  HAPPENINGS,
  housingBore,
  journalFields,
  journalKind,
  list,
  listOfDifferent,
  MAINS,
  marked,
  name,
  oversize,
  parsePrice,
  partial,
  quantity,
  ring,
  shellFields,
  sizeOrSpan,
  span,
  statedLimits,
  stepsOf,
  textAs,
  word,
} from '../reading/index.js';
import { valveMargin } from './domains.js';
import { type Fault, faultsOf, SURFACE_FAULTS } from './faults.js';
import { type PartTest, TESTED_FOR } from './history.js';
import type { Section } from './sections.js';
import type { Shed } from './shed.js';
import { WORKS } from './works.js';

const price = marked(textAs('amount and currency in quotes, e.g. "14.50 EUR"', parsePrice), {
  json: () => ({
    description: 'price: an amount and the three letters of its currency',
    examples: ['14.50 EUR', 'EUR 14.50'],
  }),
});

const width = quantity('length', thrustFaceWidth);
const thickness = quantity('length', shimThickness);
const size = marked(sizeOrSpan(diameter), { inCsv: true });

const faults = (of: readonly Fault[]) => listOfDifferent(word(...of)).exactOptional();
/** One name, or several. */
const group = name.transform((one): readonly string[] => [one]);
const groups = listOfDifferent(name, 1);
const interchange = chosen<readonly string[]>([group, groups], (value) =>
  Array.isArray(value) ? groups : group,
);

const partFields = (section: Section) => ({
  name,
  from: name.exactOptional(),
  interchange: interchange.exactOptional(),
  faults: faults(faultsOf(section)),
  happened: listOfDifferent(word(...HAPPENINGS)).exactOptional(),
});
/** One test, or several. */
const testFor = (...what: readonly PartTest['for'][]) => {
  const test = fields({
    for: word(...what),
    how: name,
    by: name.exactOptional(),
    found: word('none', 'some'),
  });
  const one = test.transform((each): readonly PartTest[] => [each]);
  const several: z.ZodType<readonly PartTest[]> = list(test);
  const tested = chosen<readonly PartTest[]>([one, several], (value) =>
    Array.isArray(value) ? several : one,
  );
  return { tested: tested.exactOptional() };
};
const castingTest = testFor('cracks');
const forgingTest = testFor(...TESTED_FOR);
const counted = { count: count('pieces', 1).exactOptional() };
const housing = fields({ name, housingBore });
const locking = word('pins', 'tabs', 'wire', 'locknuts', 'torque alone').exactOptional();
const onSurface = faults(SURFACE_FAULTS);
const journalPlace = fields({ name, ...journalFields, faults: onSurface }).superRefine(asJournal);
const borePlace = fields({
  name,
  ...boreFields,
  wall: quantity('length', cylinderWall).exactOptional(),
  faults: onSurface,
}).superRefine(asBore);

/** The fields of each section of parts. The number of places is compared with the engine later. */
const parts = {
  blocks: {
    ...partFields('blocks'),
    ...castingTest,
    bores: list(borePlace, 0),
    mainHousings: list(housing, 0).exactOptional(),
    thrustWidth: width.exactOptional(),
  },
  crankshafts: {
    ...partFields('crankshafts'),
    ...forgingTest,
    rodJournals: list(journalPlace, 0),
    mainJournals: list(journalPlace, 0).exactOptional(),
    thrustWidth: width.exactOptional(),
    runoutOnceStraight: quantity('length', outOfTrue).exactOptional(),
  },
  rods: { ...partFields('rods'), ...forgingTest, rods: list(housing, 0) },
  pistonSets: {
    ...partFields('pistonSets'),
    ...counted,
    oversize: oversize(sizeStep),
    pistons: list(fields({ name, diameter: size }), 0),
  },
  ringSets: {
    ...partFields('ringSets'),
    ...counted,
    oversize: oversize(sizeStep),
    rings: list(ring, 0).exactOptional(),
  },
  shells: { ...partFields('shells'), ...shellFields },
  thrustWashers: {
    ...partFields('thrustWashers'),
    ...counted,
    thickness: marked(thickness, { inCsv: true }),
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
};

const section = <S extends z.ZodRawShape>(shape: S) => list(partial(shape), 0);
/** The same with a price, for parts to buy. */
const offers = <S extends z.ZodRawShape>(shape: S) =>
  list(partial({ ...shape, price }), 0).exactOptional();

/** The sections of a shed file. Each is read on its own, so a mistake in one hides none in another. */
export const shedSections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  shed: name,
  units: word('inch', 'metric'),
  ...benchFields,
  engine: partial({
    name,
    cylinders: count('cylinders', ...CYLINDERS),
    rodsPerJournal: z.literal([1, 2], { error: 'must be 1 or 2, without quotes' }).exactOptional(),
    mains: count('mains', ...MAINS),
    rodJournals: journalKind,
    mainJournals: journalKind.exactOptional(),
    rodHousing: statedLimits(diameter).exactOptional(),
    mainHousing: statedLimits(diameter).exactOptional(),
    bores: partial({
      standard: span(diameter),
      steps: stepsOf(oversize(sizeStep)).exactOptional(),
      stroke: quantity('length', pistonStroke).exactOptional(),
      honingAllowance: quantity('length', machiningStock).exactOptional(),
      leastWall: quantity('length', cylinderWall).exactOptional(),
      sizeAllowance: quantity('length', toleratedWear).exactOptional(),
      wear: word('one side', 'all round').exactOptional(),
      shape: statedLimits(toleratedBoreWear).exactOptional(),
      pistonClearance: statedLimits().exactOptional(),
      ringGap: statedLimits().exactOptional(),
    }),
    endPlay: statedLimits().exactOptional(),
    headFlatness: statedLimits().exactOptional(),
    guideClearance: statedLimits().exactOptional(),
    valveMargin: statedLimits(valveMargin).exactOptional(),
    alsoNeeds: listOfDifferent(word('head', 'valve set')).exactOptional(),
    lubrication: word('splash', 'pump').exactOptional(),
    ignition: word('magneto', 'coil').exactOptional(),
    cooling: word('air', 'hopper', 'water').exactOptional(),
    locking: partial({
      mainCaps: locking,
      rodCaps: locking,
      head: locking,
      flywheel: locking,
    }).exactOptional(),
  }),
  blocks: section(parts.blocks).optional(),
  crankshafts: section(parts.crankshafts).optional(),
  rods: section(parts.rods).optional(),
  pistonSets: section(parts.pistonSets).optional(),
  ringSets: section(parts.ringSets).optional(),
  shells: section(parts.shells).optional(),
  thrustWashers: section(parts.thrustWashers).optional(),
  heads: section(parts.heads).optional(),
  valveSets: section(parts.valveSets).optional(),
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
  }).optional(),
} satisfies { readonly [K in keyof Required<Shed>]: z.ZodType<Shed[K]> };
