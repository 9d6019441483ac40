import { fields, type JsonSchema, jsonSchemaOf } from '../reading/index.js';
import { sections } from './schema.js';

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
  return jsonSchemaOf('Inspection sheet of one engine', fields(sections), false);
}
