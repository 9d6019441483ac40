import { z } from 'zod';
import { shellWall } from '../bearings/internal.js';
import { ringGap } from '../cylinders/internal.js';
import type { Span } from '../judging/index.js';
import {
  angleAround,
  diameter,
  machiningStock,
  outOfTrue,
  sizeStep,
  stationAlong,
  toleratedWear,
} from '../judging/internal.js';
import { boreShape, type DiameterReading, journalShape } from '../measuring/index.js';
import { readSoFar } from '../measuring/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { chosen, count, fields, name, partial, word } from './fields.js';
import { problemAt } from './file-error.js';
import { pathOf } from './file-text.js';
import { isObject } from './given.js';
import { statedLimits } from './limit-fields.js';
import { marked } from './marks.js';
import {
  MOST_OF_A_PLACE,
  measuredSize,
  quantity,
  readingsOf,
  sizeOrSpan,
  span,
  stepsOf,
  undersize,
} from './quantity-fields.js';
import { placeInTable, readingsTable } from './readings-table.js';

const oneDiameter = quantity('length', diameter);

const reading = {
  station: quantity('length', stationAlong),
  angle: quantity('angle', angleAround),
  diameter: measuredSize(diameter),
};
const readingsOneByOne = readingsOf(fields(reading));
const tableOfReadings = readingsTable(reading, MOST_OF_A_PLACE);
const isTable = (value: object) =>
  ['unit', 'angles', 'stations', 'diameters'].some((field) => Object.hasOwn(value, field));
/** What is neither a list of readings nor a table of them. */
const noReadings = z.never({
  error:
    'must be a list of readings, each with its station, angle and diameter, e.g. [{ "station": "0.5 in", "angle": "0 deg", "diameter": "3.2530 in" }]; leave the field out if nothing was read',
});
const readings = marked(
  chosen<readonly DiameterReading[]>([readingsOneByOne, tableOfReadings], (value) => {
    if (isObject(value)) return isTable(value) ? tableOfReadings : noReadings;
    const isBare = (each: unknown) => typeof each === 'string' || typeof each === 'number';
    const isList = Array.isArray(value) && !value.some(isBare);
    return isList || value === undefined ? readingsOneByOne : noReadings;
  }),
  { inCsv: true },
);

/** The measurements of a journal. */
export const journalFields = {
  readings,
  runout: quantity('length', outOfTrue).exactOptional(),
};

/** The measurements of a bore. */
export const boreFields = { readings, ringTravel: span(stationAlong).exactOptional() };

/** The measurements of a journal, as far as it was measured. */
export const journalFieldsSoFar = { ...journalFields, readings: readings.exactOptional() };

/** The measurements of a bore, as far as it was measured. */
export const boreFieldsSoFar = { ...boreFields, readings: readings.exactOptional() };

/** Refuses readings that cannot belong to one journal or bore, be they as few as they may. */
export const asReadSoFar = accepting(({ readings, ringTravel }: Partial<Measured>) =>
  readSoFar(readings ?? [], ringTravel),
);

/** Refuses readings that cannot belong to one journal. */
export const asJournal = accepting(({ readings }: Measured) => journalShape(readings));

/** Refuses readings that cannot belong to one bore. */
export const asBore = accepting(({ readings, ringTravel }: Measured) =>
  boreShape(readings, ringTravel === undefined ? {} : { ringTravel }),
);

interface Measured {
  readonly readings: readonly DiameterReading[];
  readonly ringTravel?: Span<Length>;
}

const bothLimits = statedLimits().refine(
  ({ min, max }) => min !== undefined && max !== undefined,
  'needs both a min and a max: a bearing can be too tight and too loose',
);

/** Data on all journals of one kind. */
export const journalKind = partial({
  standard: span(diameter),
  steps: stepsOf(undersize(sizeStep)).exactOptional(),
  minimum: oneDiameter.exactOptional(),
  cleanUpAllowance: quantity('length', machiningStock).exactOptional(),
  sizeAllowance: quantity('length', toleratedWear).exactOptional(),
  wear: word('one side', 'all round').exactOptional(),
  shape: statedLimits(toleratedWear).exactOptional(),
  runout: statedLimits(outOfTrue).exactOptional(),
  oilClearance: marked(bothLimits, { json: () => ({ required: ['min', 'max'] }) }).exactOptional(),
});

/** A housing bore without its shells. */
export const housingBore = marked(sizeOrSpan(diameter), { inCsv: true });

/** A ring with a measured gap. */
export const ring = fields({
  name,
  gap: marked(measuredSize(ringGap), { inCsv: true }),
  measuredIn: oneDiameter,
});

/** Pairs of half shells of one kind. */
export const shellFields = {
  name,
  fits: word('rods', 'mains'),
  undersize: undersize(sizeStep),
  wall: marked(sizeOrSpan(shellWall), { inCsv: true }),
  pairs: count('pairs', 0),
};

/** Tries a calculation on values that are each valid; a refusal becomes a problem at its path. */
export function accepting<T>(calculate: (value: T) => unknown) {
  return (value: T, context: z.RefinementCtx) => {
    try {
      calculate(value);
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
      context.addIssue({
        code: 'custom',
        message: problemAt('', error).message,
        path: stepsTo(error.parameter, value),
      });
    }
  };
}

/** Where in the file a parameter of a check is, by the place of the value that has it as its field. */
export const placeIn = (at: string, parameter: string, value: unknown): string =>
  pathOf([at, ...stepsTo(parameter, value)]);

/** `readings[3].diameter` as a path; empty if the parameter is not a field of the value. */
function stepsTo(parameter: string, value: unknown): (string | number)[] {
  const [field = ''] = parameter.split(/[.[]/);
  if (!isObject(value) || !Object.hasOwn(value, field)) return [];
  const steps = parameter
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
  const inTable = placeInTable(value[field], Number(steps[1]));
  return inTable ? [field, ...inTable] : steps;
}
