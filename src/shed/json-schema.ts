import { fields, type JsonSchema, jsonSchemaOf } from '../reading/index.js';
import { shedSections } from './schema.js';

/**
 * JSON Schema of a shed of parts, draft 2020-12, for editors that check a file while it is
 * written. It knows the fields, and which must be there; that texts are quantities and prices,
 * and that the parts are of one engine, only `readShed` tells. Readings that stand in
 * a CSV file are not missed.
 *
 * @returns a fresh schema, plain JSON
 * @example
 * ```ts
 * shedSchema().required; // ["version", "shed", "units", "engine"]
 * ```
 */
export function shedSchema(): JsonSchema {
  return jsonSchemaOf('Shed of parts of one kind of engine', fields(shedSections), true);
}
