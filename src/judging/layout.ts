import { RebuildInputError } from '../quantities/index.js';
import { guardFields, isSoundNumber } from './guards.js';

/**
 * How data of the library is laid out. What functions take from each other is written in these
 * terms by `npm run layouts`, from its types.
 */
export type Layout =
  | 'number'
  | 'string'
  | 'boolean'
  | 'anything'
  | OneOf
  | List
  | Each
  | Fields
  | Variants
  | Either;

/** The words, numbers or truths that it may be. */
interface OneOf {
  readonly oneOf: readonly (string | number | boolean)[];
}

/** Any number of items, or so many. */
interface List {
  readonly list: Layout;
  readonly length?: number;
}

/** An object with fields of any name, all laid out alike. */
interface Each {
  readonly each: Layout;
}

/** An object. The names of fields that may be absent end in a question mark. */
interface Fields {
  readonly fields: Readonly<Record<string, Layout>>;
  /** Refuses what is laid out well and yet cannot be. */
  readonly also?: (parameter: string, value: never) => unknown;
}

/** Objects that one field tells apart. */
interface Variants {
  readonly by: string;
  readonly variants: readonly Fields[];
}

/** A number or an object, or objects that are told apart by the fields they must have. */
interface Either {
  readonly either: readonly Layout[];
}

/**
 * Refuses what is not laid out as what another function of the library gives, at the first place
 * that is wrong. Where it comes from does not matter: it may have been through JSON.
 */
export function guardLayout(
  parameter: string,
  value: unknown,
  layout: Layout,
  maker: string,
): void {
  guardAt(parameter, value, layout, `Pass on what ${maker} gives.`);
}

function guardAt(at: string, value: unknown, layout: Layout, hint: string): void {
  if (!isOfKind(value, layout)) {
    throw new RebuildInputError({ parameter: at, value, expected: wordsFor(layout), hint });
  }
  if (typeof layout === 'string' || 'oneOf' in layout) return;
  if ('list' in layout) {
    for (const [i, item] of (value as readonly unknown[]).entries()) {
      guardAt(`${at}[${i}]`, item, layout.list, hint);
    }
  } else if ('each' in layout) {
    for (const [key, item] of Object.entries(value as Given)) {
      guardAt(`${at}.${key}`, item, layout.each, hint);
    }
  } else if ('fields' in layout) {
    guardEach(at, value as Given, layout, hint);
  } else if ('by' in layout) {
    guardEach(at, value as Given, variantOf(at, value as Given, layout, hint), hint);
  } else {
    guardAt(at, value, chosenFor(value, layout), hint);
  }
}

type Given = Readonly<Record<string, unknown>>;

function guardEach(at: string, value: Given, { fields, also }: Fields, hint: string): void {
  guardFields(at, value, Object.keys(fields).map(nameOf));
  for (const [key, inner] of Object.entries(fields)) {
    const name = nameOf(key);
    if (isNeeded(key) || value[name] !== undefined) {
      guardAt(`${at}.${name}`, value[name], inner, hint);
    }
  }
  also?.(at, value as never);
}

const isNeeded = (key: string): boolean => !key.endsWith('?');
const nameOf = (key: string): string => (isNeeded(key) ? key : key.slice(0, -1));

function variantOf(at: string, value: Given, { by, variants }: Variants, hint: string): Fields {
  const words = (variant: Fields) => (variant.fields[by] as OneOf).oneOf;
  guardAt(`${at}.${by}`, value[by], { oneOf: variants.flatMap(words) }, hint);
  return variants.find((variant) => words(variant).some((word) => word === value[by])) as Fields;
}

function chosenFor(value: unknown, { either }: Either): Layout {
  const ofKind = either.filter((layout) => isOfKind(value, layout));
  const hasAll = (layout: Layout) =>
    typeof layout === 'object' &&
    'fields' in layout &&
    Object.keys(layout.fields).every((key) => !isNeeded(key) || key in (value as Given));
  return (ofKind.length > 1 ? ofKind.find(hasAll) : undefined) ?? (ofKind[0] as Layout);
}

/** Whether a value is the number, text, list or object that is laid out, whatever is in it. */
function isOfKind(value: unknown, layout: Layout): boolean {
  if (layout === 'anything') return true;
  if (layout === 'number') return isSoundNumber(value);
  if (typeof layout === 'string') return typeof value === layout;
  if ('oneOf' in layout) return layout.oneOf.some((word) => word === value);
  if ('list' in layout) {
    return Array.isArray(value) && value.length === (layout.length ?? value.length);
  }
  if ('either' in layout) return layout.either.some((each) => isOfKind(value, each));
  // Not a list, nor a date, a map or the like: JSON would not give it back.
  return Object.prototype.toString.call(value) === '[object Object]';
}

function wordsFor(layout: Layout): string {
  if (layout === 'number') return 'a finite number';
  if (layout === 'string') return 'text';
  if (layout === 'boolean') return 'true or false';
  if (layout === 'anything') return 'anything';
  if ('oneOf' in layout) return layout.oneOf.map((word) => JSON.stringify(word)).join(' or ');
  if ('list' in layout)
    return layout.length === undefined ? 'a list' : `a list of ${layout.length}`;
  if ('either' in layout) return [...new Set(layout.either.map(wordsFor))].join(' or ');
  return 'an object with named fields';
}
