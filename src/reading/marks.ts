import type { z } from 'zod';
import type { UnitSystem } from '../quantities/index.js';

/** Extra data on a schema, beyond what it accepts. */
interface Mark {
  /** An object whose valid fields are kept if others are not valid. */
  readonly partial?: true;
  /** The schemas it chooses from. */
  readonly options?: readonly z.ZodType[];
  /** A field that a CSV of readings may give instead. */
  readonly inCsv?: true;
  /** What the file holds for data that the schema gives: the inverse of reading. */
  readonly write?: (data: never, units: UnitSystem) => unknown;
  /** Keywords for JSON Schema that cannot be derived. */
  readonly json?: () => z.core.JSONSchema.BaseSchema;
}

const marks = /* @__PURE__ */ new WeakMap<z.core.$ZodType, Mark>();

/** Adds marks to a schema. Refining it afterwards makes a new schema without marks. */
export function marked<T extends z.ZodType>(schema: T, mark: Mark): T {
  marks.set(schema, { ...markOf(schema), ...mark });
  return schema;
}

/** The marks of a schema. */
export const markOf = (schema: z.core.$ZodType): Mark => marks.get(schema) ?? {};
