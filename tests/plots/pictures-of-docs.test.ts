import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { guidesWithPictures, picturesOfGuides } from '../../scripts/pictures-of-guides.js';
import { root } from '../support/repo.js';
import { expectSound } from './seen.js';

const folder = `${root}/docs/pictures`;
let drawn: ReadonlyMap<string, string>;
beforeAll(async () => {
  drawn = await picturesOfGuides();
}, 120_000);

it('are what is drawn now: else run npm run pictures', () => {
  const kept = readdirSync(folder).map((name) => [name, readFileSync(`${folder}/${name}`, 'utf8')]);
  expect(new Map(kept as [string, string][])).toEqual(
    new Map([...drawn].sort().map(([name, text]) => [name, `${text}\n`])),
  );
});

it('are each drawn by the block of code right before them, and no block draws one that is not shown', () => {
  const guides = guidesWithPictures().map((path) => readFileSync(`${root}/docs/${path}`, 'utf8'));
  const drawing = guides.flatMap((guide) => guide.match(/^const picture = /gm) ?? []);
  expect(drawing).toHaveLength(drawn.size);
  const shown = guides
    .flatMap((guide) => [...guide.matchAll(/\]\((?:\.\.\/)?pictures\/([\w-]+\.svg)\)/g)])
    .map(([, name]) => name);
  expect(shown.sort()).toEqual([...drawn.keys()].sort());
});

it('are sound, and small', () => {
  for (const svg of drawn.values()) {
    expectSound(svg);
    expect(svg.length).toBeLessThan(40_000);
  }
});
