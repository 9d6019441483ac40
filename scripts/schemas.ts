// Writes the JSON Schemas that are shipped beside the built package.
import { writeFileSync } from 'node:fs';
import { shedSchema } from '../src/shed/json-schema.js';
import { workSchema } from '../src/shed/record/work-schema.js';
import { sheetSchema } from '../src/sheet/json-schema.js';

const schemas = { sheet: sheetSchema(), shed: shedSchema(), work: workSchema() };
for (const [name, schema] of Object.entries(schemas)) {
  const file = new URL(`../dist/${name}.schema.json`, import.meta.url);
  writeFileSync(file, `${JSON.stringify(schema, null, 2)}\n`);
}
