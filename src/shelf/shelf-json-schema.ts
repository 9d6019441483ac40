import { fields } from './fields.js';
import { type JsonSchema, jsonSchemaOf } from './json-schema.js';
import { shelfSections } from './shelf-schema.js';

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
  return jsonSchemaOf('Shelf of parts of one kind of engine', fields(shelfSections), true);
}
