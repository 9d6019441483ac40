// Writes the types that `require` finds: beside every `.d.ts` of the build a `.d.cts`. They differ in the ending of the
// files of ours that they import, and in nothing else. To bundle them a second time took a third of the build.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const dist = new URL('../dist/', import.meta.url);

for (const name of readdirSync(dist).filter((file) => file.endsWith('.d.ts'))) {
  const types = readFileSync(new URL(name, dist), 'utf8');
  const required = types.replace(/^((?:import|export)\b.* '\.\/[^']+)\.js';$/gm, "$1.cjs';");
  const left = /['"]\.[^'"]*\.js['"]/.exec(required);
  if (left) throw new Error(`${name} imports ${left[0]} in a way that this script does not know`);
  writeFileSync(new URL(name.replace(/ts$/, 'cts'), dist), required);
}
