import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { picturesOfExamples } from '../../scripts/pictures-of-examples.js';
import { picturesOfLessons } from '../../scripts/pictures-of-lessons.js';
import { root } from '../support/repo.js';
import { expectSound } from './seen.js';

const folder = `${root}/docs/pictures`;
const lessons = `${root}/docs/lessons`;
let drawn: ReadonlyMap<string, string>;
beforeAll(async () => {
  drawn = new Map([...(await picturesOfExamples()), ...(await picturesOfLessons())]);
}, 120_000);

it('are what is drawn now: else run npm run pictures', () => {
  const kept = readdirSync(folder).map((name) => [name, readFileSync(`${folder}/${name}`, 'utf8')]);
  expect(new Map(kept as [string, string][])).toEqual(
    new Map([...drawn].sort().map(([name, text]) => [name, `${text}\n`])),
  );
});

it('are all shown, in the guide or in a lesson', () => {
  const guides = [
    `${root}/docs/pictures.md`,
    ...readdirSync(lessons).map((name) => `${lessons}/${name}`),
  ];
  const shown = guides
    .map((path) => readFileSync(path, 'utf8'))
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
