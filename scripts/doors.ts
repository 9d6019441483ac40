// Writes the entry points of the rooms in `core`: each passes its names on. Built by themselves they would cut
// the core into a file for every room, and a core of a dozen files starts half as slowly again as one of a few.
import { writeFileSync } from 'node:fs';
import { LIGHT } from './entries.js';

for (const room of LIGHT) {
  const names = Object.keys(await import(`../src/${room}/index.js`)).sort();
  const write = (extension: string, lines: readonly string[]) =>
    writeFileSync(new URL(`../dist/${room}.${extension}`, import.meta.url), lines.join('\n'));
  write('js', [`export { ${names.join(', ')} } from './core.js';`, '']);
  write('cjs', [
    "'use strict';",
    "const core = require('./core.cjs');",
    ...names.map((name) => `exports.${name} = core.${name};`),
    '',
  ]);
}
