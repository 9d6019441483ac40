import { z } from 'zod';
import type { SizeOrSpan, Span } from '../judging/index.js';
import {
  type Dimension,
  type Length,
  parse,
  parseLength,
  type Quantity,
  RebuildInputError,
  type UnitSystem,
} from '../quantities/index.js';
import { largestOf, showValue, smallestOf } from '../quantities/internal.js';
import { chosen, fields, list } from './fields.js';
import { problemAt } from './file-error.js';
import { marked } from './marks.js';
import { LEAVE_OUT, refuseBareStep, refuseFraction, refuseNotKnown } from './no-size.js';
import { writeQuantity, writeStep } from './write-quantity.js';

/** What refuses a quantity that cannot be, or gives it back. */
export type Guard<D extends Dimension> = (parameter: string, value: Quantity<D>) => Quantity<D>;

/** Quantities as people write them. A field shows those it accepts as its examples. */
const EXAMPLES: Partial<Readonly<Record<Dimension, readonly string[]>>> = {
  length: ['2.1248 in', '53.97 mm', '0.0012 in', '0.03 mm', '0.062 in', '1.57 mm', '0.4 µm'],
  angle: ['90 deg', '20 deg', '2 deg'],
  area: ['9000 mm²'],
  temperature: ['104 °F', '40 °C'],
  temperatureDifference: ['10 ΔK'],
  ratio: ['20 %', '1.2', '0.5', '6'],
  kinematicViscosity: ['100 cSt'],
  volume: ['1 US qt', '0.05 mL', '62.5 mL', '-4 mL'],
  volumeFraction: ['2 vol%'],
  rate: ['6 per minute'],
  flow: ['0.3 mL/min'],
  density: ['885 kg/m³'],
  rotationalSpeed: ['1800 rpm'],
  force: ['400 lbf', '1800 N'],
  torque: ['20 lbf ft', '27 N m'],
  pressure: ['1200 psi', '8 MPa', '25 psi', '101 kPa'],
  gaugePressure: ['95 psi gauge'],
  mass: ['0.45 kg'],
};

/** Text with a unit, such as `"2.1248 in"`, read and then checked against the sizes the part can have. */
export function quantity<D extends Dimension>(
  dimension: D,
  guard: Guard<D>,
  refuse: (text: string) => void = () => {},
) {
  const words = dimension.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
  const examples = EXAMPLES[dimension] ?? [];
  return measured(
    (text) => {
      refuse(text);
      return parse(text, dimension);
    },
    guard,
    inQuotes('number and unit', examples[0]),
    `${words}: number and unit`,
    examples,
    (value, units) => writeQuantity(value, dimension, units),
  );
}

/** A size that was measured: text with a unit, and no fraction of an inch. */
export const measuredSize = (guard: Guard<'length'>) => quantity('length', guard, refuseFraction);

/** How far a size may be off, either way: `"±0.0001 in"`, or without the sign. */
export function plusMinus(guard: Guard<'length'>) {
  const examples = ['0.0001 in', '0.002 mm'];
  const reader = (text: string) => parseLength(text.replace(/^\s*(?:±|\+\/-|\+-)/, ''));
  const words = 'length: number and unit, with or without ± before it';
  const wanted = inQuotes('number and unit', examples[0]);
  return measured(reader, guard, wanted, words, examples, (value, units) =>
    writeQuantity(value, 'length', units),
  );
}

/** An undersize: `"standard"`, `"20 under"`, `"0.50 mm under"`. */
export function undersize(guard: Guard<'length'>) {
  return step('under', guard);
}

/** An oversize: `"standard"`, `"20 over"`, `"0.50 mm over"`. */
export function oversize(guard: Guard<'length'>) {
  return step('over', guard);
}

function step(way: 'under' | 'over', guard: Guard<'length'>) {
  const other = way === 'under' ? 'over' : 'under';
  const reader = (text: string): Length => {
    if (text.trim().toLowerCase() === 'standard') return 0 as Length;
    refuseBareStep(text, way);
    if (!new RegExp(`${other}(?:size)?\\s*$`, 'i').test(text)) return parseLength(text);
    throw new RebuildInputError({
      parameter: 'text',
      value: text,
      expected: `an ${way}size`,
      hint: `Write standard, or how far ${way}, e.g. "20 ${way}".`,
    });
  };
  const examples = ['standard', `20 ${way}`, `0.50 mm ${way}`];
  const words = `${way}size: standard, thou, or number and unit`;
  const wanted = inQuotes(`an ${way}size`, examples[1]);
  return measured(reader, guard, wanted, words, examples, (value, units) =>
    writeStep(value, way, units),
  );
}

/** What to write where something else than text stands. */
const inQuotes = (what: string, example: string | undefined): string =>
  example === undefined ? `${what} in quotes` : `${what} in quotes, e.g. "${example}"`;

/** Text that a reader turns into a quantity; a refusal by the reader or the guard becomes a problem of the file. */
function measured<D extends Dimension>(
  reader: (text: string) => Quantity<D>,
  guard: Guard<D>,
  wanted: string,
  description: string,
  written: readonly string[],
  write: (value: Quantity<D>, units: UnitSystem) => string,
) {
  const read = (text: string) => {
    refuseNotKnown(text, wanted);
    return guarded(text, reader(text), guard);
  };
  return marked(textAs(wanted, read), {
    // Where there is a choice of forms, the data may be of another one.
    write: (value: Quantity<D>, units) =>
      typeof value === 'number' ? write(value, units) : undefined,
    json: () => ({
      description,
      examples: written.filter((text) => accepts(read, text)).slice(0, 3),
    }),
  });
}

/** Text for a reader; a refusal becomes a problem of the file. */
export function textAs<T>(wanted: string, read: (text: string) => T) {
  return z
    .string({
      error: ({ input }) =>
        input === undefined
          ? 'is missing'
          : `${showValue(input)} is not text; write ${wanted}${input === null ? `, or ${LEAVE_OUT}` : ''}`,
    })
    .transform((text, context): T => {
      try {
        return read(text);
      } catch (error) {
        if (!(error instanceof RebuildInputError)) throw error;
        context.addIssue(problemAt('', error).message);
        return z.NEVER;
      }
    });
}

function accepts(read: (text: string) => unknown, text: string): boolean {
  try {
    read(text);
    return true;
  } catch {
    return false;
  }
}

/** Runs the guard; a refusal shows the text as it was written. */
function guarded<D extends Dimension>(text: string, value: Quantity<D>, guard: Guard<D>) {
  try {
    return guard('text', value);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    const { expected } = error;
    const meant = inOtherUnit(text, guard);
    const hint =
      meant === undefined ? 'Check the digits and the unit.' : `Did you mean "${meant}"?`;
    throw new RebuildInputError({ parameter: 'text', value: text, expected, hint });
  }
}

/** The units of length that are taken for one another. */
const OTHER_UNIT: Readonly<Record<string, string>> = { mm: 'in', in: 'mm' };

/** The same number in the other unit, where that is a size that can be; undefined of any other text. */
function inOtherUnit<D extends Dimension>(text: string, guard: Guard<D>): string | undefined {
  const [, number, unit = ''] = /^(\S+)\s*(mm|in)$/.exec(text.trim()) ?? [];
  const other = OTHER_UNIT[unit];
  if (number === undefined || other === undefined) return undefined;
  const meant = `${number} ${other}`;
  const reads = () => guard('text', parseLength(meant) as Quantity<Dimension> as Quantity<D>);
  return accepts(reads, meant) ? meant : undefined;
}

/** A span of sizes with its ends in order. */
export const span = (guard: Guard<'length'>) => spanOf(quantity('length', guard));

/** A span of any quantity with its ends in order. */
function spanOf<T extends z.ZodType<number>>(end: T) {
  return fields({ min: end, max: end }).refine((ends) => inOrder(ends as Span<number>), {
    error: REVERSED,
    abort: true,
  });
}

/** A quantity as text, or the span that it lies in. */
export function valueOrSpan<D extends Dimension>(dimension: D, guard: Guard<D>) {
  const value = quantity(dimension, guard);
  const range = spanOf(value) as unknown as z.ZodType<Span<Quantity<D>>>;
  return chosen<SizeOrSpan<Quantity<D>>>([value, range], (given) =>
    typeof given === 'object' && given !== null ? range : value,
  );
}

/** The most readings of one place. */
export const MOST_OF_A_PLACE = 1000;

/** A list of readings. */
export function readingsOf<T extends z.ZodType>(item: T) {
  return short(list(item), MOST_OF_A_PLACE);
}

/** The most undersizes or oversizes of an engine. */
const MOST_STEPS = 50;

/** A list of undersizes or oversizes. */
export function stepsOf<T extends z.ZodType>(item: T) {
  return short(list(item), MOST_STEPS);
}

function short<T extends z.ZodType>(items: z.ZodArray<T>, most: number) {
  return items.max(most, `must have at most ${most} entries`);
}

/** One measured size as text, a span, or a list of readings, which make a span. */
export function sizeOrSpan(guard: Guard<'length'>) {
  const size = measuredSize(guard);
  const readings = readingsOf(size).transform((sizes): SizeOrSpan<Length> => {
    const [min, max] = [smallestOf(sizes), largestOf(sizes)];
    return min === max ? min : { min, max };
  });
  const range = spanOf(size);
  return chosen<SizeOrSpan<Length>>([size, range, readings], (value) => {
    if (Array.isArray(value)) return readings;
    return typeof value === 'object' && value !== null ? range : size;
  });
}

/** What is wrong with a span whose ends are swapped. */
export const REVERSED = 'min is above max; swap the two';

/** Whether the ends of a span are in order, as far as they are there. */
export function inOrder({ min, max }: Partial<Span<number>>): boolean {
  return min === undefined || max === undefined || min <= max;
}
