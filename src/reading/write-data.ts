import { z } from 'zod';
import type { UnitSystem } from '../quantities/index.js';
import { isObject } from './given.js';
import { markOf } from './marks.js';
import { asJson, butForName, byName, byPlace, matched } from './match-items.js';
import { withoutOwnFields } from './own-fields.js';
import { isSameData } from './same-data.js';

/**
 * What a file holds for data: the inverse of reading it with the schema. What is in the file already
 * and reads as the data stays as it was written, and so do the fields that the schema does not know.
 */
export function writeData(
  schema: z.core.$ZodType,
  data: unknown,
  units: UnitSystem,
  written?: unknown,
): unknown {
  if (written !== undefined && reads(schema, written, data)) return written;
  const { write, options } = markOf(schema);
  if (write) return write(data as never, units);
  if (options) return writeOption(schema, options, data, units, written);
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional) {
    return writeData(schema.unwrap(), data, units, written);
  }
  if (schema instanceof z.ZodObject && isObject(data)) {
    return writeFields(schema, data, units, isObject(written) ? written : {});
  }
  if (schema instanceof z.ZodArray && Array.isArray(data)) {
    return writeItems(schema.element, data, units, Array.isArray(written) ? written : []);
  }
  return data;
}

/** Reads what is written, without the fields of the owner, which are no data. */
const read = (schema: z.core.$ZodType, written: unknown) =>
  z.safeParse(schema, withoutOwnFields(written));

const reads = (schema: z.core.$ZodType, written: unknown, data: unknown): boolean => {
  const result = read(schema, written);
  return result.success && isSameData(result.data, data);
};

/** The first form that reads as the data. */
function writeOption(
  schema: z.core.$ZodType,
  options: readonly z.core.$ZodType[],
  data: unknown,
  units: UnitSystem,
  written: unknown,
): unknown {
  let first: unknown;
  for (const option of options) {
    const form = writeData(option, data, units, written);
    if (reads(schema, form, data)) return form;
    first ??= form;
  }
  // The data break a rule of the schema: the file that is written is read again, and refused there.
  return first;
}

type Fields = Readonly<Record<string, unknown>>;

/** The fields in the order of the file, and each new one after the field it follows in the schema. */
function writeFields(
  { shape }: z.ZodObject,
  data: Fields,
  units: UnitSystem,
  written: Fields,
): Fields {
  const known = Object.keys(shape);
  const isKnown = (key: string) => Object.hasOwn(shape, key);
  const kept = Object.keys(written).filter((key) => !isKnown(key) || data[key] !== undefined);
  const order = known.reduce<readonly string[]>((keys, key, i) => {
    if (data[key] === undefined || keys.includes(key)) return keys;
    const before = known.slice(0, i).findLast((each) => keys.includes(each));
    return keys.toSpliced(before === undefined ? 0 : keys.indexOf(before) + 1, 0, key);
  }, kept);
  return Object.fromEntries(
    order.map((key) => {
      const was = Object.hasOwn(written, key) ? written[key] : undefined;
      if (!isKnown(key)) return [key, was];
      return [key, writeData(shape[key] as z.core.$ZodType, data[key], units, was)];
    }),
  );
}

function writeItems(
  item: z.core.$ZodType,
  data: readonly unknown[],
  units: UnitSystem,
  written: readonly unknown[],
): readonly unknown[] {
  const known = written.map((each) => read(item, each).data);
  // An item in the place of another one that has a name is not that one with another name.
  const byPlaceUnnamed = byPlace(known, data).map(
    (keyOf) => (each: unknown, i: number) =>
      byName(each, i) === undefined ? keyOf(each, i) : undefined,
  );
  const was = matched(known, data, [asJson, byName, butForName, ...byPlaceUnnamed]);
  return data.map((each, i) => {
    const from = was[i];
    return writeData(item, each, units, from === undefined ? undefined : written[from]);
  });
}
