import { z } from 'zod';
import { fields } from './fields.js';
import { markOf } from './marks.js';
import { sections } from './schema.js';
import { shelfSections } from './shelf-schema.js';

/** A JSON Schema of a file, draft 2020-12: plain JSON. */
export interface JsonSchema {
  /** The draft that it follows. */
  readonly $schema: string;
  /** What it is of. */
  readonly title: string;
  /** The fields of the file, each with a schema of its own. */
  readonly properties: Readonly<Record<string, unknown>>;
  /** Those of them that must be there. */
  readonly required: readonly string[];
  /** Every other keyword. */
  readonly [keyword: string]: unknown;
}

/**
 * JSON Schema of an inspection sheet, draft 2020-12, for editors that check a file while it is
 * written. It knows the fields, and which must be there; that texts are quantities of the right
 * size, and that the readings go together, only `readSheet` tells.
 *
 * @returns a fresh schema, plain JSON
 * @example
 * ```ts
 * sheetSchema().required; // ["version", "engine", "units"]
 * ```
 */
export function sheetSchema(): JsonSchema {
  return schemaOfFile('Inspection sheet of one engine', fields(sections), false);
}

/**
 * JSON Schema of a shelf of parts, draft 2020-12, for editors that check a file while it is
 * written. It knows the fields, and which must be there; that texts are quantities and prices,
 * and that the parts are of one engine, only `readShelf` tells. Readings that stand in
 * a CSV file are not missed.
 *
 * @returns a fresh schema, plain JSON
 * @example
 * ```ts
 * shelfSchema().required; // ["version", "shelf", "units", "engine"]
 * ```
 */
export function shelfSchema(): JsonSchema {
  return schemaOfFile('Shelf of parts of one kind of engine', fields(shelfSections), true);
}

function schemaOfFile(title: string, file: z.ZodType, withCsv: boolean): JsonSchema {
  const { $schema, ...schema } = schemaOf(file, withCsv);
  return { $schema, title, ...schema } as JsonSchema;
}

type Schema = z.core.JSONSchema.BaseSchema;

function schemaOf(schema: z.ZodType, withCsv: boolean): Schema {
  return z.toJSONSchema(schema, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      const { options, json } = markOf(zodSchema);
      if (options) jsonSchema.anyOf = options.map((option) => partOf(option, withCsv));
      if (withCsv && zodSchema instanceof z.ZodObject && jsonSchema.required) {
        const { shape } = zodSchema;
        jsonSchema.required = jsonSchema.required.filter((key) => !markOf(shape[key]).inCsv);
      }
      Object.assign(jsonSchema, json?.());
    },
  });
}

/** The schema of a part of a file: which draft it follows is said once, at the top. */
function partOf(schema: z.ZodType, withCsv: boolean): Schema {
  const { $schema, ...part } = schemaOf(schema, withCsv);
  return part;
}
