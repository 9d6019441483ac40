import { coherentUnit, type Dimension, RebuildInputError, tradeUnit } from '../quantities/index.js';
import type { FieldsShape, ValueShape } from './shapes.js';
import { sharedShapes } from './signatures.js';
import { nameOfUnit } from './unit-names.js';

/** The shape behind a name. */
export function resolved(shape: ValueShape): Exclude<ValueShape, `#${string}`> {
  let at: ValueShape = shape;
  while (typeof at === 'string' && at.startsWith('#')) {
    at = sharedShapes[at.slice(1)] ?? 'anything';
  }
  return at as Exclude<ValueShape, `#${string}`>;
}

/** All that a value may be, names and choices within choices opened. */
export function choicesOf(shape: ValueShape): readonly Exclude<ValueShape, `#${string}`>[] {
  const at = resolved(shape);
  return typeof at === 'object' && 'either' in at ? at.either.flatMap(choicesOf) : [at];
}

/** The words that a value may be. */
export const wordsIn = (shape: ValueShape): readonly string[] =>
  choicesOf(shape)
    .flatMap((one) => (typeof one === 'object' && 'oneOf' in one ? one.oneOf : []))
    .filter((word) => typeof word === 'string');

/** The same in quotes. */
export const quotedWords = (shape: ValueShape): readonly string[] =>
  wordsIn(shape).map((word) => JSON.stringify(word));

/** Whether a shape is that of a quantity of one dimension. */
export const isDimension = (shape: ValueShape): shape is Dimension =>
  typeof shape === 'string' && Object.hasOwn(coherentUnit, shape);

/** The fields that an object may have, whichever of the choices it is; what all of them need has no question mark. */
export function fieldsOf(shape: ValueShape): FieldsShape['fields'] {
  const objects = choicesOf(shape).filter((each) => typeof each === 'object' && 'fields' in each);
  const merged = new Map<string, { shapes: ValueShape[]; needed: number }>();
  for (const { fields } of objects as readonly FieldsShape[]) {
    for (const [key, of] of Object.entries(fields)) {
      const name = key.replace('?', '');
      const known = merged.get(name) ?? { shapes: [], needed: 0 };
      known.shapes.push(of);
      if (key === name) known.needed++;
      merged.set(name, known);
    }
  }
  return Object.fromEntries(
    [...merged].map(([name, { shapes, needed }]) => {
      const [only] = shapes;
      const key = needed === objects.length ? name : `${name}?`;
      return [key, shapes.length === 1 && only ? only : { either: shapes }];
    }),
  );
}

/** Fields that hold how far apart two values are, whatever the values are. */
const APART: readonly string[] = [
  'expanded',
  'guardBand',
  'halfWidth',
  'margin',
  'standard',
  'standardDeviation',
  'standardUncertainty',
  'uncertainty',
];

/** The shape of a field. How far two temperatures are apart is no temperature. */
export function apart(field: string, shape: ValueShape): ValueShape {
  if (!APART.includes(field)) return shape;
  const choices = choicesOf(shape);
  if (!choices.includes('temperature')) return shape;
  return { either: choices.map((one) => (one === 'temperature' ? 'temperatureDifference' : one)) };
}

/** The same where the dimension is known only by the call. */
export const apartIn = (field: string, dimension: Dimension | undefined): Dimension | undefined =>
  dimension === 'temperature' && APART.includes(field) ? 'temperatureDifference' : dimension;

/** `a gauge pressure`; `an angle`. */
export function withArticle(dimension: Dimension): string {
  const words = dimension.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
  return `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`;
}

/** The number that a share has in percent, where it is one: 13.2 % is 0.132 to mathjs. */
const inPercent = (value: number): number =>
  Math.abs(value) <= 1 ? Number((100 * value).toPrecision(12)) : value;

/** Refuses a number without a unit, or a unit of another dimension. */
export function wrongUnit(
  parameter: string,
  value: unknown,
  dimensions: readonly Dimension[],
): RebuildInputError {
  const [first = 'length'] = dimensions;
  const expected = [...new Set(dimensions.map(withArticle))].join(' or ');
  const unit = nameOfUnit(tradeUnit(first, 'inch'));
  const isShare = ['volumeFraction', 'massFraction'].includes(first);
  const own = typeof value === 'number' && Number.isFinite(value) ? value : 2;
  const number = isShare ? inPercent(own) : own;
  const shown = typeof value === 'number' ? String(value) : String(value).slice(0, 60);
  return new RebuildInputError({
    parameter,
    value,
    shown,
    expected,
    problem:
      typeof value === 'number'
        ? `${isShare && value <= 1 ? 'does not say of what it is a share' : 'has no unit'}; expected ${expected}, for example ${number} ${unit}`
        : `is not ${expected}; expected for example ${number} ${unit}`,
    hint: 'Every size has its unit.',
  });
}
