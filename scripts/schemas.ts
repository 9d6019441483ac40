// Writes the JSON Schemas that are shipped beside the built package.
import { writeFileSync } from 'node:fs';
import { sheetSchema } from '../src/shelf/sheet-json-schema.js';
import { shelfSchema } from '../src/shelf/shelf-json-schema.js';

for (const [name, schema] of Object.entries({ sheet: sheetSchema(), shelf: shelfSchema() })) {
  const file = new URL(`../dist/${name}.schema.json`, import.meta.url);
  writeFileSync(file, `${JSON.stringify(schema, null, 2)}\n`);
}
