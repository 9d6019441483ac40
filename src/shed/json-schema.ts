import { fields, type JsonSchema, jsonSchemaOf } from '../reading/index.js';
import { shedSections } from './schema.js';

/**
 * JSON Schema of a shed file, draft 2020-12, for editors that check a file while you write it. It
 * knows the fields and which of them are required. Only `readShed` checks the quantities and prices,
 * and whether the parts belong to one engine. Readings that a CSV file may give are not required.
 *
 * @returns a new schema, plain JSON
 * @example
 * ```ts
 * shedSchema().required; // ["version", "shed", "units", "engine"]
 * ```
 */
export function shedSchema(): JsonSchema {
  return jsonSchemaOf('Shed of parts of one kind of engine', fields(shedSections), true);
}
