import { type Dimension, RebuildInputError } from '../quantities/index.js';
import { ambiguousSpellings } from '../quantities/internal.js';
import type { Exact } from './exact.js';
import { isMathUnit, type MathUnit } from './instance.js';
import { exampleOfShape } from './say-example.js';
import {
  apart,
  apartIn,
  choicesOf,
  fieldsOf,
  isDimension,
  quotedWords,
  wrongUnit,
} from './say-shape.js';
import type { ValueShape } from './shapes.js';
import { nameOfUnit, unitByName } from './unit-names.js';

type Choice = ReturnType<typeof choicesOf>[number];

/** What one call finds out on the way. */
export interface Call {
  /** The name of its only argument, which a field of it is not called by. */
  readonly root?: string;
  /** The dimension of what is generic in it. */
  dimension?: Dimension;
}

/** A value of mathjs as our functions take it: units as SI numbers, matrices as lists. */
export function readValue(
  exact: Exact,
  given: unknown,
  shape: ValueShape,
  path: string,
  call: Call,
): unknown {
  const value = plain(given);
  const choices = choicesOf(shape);
  refuseNoObject(value, choices, path);
  if (isMathUnit(value)) return readUnit(exact, value, choices, path, call);
  if (typeof value === 'number') return readNumber(value, choices, path, call);
  if (Array.isArray(value)) {
    const item = choices.find(isList)?.list ?? 'anything';
    return value.map((each, i) => readValue(exact, each, item, `${path}[${i}]`, call));
  }
  if (typeof value !== 'object' || value === null) return value;
  return readObject(exact, value, choices, path, call);
}

const isList = (choice: Choice): choice is { readonly list: ValueShape } =>
  typeof choice === 'object' && 'list' in choice;

/** Refuses text where several sizes belong, and one object where a list of them does; says what to type instead. */
function refuseNoObject(value: unknown, choices: readonly Choice[], path: string): void {
  const objects = choices.every((one) => typeof one === 'object' && !('oneOf' in one));
  if (!objects) return;
  const field = /\w+$/.exec(path)?.[0];
  const name = field === undefined ? '' : `${field}: `;
  if (typeof value === 'string') {
    const word = JSON.stringify(value.slice(0, 60));
    throw new RebuildInputError({
      parameter: path,
      value,
      shown: word,
      expected: 'several sizes in braces',
      problem: 'is a word where sizes belong',
      hint: `Write ${name}${exampleOfShape({ either: choices }, value)}.`,
    });
  }
  const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
  if (isObject && choices.every(isList)) throw noList(path, value, 'this', choices);
}

/** Refuses what stands alone where a list belongs. */
function noList(
  path: string,
  value: unknown,
  shown: string,
  choices: readonly Choice[],
): RebuildInputError {
  const name = /\w+$/.exec(path)?.[0];
  return new RebuildInputError({
    parameter: path,
    value,
    shown,
    expected: 'a list in square brackets',
    problem: 'is one where a list belongs, even a list of one',
    hint: `Write ${name === undefined ? '' : `${name}: `}${exampleOfShape({ either: choices })}.`,
  });
}

/** Matrices, big numbers and fractions of mathjs as JavaScript has them. */
function plain(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || isMathUnit(value)) return value;
  const told = value as { readonly type?: unknown; readonly valueOf: () => unknown };
  if ('isMatrix' in value || 'isRange' in value) {
    return (value as unknown as { readonly toArray: () => unknown }).toArray();
  }
  if (told.type === 'BigNumber' || told.type === 'Fraction') return Number(told.valueOf());
  return value;
}

function readUnit(
  exact: Exact,
  value: MathUnit,
  choices: readonly Choice[],
  path: string,
  call: Call,
): number {
  refuseAmbiguous(exact, value, path);
  const dimensions = choices.filter(isDimension);
  const fits = dimensions.find((dimension) => exact.is(value, dimension));
  if (fits) return exact.valueOf(value, fits);
  const isOpen = choices.includes('quantity') || choices.includes('anything');
  if (isOpen) {
    const wanted = choices.includes('number') ? undefined : call.dimension;
    if (wanted === undefined || exact.is(value, wanted)) {
      const dimension = wanted ?? exact.dimensionOf(value);
      if (dimension !== undefined) {
        if (!choices.includes('number')) call.dimension ??= dimension;
        return exact.valueOf(value, dimension);
      }
    }
    throw wrongUnit(path, exact.text(value), [wanted ?? 'length']);
  }
  refuseOtherPressure(exact, value, dimensions, path);
  if (dimensions.length > 0) throw wrongUnit(path, exact.text(value), dimensions);
  const fields = Object.keys(fieldsOf({ either: choices }));
  if (fields.length > 0) {
    throw new RebuildInputError({
      parameter: path,
      value,
      shown: exact.text(value),
      expected: 'several sizes in braces',
      problem: 'is one size where several belong',
      hint: `It takes {${fields.map((field) => field.replace('?', '')).join(', ')}}.`,
    });
  }
  if (choices.some(isList)) throw noList(path, value, exact.text(value), choices);
  const words = quotedWords({ either: choices });
  throw new RebuildInputError({
    parameter: path,
    value,
    shown: exact.text(value),
    expected: 'a plain number or a word',
    problem: 'has a unit where none belongs',
    hint: words.length === 0 ? 'Leave the unit off.' : `Write one of ${words.join(', ')}.`,
  });
}

/** Refuses a pressure of the other zero, and says what to type: what a gauge shows is no absolute pressure. */
function refuseOtherPressure(
  exact: Exact,
  value: MathUnit,
  dimensions: readonly Dimension[],
  path: string,
): void {
  const [own] = exact.named(value);
  if (own === undefined) return;
  const isGauge = own.dimension === 'gaugePressure';
  if (isGauge ? !dimensions.includes('pressure') : !dimensions.includes('gaugePressure')) return;
  if (!isGauge && own.dimension !== 'pressure') return;
  const text = exact.text(value);
  const [number = ''] = text.split(' ');
  const unit = nameOfUnit(own);
  const shown = unitByName.has(`${unit}Gauge`)
    ? `${number} ${unit}Gauge`
    : 'it in psiGauge or kPaGauge';
  throw new RebuildInputError({
    parameter: path,
    value,
    shown: text,
    expected: isGauge ? 'an absolute pressure' : 'a gauge pressure',
    hint: isGauge
      ? `Type absolutePressure(${number} ${unit}).`
      : `If a gauge showed it, type ${shown}; if it is absolute, type gaugePressure(${number} ${unit}).`,
  });
}

/** An ounce, a pint, a quart and a gallon may be one of two. */
function refuseAmbiguous(exact: Exact, value: MathUnit, path: string): void {
  for (const { unit } of value.units) {
    const bare = unit.name.toLowerCase().replace(/s$/, '');
    const isVolume = unit.name !== 'oz' && Object.hasOwn(ambiguousSpellings, bare);
    if (!isVolume && unit.name !== 'cup' && unit.name !== 'fluidounce') continue;
    const kind =
      bare === 'gal' ? 'gallon' : bare === 'qt' ? 'quart' : bare === 'pt' ? 'pint' : bare;
    const name = kind === 'fluidounce' || kind === 'cup' ? 'fluidOunce' : kind;
    throw new RebuildInputError({
      parameter: path,
      value,
      shown: exact.text(value),
      expected: `a US or an imperial measure`,
      problem: `is ambiguous: a ${unit.name} may be a US or an imperial one`,
      hint: `Write ${name}US or ${name}Imperial.`,
    });
  }
}

function readNumber(value: number, choices: readonly Choice[], path: string, call: Call): number {
  const takesNumbers = choices.some(
    (each) =>
      ['number', 'ratio', 'anything'].includes(each as string) ||
      (typeof each === 'object' && 'oneOf' in each),
  );
  if (takesNumbers) return value;
  const dimensions = choices.filter(isDimension);
  if (dimensions.length > 0) throw wrongUnit(path, value, dimensions);
  if (choices.includes('quantity')) {
    const { dimension = 'ratio' } = call;
    if (dimension !== 'ratio') throw wrongUnit(path, value, [dimension]);
  }
  return value;
}

const isSpan = (value: object): boolean =>
  value instanceof Map ? value.has('min') && value.has('max') : 'min' in value && 'max' in value;

function readObject(
  exact: Exact,
  value: object,
  choices: readonly Choice[],
  path: string,
  call: Call,
): object {
  if (choices.every((one) => isDimension(one) || one === 'number') && isSpan(value)) {
    throw new RebuildInputError({
      parameter: path,
      value,
      shown: 'this',
      expected: 'one value',
      problem: 'is a span where one value belongs',
      hint: 'Put in one end of it, .min or .max: the one that is worse here.',
    });
  }
  const each = choices.find((one) => typeof one === 'object' && 'each' in one);
  const known = fieldsOf({ either: choices });
  const shapeOf = (key: string): ValueShape =>
    known[key] ??
    known[`${key}?`] ??
    (typeof each === 'object' && 'each' in each ? each.each : 'anything');
  const told = (value as { readonly dimension?: unknown }).dimension;
  const own: Call = isDimension(told as ValueShape) ? { dimension: told as Dimension } : call;
  const from = value instanceof Map ? [...value] : Object.entries(value);
  return Object.fromEntries(
    from.map(([key, item]) => {
      const shape = apart(key, shapeOf(key));
      const inside = apartIn(key, own.dimension);
      const within = inside === own.dimension ? own : { dimension: inside };
      const name = path === call.root ? key : `${path}.${key}`;
      return [key, readValue(exact, item, shape, name, within as Call)];
    }),
  );
}
