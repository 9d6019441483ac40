import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { layoutFiles } from '../../scripts/layout-files.js';
import { filesUnder, fromRoot, root } from '../support/repo.js';

it('has the layouts that follow from the types, and no others: if not, npm run layouts', () => {
  const made = new Map([...layoutFiles()].map(([file, text]) => [`src/${file}`, text]));
  const kept = filesUnder('src', '/layouts.ts').map(fromRoot);
  expect(kept).toEqual([...made.keys()].sort());
  for (const file of kept) expect(readFileSync(`${root}/${file}`, 'utf8')).toBe(made.get(file));
});
