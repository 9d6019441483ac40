import { fields, type JsonSchema, jsonSchemaOf } from '../reading/index.js';
import { sections } from './schema.js';

/**
 * JSON Schema of an inspection sheet, draft 2020-12, for editors that check a file while you
 * write it. It knows the fields and which of them are required. Only `readSheet` checks the
 * quantities and whether the readings agree.
 *
 * @returns a new schema, plain JSON
 * @example
 * ```ts
 * sheetSchema().required; // ["version", "engine", "units"]
 * ```
 */
export function sheetSchema(): JsonSchema {
  return jsonSchemaOf('Inspection sheet of one engine', fields(sections), false);
}
