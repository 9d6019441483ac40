// Writes the pictures that docs/pictures.md and the lessons show.
import { mkdirSync, writeFileSync } from 'node:fs';
import { picturesOfGuides } from './pictures-of-guides.js';

const folder = new URL('../docs/pictures/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const [name, picture] of await picturesOfGuides()) {
  writeFileSync(new URL(name, folder), `${picture}\n`);
}
