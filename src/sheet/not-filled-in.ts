import type { UnitSystem } from '../quantities/index.js';
import { type Given, isObject, rawItems } from '../reading/index.js';
import { notYetRead } from './half-read.js';
import type { LeftOut, NotFilledIn } from './sheet.js';

const LISTS = ['rods', 'mains', 'cylinders'] as const;

/** What a new sheet holds of a place before anything is measured. */
const GIVEN_BEFORE: readonly string[] = ['unit', 'angles'];

/** A place lies no deeper than this in a file. */
const DEEPEST = 8;

/** A raw sheet without the places that nobody filled in, or that were read too little to judge, and what is to be read. */
export interface FilledIn {
  readonly given: Given;
  readonly notFilledIn: NotFilledIn;
  /** Where in the file something is, by where it is without those places. */
  readonly pathInFile: (path: string) => string;
}

/**
 * Leaves out rods, mains and cylinders that stand in a sheet as `newSheet` wrote them, as nothing was read on them yet, and
 * those that were read at too few places, as they have no shape. Neither stops the others.
 */
export function onlyFilledIn(file: Given): FilledIn {
  const units = file['units'] === 'metric' ? 'metric' : 'inch';
  const lists = LISTS.filter((list) => Array.isArray(file[list])).map((list) => {
    const items = (file[list] as readonly unknown[]).map(withoutNulls);
    const missing = rawItems(items).map((place) => missingOf(list, place, units));
    const kept = [...items.keys()].filter((i) => missing[i] === undefined);
    return { list, items, kept, missing };
  });
  const notFilledIn = Object.fromEntries(
    lists.flatMap(({ list, missing }) => {
      const leftOut = missing.filter((each) => each !== undefined);
      return leftOut.length === 0 ? [] : [[list, leftOut]];
    }),
  );
  const given = Object.fromEntries(
    Object.entries(file).flatMap(([key, value]) => {
      const places = lists.find(({ list }) => list === key);
      if (places === undefined) return [[key, value]];
      const { items, kept } = places;
      return kept.length === 0 && items.length > 0 ? [] : [[key, kept.map((i) => items[i])]];
    }),
  );
  const pathInFile = (path: string) =>
    path.replace(/^(\w+)\[(\d+)\]/, (as, list, i) => {
      const place = lists.find((each) => each.list === list)?.kept[Number(i)];
      return place === undefined ? as : `${list}[${place}]`;
    });
  return { given, notFilledIn, pathInFile };
}

/** What to read of a place that is left out: all of it, or what it still lacks. */
function missingOf(
  list: (typeof LISTS)[number],
  place: Given,
  units: UnitSystem,
): LeftOut | undefined {
  const { name } = place;
  if (typeof name !== 'string') return undefined;
  if (isNotFilledIn(place)) return { name };
  const lacks = notYetRead(list, place, units);
  return lacks === undefined ? undefined : { name, lacks };
}

/** A place, and its journal or bore, without the fields that hold null: `newSheet` writes them so, to be filled in. */
function withoutNulls(place: unknown): unknown {
  if (!isObject(place)) return place;
  const read = Object.entries(place).map(([key, value]) => {
    const isRead = (key === 'journal' || key === 'bore') && isObject(value);
    return [key, isRead ? filledIn(Object.entries(value)) : value] as const;
  });
  return filledIn(read);
}

const filledIn = (fields: readonly (readonly [string, unknown])[]): Given =>
  Object.fromEntries(fields.filter(([, value]) => value !== null));

function isNotFilledIn(place: Given): boolean {
  const fields = Object.entries(place).filter(([key]) => key !== 'name');
  return fields.length > 0 && fields.every(([key, value]) => isEmpty(key, value, 0));
}

function isEmpty(key: string, value: unknown, depth: number): boolean {
  if (value === null || GIVEN_BEFORE.includes(key)) return true;
  if (depth > DEEPEST) return false;
  if (Array.isArray(value)) return value.every((each) => isEmpty(key, each, depth + 1));
  return (
    isObject(value) && Object.entries(value).every(([of, each]) => isEmpty(of, each, depth + 1))
  );
}
