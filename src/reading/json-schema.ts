import { z } from 'zod';
import { markOf } from './marks.js';

/** A JSON Schema of a file, draft 2020-12: plain JSON. */
export interface JsonSchema {
  /** The draft it follows. */
  readonly $schema: string;
  /** What it describes. */
  readonly title: string;
  /** The fields of the file, each with its own schema. */
  readonly properties: Readonly<Record<string, unknown>>;
  /** The required fields. */
  readonly required: readonly string[];
  /** Every other keyword. */
  readonly [keyword: string]: unknown;
}

/** The schema of a whole file. With a CSV, the fields that the CSV can give are not required. */
export function jsonSchemaOf(title: string, file: z.ZodType, withCsv: boolean): JsonSchema {
  const { $schema, properties, ...schema } = schemaOf(file, withCsv);
  // The file may name its schema, for the editor.
  const all = { $schema: { type: 'string' }, ...properties };
  return { $schema, title, ...schema, properties: all } as JsonSchema;
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
      if (zodSchema instanceof z.ZodObject) jsonSchema.patternProperties = { '^x-': {} };
      Object.assign(jsonSchema, json?.());
    },
  });
}

/** The schema of a part of a file, without `$schema`, which belongs at the top only. */
function partOf(schema: z.ZodType, withCsv: boolean): Schema {
  const { $schema, ...part } = schemaOf(schema, withCsv);
  return part;
}
