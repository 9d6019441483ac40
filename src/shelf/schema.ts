import { z } from 'zod';
import { guardShellWall } from '../bearings/clearance.js';
import {
  guardAngle,
  guardClearance,
  guardDiameter,
  guardFlaw,
  guardStation,
  guardStock,
  guardTolerance,
  guardUndersize,
} from '../judging/guards.js';
import { boreShape } from '../measuring/bore.js';
import { journalShape } from '../measuring/journal.js';
import {
  guardDrop,
  guardFlow,
  guardFraction,
  guardRate,
  guardTemperature,
  guardViscosity,
  guardVolume,
} from '../oil/guards.js';
import { viscosityAt } from '../oil/viscosity.js';
import { RebuildInputError } from '../quantities/error.js';
import {
  chosen,
  fields,
  list,
  name,
  quantity,
  sizeOrSpan,
  span,
  statedLimits,
  undersize,
  word,
} from './fields.js';
import type { OilSheet, Sheet } from './sheet.js';
import { problemAt } from './sheet-error.js';

const diameter = quantity('length', guardDiameter);
const reading = fields({
  station: quantity('length', guardStation),
  angle: quantity('angle', guardAngle),
  diameter,
});

const journalSheet = fields({
  standard: span(guardDiameter),
  steps: list(undersize(guardUndersize)).exactOptional(),
  minimum: diameter.exactOptional(),
  cleanUpAllowance: quantity('length', guardStock).exactOptional(),
  sizeAllowance: quantity('length', guardTolerance).exactOptional(),
  wear: word('one side', 'all round').exactOptional(),
  shape: statedLimits(guardTolerance).exactOptional(),
  oilClearance: statedLimits()
    .refine(
      ({ min, max }) => min !== undefined && max !== undefined,
      'needs both a min and a max: a bearing can be too tight and too loose',
    )
    .exactOptional(),
});

const bearing = fields({
  name,
  journal: fields({
    readings: list(reading),
    runout: quantity('length', guardFlaw).exactOptional(),
  }).superRefine(accepting(({ readings }) => journalShape(readings))),
  housingBore: sizeOrSpan(guardDiameter),
  fittedShells: name.exactOptional(),
});

const ring = fields({
  name,
  gap: quantity('length', guardFlaw),
  measuredIn: diameter,
});

const point = fields({
  temperature: quantity('temperature', guardTemperature),
  viscosity: quantity('kinematicViscosity', guardViscosity),
});

const line = z
  .tuple([point, point], { error: 'must be a list of two points, each temperature and viscosity' })
  .superRefine(accepting((points) => viscosityAt(points, points[0].temperature)));

const fraction = quantity('volumeFraction', (parameter, value) =>
  guardFraction(parameter, value, 0.99),
);

const drip = fields({
  drops: quantity('rate', guardRate),
  dropVolume: quantity('volume', guardDrop).exactOptional(),
});
const flow = fields({ flow: quantity('flow', guardFlow) });
/** Drops in a time, or a flow. */
const leak = chosen<NonNullable<OilSheet['leak']>>((value) =>
  typeof value === 'object' && value !== null && 'flow' in value ? flow : drip,
);

const shells = fields({
  name,
  fits: word('rods', 'mains'),
  undersize: undersize(guardUndersize),
  wall: sizeOrSpan(guardShellWall),
  pairs: z
    .int({ error: 'must be a whole number of pairs, 0 or more, without quotes' })
    .min(0, 'must be a whole number of pairs, 0 or more, without quotes'),
});

const cylinder = fields({
  name,
  bore: fields({
    readings: list(reading),
    ringTravel: span(guardStation).exactOptional(),
  }).superRefine(
    accepting(({ readings, ringTravel }) =>
      boreShape(readings, ringTravel === undefined ? {} : { ringTravel }),
    ),
  ),
  piston: sizeOrSpan(guardDiameter).exactOptional(),
  rings: list(ring).exactOptional(),
});

/** The sections of a sheet. Each is read apart, so that a mistake in one hides nothing in another. */
export const sections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  engine: name,
  units: word('inch', 'metric'),
  crankshaft: fields({
    rodJournals: journalSheet.exactOptional(),
    mainJournals: journalSheet.exactOptional(),
    endPlay: fields({
      readings: list(
        fields({
          pushed: quantity('length', guardClearance),
          pulled: quantity('length', guardClearance),
        }),
      ),
      limits: statedLimits().exactOptional(),
    }).exactOptional(),
  }).optional(),
  rods: list(bearing).optional(),
  mains: list(bearing).optional(),
  shells: list(shells).optional(),
  cylinderLimits: fields({
    outOfRound: statedLimits().exactOptional(),
    taper: statedLimits().exactOptional(),
    pistonClearance: statedLimits().exactOptional(),
    ringGap: statedLimits().exactOptional(),
  }).optional(),
  cylinders: list(cylinder).optional(),
  oil: fields({
    line,
    sump: quantity('volume', guardVolume),
    sample: point.exactOptional(),
    fuelViscosity: quantity('kinematicViscosity', guardViscosity).exactOptional(),
    leak: leak.exactOptional(),
    thresholds: fields({ act: fraction, critical: fraction, source: name.exactOptional() })
      .refine(({ act, critical }) => act <= critical, 'act is above critical; swap the two')
      .exactOptional(),
  }).optional(),
} satisfies { readonly [K in keyof Required<Sheet>]: z.ZodType<Sheet[K]> };

/** The lists among them, item by item. */
export const items: Partial<Readonly<Record<string, z.ZodType>>> = {
  rods: bearing,
  mains: bearing,
  shells,
  cylinders: cylinder,
};

/** Tries a calculation on values that are each sound; what it refuses becomes a problem at its place. */
function accepting<T>(calculate: (value: T) => unknown) {
  return (value: T, context: z.RefinementCtx) => {
    try {
      calculate(value);
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
      context.addIssue({
        code: 'custom',
        message: problemAt('', error).message,
        path: pathOf(error.parameter),
      });
    }
  };
}

/** `readings[3].diameter` as a path; a parameter that is not a field of the sheet stays out of it. */
function pathOf(parameter: string): (string | number)[] {
  if (!parameter.startsWith('readings')) return [];
  return parameter
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}
