import { z } from 'zod';
import { markOf } from './marks.js';

/** A list in which an item that could not be read is undefined; the others keep their places. */
export type Gaps<T> = readonly (T | undefined)[];

/** The readable part of a value: all of it, or its valid fields and items. */
export interface Salvage {
  readonly sound: unknown;
  /** Its problems; none if all of it is valid. */
  readonly issues: readonly z.core.$ZodIssue[];
}

/**
 * Reads a value and keeps its valid parts. A list keeps gaps for bad items. An object marked
 * `partial` keeps its valid fields and has undefined for the others. Any other bad value is lost.
 */
export function salvage(schema: z.core.$ZodType, value: unknown): Salvage {
  const result = z.safeParse(schema, value);
  if (result.success) return { sound: result.data, issues: [] };
  const { issues } = result.error;
  return { sound: soundIn(inside(schema), value, issues), issues };
}

function soundIn(
  schema: z.core.$ZodType,
  value: unknown,
  issues: readonly z.core.$ZodIssue[],
): unknown {
  if (schema instanceof z.ZodArray && Array.isArray(value)) {
    // A list of the wrong length is bad as a whole.
    if (issues.some(({ path }) => path.length === 0)) return undefined;
    return value.map((each: unknown) => salvage(schema.element, each).sound);
  }
  const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
  if (!(schema instanceof z.ZodObject) || !markOf(schema).partial || !isObject) return undefined;
  const given = value as Readonly<Record<string, unknown>>;
  const read = Object.entries<z.core.$ZodType>(schema.shape).flatMap(([key, field]) => {
    const { sound, issues } = salvage(field, Object.hasOwn(given, key) ? given[key] : undefined);
    return sound === undefined && issues.length === 0 ? [] : [[key, sound] as const];
  });
  return Object.fromEntries(read);
}

/** Whether a field was given or required, but could not be read. */
export function isLost(salvaged: object, field: string): boolean {
  return (
    Object.hasOwn(salvaged, field) && (salvaged as Record<string, unknown>)[field] === undefined
  );
}

/** The schema without what makes it optional. */
function inside(schema: z.core.$ZodType): z.core.$ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional
    ? inside(schema.unwrap())
    : schema;
}
