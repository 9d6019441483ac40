// Writes how what functions take from each other is laid out, from its types.
import { writeFileSync } from 'node:fs';
import { layoutFiles } from './layout-files.js';

for (const [file, text] of layoutFiles()) {
  writeFileSync(new URL(`../src/${file}`, import.meta.url), text);
}
