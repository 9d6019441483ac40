import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fields } from '../../src/reading/fields.js';
import { markOf } from '../../src/reading/marks.js';
import { shedSections } from '../../src/shed/schema.js';

/** The paths of the fields that are read into something else and could not be written back. */
function unwritten(schema: z.core.$ZodType, path: string): readonly string[] {
  const { write, options } = markOf(schema);
  if (write) return [];
  if (options) {
    const each = options.map((option) => unwritten(option, path));
    return each.some((paths) => paths.length === 0) ? [] : each.flat();
  }
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional) {
    return unwritten(schema.unwrap(), path);
  }
  if (schema instanceof z.ZodObject) {
    return Object.entries<z.core.$ZodType>(schema.shape).flatMap(([key, field]) =>
      unwritten(field, `${path}.${key}`),
    );
  }
  if (schema instanceof z.ZodArray) return unwritten(schema.element, `${path}[]`);
  if (schema instanceof z.ZodRecord) return unwritten(schema.valueType, `${path}.*`);
  // What is not read into something else is written as it is.
  return schema instanceof z.ZodPipe ? [path] : [];
}

describe('every field of a shed file', () => {
  it('has beside its reader what writes it', () => {
    expect(unwritten(fields(shedSections), 'shed')).toEqual([]);
  });

  it('is asked for: a field that is only read is found', () => {
    const read = z.string().transform((text) => text.length);
    const schema = fields({ wall: z.array(fields({ size: read })).optional() });
    expect(unwritten(schema, 'shed')).toEqual(['shed.wall[].size']);
  });
});
