// Writes the JSON Schemas that are shipped beside the built package.
import { writeFileSync } from 'node:fs';
import { shedSchema } from '../src/shed/json-schema.js';
import { sheetSchema } from '../src/sheet/json-schema.js';

for (const [name, schema] of Object.entries({ sheet: sheetSchema(), shed: shedSchema() })) {
  const file = new URL(`../dist/${name}.schema.json`, import.meta.url);
  writeFileSync(file, `${JSON.stringify(schema, null, 2)}\n`);
}
