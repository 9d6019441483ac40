// Writes the pictures that docs/pictures.md shows.
import { mkdirSync, writeFileSync } from 'node:fs';
import { picturesOfExamples } from './pictures-of-examples.js';

const folder = new URL('../docs/pictures/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, picture] of await picturesOfExamples()) {
  writeFileSync(new URL(name, folder), `${picture}\n`);
}
