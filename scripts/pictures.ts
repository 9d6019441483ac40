// Writes the pictures that docs/pictures.md and the lessons show.
import { mkdirSync, writeFileSync } from 'node:fs';
import { picturesOfExamples } from './pictures-of-examples.js';
import { picturesOfLessons } from './pictures-of-lessons.js';

const folder = new URL('../docs/pictures/', import.meta.url);
mkdirSync(folder, { recursive: true });
const pictures = [...(await picturesOfExamples()), ...(await picturesOfLessons())];
for (const [name, picture] of pictures) {
  writeFileSync(new URL(name, folder), `${picture}\n`);
}
