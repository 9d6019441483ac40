import { z } from 'zod';
import { inletDoubt, shareInDoubt } from '../bearings/internal.js';
import { cylinderWall, toleratedBoreWear } from '../cylinders/internal.js';
import {
  diameter,
  machiningStock,
  pistonStroke,
  sizeStep,
  toleratedWear,
} from '../judging/internal.js';
import { dialReading } from '../measuring/internal.js';
import { viscosityAt } from '../oil/index.js';
import {
  clearanceSpace,
  dilutionLimit,
  dripRate,
  evaporationRate,
  leakFlow,
  liquidDensity,
  liquidViscosity,
  oilTemperature,
  singleDrop,
  sumpVolume,
  thinningLimit,
} from '../oil/internal.js';
import {
  accepting,
  asBore,
  asJournal,
  asReadSoFar,
  assemblySchema,
  benchFields,
  boreFields,
  boreFieldsSoFar,
  chosen,
  fields,
  HAPPENINGS,
  housingBore,
  isObject,
  journalFields,
  journalFieldsSoFar,
  journalKind,
  list,
  listOfDifferent,
  name,
  oversize,
  quantity,
  ring,
  shellFields,
  sizeOrSpan,
  span,
  statedLimits,
  stepsOf,
  word,
} from '../reading/index.js';
import { compressionTestSchema } from './compression-schema.js';
import { filmBearing } from './film-schema.js';
import type { LeakAlone, OilSheet } from './oil-sheet.js';
import type { Sheet } from './sheet.js';
import { valveLimits, valves } from './valve-schema.js';

const aroundJournal = {
  housingBore: housingBore.exactOptional(),
  fittedShells: name.exactOptional(),
};
const bearing = fields({
  name,
  journal: fields(journalFields).superRefine(asJournal),
  ...aroundJournal,
});

/** A rod or main that may not have been read enough to judge it. */
export const bearingSoFar = fields({
  name,
  journal: fields(journalFieldsSoFar).superRefine(asReadSoFar).exactOptional(),
  ...aroundJournal,
});

const point = fields({
  temperature: quantity('temperature', oilTemperature),
  viscosity: quantity('kinematicViscosity', liquidViscosity),
});

/** How two points of a line are written: of an SAE 30, from memory. */
const TWO_POINTS =
  'e.g. [{ "temperature": "40 °C", "viscosity": "100 cSt" }, { "temperature": "100 °C", "viscosity": "11 cSt" }]';

const line = z
  .tuple([point, point], {
    error: ({ input }) =>
      `${input === undefined ? 'is missing: give' : 'must be'} a list of two points, each temperature and viscosity, ${TWO_POINTS}`,
  })
  .superRefine(accepting((points) => viscosityAt(points, points[0].temperature)));

const fraction = quantity('volumeFraction', dilutionLimit);

const aroundLeak = {
  running: quantity('flow', leakFlow).exactOptional(),
  evaporation: quantity('rate', evaporationRate).exactOptional(),
  clearanceVolume: quantity('volume', clearanceSpace).exactOptional(),
};
const drip = fields({
  drops: quantity('rate', dripRate),
  dropVolume: quantity('volume', singleDrop).exactOptional(),
  ...aroundLeak,
});
const flow = fields({ flow: quantity('flow', leakFlow), ...aroundLeak });
const share = quantity('ratio', shareInDoubt).exactOptional();
const lost = quantity('ratio', thinningLimit);
const density = quantity('density', liquidDensity);

/** Whether one acts before it is critical. */
const inOrder = ({ act, critical }: { readonly act: number; readonly critical: number }) =>
  act <= critical;

/** Drops per unit of time, or a flow. */
const leak = chosen<NonNullable<OilSheet['leak']>>([drip, flow], (value) =>
  typeof value === 'object' && value !== null && 'flow' in value ? flow : drip,
);

const wall = quantity('length', cylinderWall).exactOptional();
const aroundBore = {
  piston: sizeOrSpan(diameter).exactOptional(),
  rings: list(ring).exactOptional(),
};
const cylinder = fields({
  name,
  bore: fields({ ...boreFields, wall }).superRefine(asBore),
  ...aroundBore,
});

/** A cylinder that may not have been read enough to judge it. */
export const boreSoFar = fields({
  name,
  bore: fields({ ...boreFieldsSoFar, wall })
    .superRefine(asReadSoFar)
    .exactOptional(),
  ...aroundBore,
});

const oil = fields({
  line,
  density: density.exactOptional(),
  sump: quantity('volume', sumpVolume),
  sample: point.exactOptional(),
  fuelViscosity: quantity('kinematicViscosity', liquidViscosity).exactOptional(),
  fuel: fields({ line, density }).exactOptional(),
  bearing: filmBearing.exactOptional(),
  doubt: fields({
    inlet: quantity('temperatureDifference', inletDoubt).exactOptional(),
    length: share,
    roughness: share,
    clearance: share,
    load: share,
  }).exactOptional(),
  leak: leak.exactOptional(),
  thresholds: fields({ act: fraction, critical: fraction, source: name.exactOptional() })
    .refine(inOrder, 'act is above critical; swap the two')
    .exactOptional(),
  thinning: fields({ act: lost, critical: lost, source: name.exactOptional() })
    .refine(inOrder, 'act is above critical; swap the two')
    .exactOptional(),
});

const leakAlone = fields({ leak, sump: quantity('volume', sumpVolume).exactOptional() });

/** Whether it tells of a leak and of nothing that needs the oil's line. */
const isLeakAlone = (value: unknown): boolean =>
  isObject(value) &&
  Object.hasOwn(value, 'leak') &&
  Object.keys(value).every((field) => field === 'leak' || field === 'sump');

/** The oil, or a leak into an oil of which nothing is known. */
const oilOrLeak = chosen<OilSheet | LeakAlone>([oil, leakAlone], (value) =>
  isLeakAlone(value) ? leakAlone : oil,
);

/** The sections of an inspection sheet. Each is read on its own, so a mistake in one hides none in another. */
export const sections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  engine: name,
  units: word('inch', 'metric'),
  ...benchFields,
  happened: listOfDifferent(word(...HAPPENINGS)).optional(),
  crankshaft: fields({
    rodJournals: journalKind.exactOptional(),
    mainJournals: journalKind.exactOptional(),
    endPlay: fields(
      {
        readings: list(
          fields({
            pushed: quantity('length', dialReading),
            pulled: quantity('length', dialReading),
          }),
        ),
        limits: statedLimits().exactOptional(),
      },
      '{ "readings": [{ "pushed": "0 thou", "pulled": "9 thou" }] }',
    ).exactOptional(),
  }).optional(),
  rods: list(bearing).optional(),
  mains: list(bearing).optional(),
  shells: list(fields(shellFields)).optional(),
  bores: fields({
    standard: span(diameter),
    steps: stepsOf(oversize(sizeStep)).exactOptional(),
    stroke: quantity('length', pistonStroke).exactOptional(),
    honingAllowance: quantity('length', machiningStock).exactOptional(),
    sizeAllowance: quantity('length', toleratedWear).exactOptional(),
    leastWall: quantity('length', cylinderWall).exactOptional(),
  }).optional(),
  cylinderLimits: fields({
    outOfRound: statedLimits(toleratedBoreWear).exactOptional(),
    taper: statedLimits(toleratedBoreWear).exactOptional(),
    pistonClearance: statedLimits().exactOptional(),
    ringGap: statedLimits().exactOptional(),
  }).optional(),
  cylinders: list(cylinder).optional(),
  valveLimits: valveLimits.optional(),
  valves: valves.optional(),
  compressionTest: compressionTestSchema.optional(),
  assembly: assemblySchema.optional(),
  oil: oilOrLeak.optional(),
} satisfies { readonly [K in keyof Required<Omit<Sheet, 'notFilledIn'>>]: z.ZodType<Sheet[K]> };
