import type { z } from 'zod';

/** What is known of a schema beside what it accepts. */
interface Mark {
  /** It is an object whose sound fields are of use where others are not. */
  readonly partial?: true;
  /** It reads a value by one of these. */
  readonly options?: readonly z.ZodType[];
  /** It is a field that a CSV of readings may fill instead. */
  readonly inCsv?: true;
  /** What JSON Schema cannot see in it. */
  readonly json?: () => z.core.JSONSchema.BaseSchema;
}

const marks = /* @__PURE__ */ new WeakMap<z.core.$ZodType, Mark>();

/** Marks a schema, beside the marks that it has. One that is refined afterwards is another and has no mark. */
export function marked<T extends z.ZodType>(schema: T, mark: Mark): T {
  marks.set(schema, { ...markOf(schema), ...mark });
  return schema;
}

/** What a schema is marked with. */
export const markOf = (schema: z.core.$ZodType): Mark => marks.get(schema) ?? {};
