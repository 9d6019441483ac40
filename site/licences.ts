import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Metafile } from 'esbuild';

/** The licences of all packages that are bundled into scripts, one after the other. */
export function licencesOf(outputs: Metafile['outputs'], root: string): string {
  const files = Object.values(outputs).flatMap(({ inputs }) => Object.keys(inputs));
  const folders = files.flatMap(
    (file) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0] ?? [],
  );
  return [...new Set(folders)]
    .sort()
    .map((folder) => `${folder.split('node_modules/').at(-1)}\n\n${licenceIn(join(root, folder))}`)
    .join('\n\n----\n\n');
}

/** The text of a licence; where a package holds none, what it says of it. */
function licenceIn(folder: string): string {
  const name = readdirSync(folder).find((file) => /^(?:licen[cs]e|copying)/i.test(file));
  if (name !== undefined) return readFileSync(join(folder, name), 'utf8').trim();
  const { license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const who = typeof author === 'string' ? author : author?.name;
  if (typeof license !== 'string') throw new Error(`${folder} names no licence`);
  return `${license}${who === undefined ? '' : `, by ${who}`}; the package holds no text of it.`;
}
