import { z } from 'zod';
import { fields, type JsonSchema, jsonSchemaOf, list, name } from '../../reading/index.js';
import { parts, placeSchemas } from '../schema.js';
import { saidOfWork, workSections } from './work-sections.js';

/**
 * JSON Schema of a record of work, draft 2020-12, for editors that check a file while you write it. It knows the fields
 * of every part of a shed, and none of them but the name is required. Only `afterMachining` knows which part a name
 * means, and checks the quantities.
 *
 * @returns a new schema, plain JSON
 * @example
 * ```ts
 * workSchema().required; // ["version"]
 * ```
 */
export function workSchema(): JsonSchema {
  const part = fields({ ...partFields(), ...placeLists(), ...saidOfWork });
  const file = fields({ ...workSections, parts: list(part, 0).optional() });
  return jsonSchemaOf('Record of work on the parts of a shed', file, false);
}

/** The fields of parts of every section; one that several have may be as in any of them. */
function partFields(): z.ZodRawShape {
  const all = Object.values(parts).flatMap((shape) => Object.entries(shape as z.ZodRawShape));
  return Object.fromEntries(
    [...new Set(all.map(([field]) => field))].map((field) => {
      const options = new Set(all.filter(([its]) => its === field).map(([, schema]) => schema));
      const [one, ...others] = options;
      return [field, others.length === 0 ? optional(one) : z.union([...options]).optional()];
    }),
  ) as z.ZodRawShape;
}

/** The lists of places, each place as far as it was measured. */
function placeLists(): z.ZodRawShape {
  return Object.fromEntries(
    Object.entries(placeSchemas).map(([field, { shape }]) => {
      const its = Object.entries(shape as z.ZodRawShape).map(([key, schema]) => [
        key,
        optional(schema),
      ]);
      const place = { ...Object.fromEntries(its), name, repaired: saidOfWork.repaired };
      return [field, list(fields(place), 0).optional()];
    }),
  );
}

const optional = (schema: unknown) => (schema as z.ZodType).optional();
