import { readFileSync } from 'node:fs';
import { cards, printWorksheet, worksheet } from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const sheet = worksheet({ about: 'ring gap', seed: 7, units: 'metric', count: 3 });
const asked = ['worksheet', 'ring', 'gap', '--seed', '7', '--count', '3', '--units', 'metric'];

describe('crankwright worksheet', () => {
  it('prints the sheet, and how to print it again', async () => {
    const { code, out } = await captured([...asked, '--answers']);
    expect(code).toBe(0);
    expect(out).toContain(printWorksheet(sheet, { format: 'text', answers: true }));
    const [, again = ''] = /npx crankwright (worksheet .*)\n$/.exec(out) ?? [];
    // As a shell splits it: words in quotes are one.
    const typed = [...again.matchAll(/"([^"]*)"|\S+/g)].map(([word, inside]) => inside ?? word);
    expect(typed[1]).toBe('ring gap');
    expect((await captured([...typed, '--answers'])).out).toBe(out);
    const markdown = await captured([...asked, '--markdown']);
    expect(markdown.out).toContain(printWorksheet(sheet, { format: 'markdown' }));
  });

  it('checks answers', async () => {
    const right = sheet.problems[1]?.answer.text ?? expect.fail();
    const { out } = await captured([...asked, '--check', `2: ${right}`, '--check', '1: 5 N·m']);
    expect(out).toBe(
      '2: right.\n1: wrong. That is the unit of another quantity. See what is asked for.\n' +
        'Checked by worksheet "ring gap" --seed 7 --count 3 --units metric\n',
    );
    // The sheet may be another than the pupil had, unless all is right by it.
    expect((await captured([...asked, '--check', `2: ${right}`])).out).toBe('2: right.\n');
  });

  it('says by which sheet it checked where no seed was given, even if all is right', async () => {
    const first = worksheet({ about: 'ring gap', seed: 1 }).problems[0]?.answer.text;
    const { out } = await captured(['worksheet', 'ring gap', '--check', `1: ${first}`]);
    expect((await captured(['worksheet', 'ring gap', '--check', '11: 3 in'])).out).toBe('');
    expect(out).toBe(
      '1: right.\nChecked by worksheet "ring gap" --seed 1 --count 10 --units inch\n',
    );
  });

  it('says in the README of two answers what is shown there', async () => {
    const readme = readFileSync(`${root}/README.md`, 'utf8');
    const shown = [...readme.matchAll(/`--check "([^"]*)"` says `([^`]*)`/g)];
    expect(shown.length).toBe(2);
    for (const [, answer = '', said = ''] of shown) {
      const asked = ['worksheet', 'bearings', '--seed', '7', '--check', answer];
      expect((await captured(asked)).out.split('\n')[0]).toBe(said);
    }
  });

  it('says in its heading what a misspelt word was read as', async () => {
    const headed = async (about: string) =>
      (await captured(['worksheet', about, '--seed', '7', '--count', '1'])).out.split('\n')[0];
    expect(await headed('shels')).toBe('Worksheet on shels (read as shells), seed 7, inch units');
    for (const about of ['shells', 'shell', 'Bearing', 'ring gaps', 'the shells', 'crush']) {
      expect(await headed(about)).toBe(`Worksheet on ${about}, seed 7, inch units`);
    }
  });

  it('says what a number without a unit was taken as', async () => {
    const { value, unit } = sheet.problems[1]?.answer ?? expect.fail();
    const { out } = await captured([...asked, '--check', `2: ${value}`, '--check', '1: 5']);
    expect(out).toMatch(`2: right, taken as ${value} ${unit}.\n1: wrong, taken as 5 mm. `);
  });

  it('checks the other answers where one has no problem', async () => {
    const checks = ['--check', '11: 3 in', '--check', '3', '--check', '1: 5 N'];
    const { code, out, err } = await captured([...asked, ...checks]);
    expect(code).toBe(2);
    expect(out).toMatch(/^1: wrong\. [^\n]*\nChecked by [^\n]*\n$/);
    expect(err).toContain('crankwright: --check: there is no problem 11; the sheet has 3\n');
    expect(err).toContain('crankwright: --check: "3" is not the number of a problem');
  });

  it('has its topics listed by --help, where a missing one is sent, and in the guide', async () => {
    const { out } = await captured(['--help']);
    const guide = readFileSync(`${root}/docs/formula-cards.md`, 'utf8');
    const topics = new Set(Object.values(cards).map(({ topic }) => topic));
    expect(topics.size).toBeGreaterThan(10);
    for (const topic of topics) {
      expect(out.replace(/\s+/g, ' ')).toMatch(new RegExp(`TOPIC is [^.]*\\b${topic}\\b`));
      expect(guide.replace(/\s+/g, ' ')).toMatch(new RegExp(`The topics are [^;]*\\b${topic}\\b`));
    }
    expect((await captured(['worksheet'])).err).toContain('crankwright --help lists them');
  });

  it.each(['', ' %$§'])('calls an answer unclear that cannot be read: "1:%s"', async (answer) => {
    const { out } = await captured([...asked, '--check', `1:${answer}`]);
    expect(out).toMatch(
      /^1: unclear\. No number with a unit can be read in that\. [^\n]*\nChecked by /,
    );
  });

  it('says once that an answer is close', async () => {
    const { value, unit } = sheet.problems[0]?.answer ?? expect.fail();
    const off = (2 * (sheet.problems[0]?.tolerance ?? 0)) / (sheet.problems[0]?.value ?? 1);
    const { out } = await captured([...asked, '--check', `1: ${value * (1 + off)} ${unit}`]);
    expect(out).toMatch(/^1: close\. Keep more digits until the last line\.\nChecked by [^\n]*\n$/);
  });

  it.each([
    [['worksheet'], 'needs a topic'],
    [['worksheet', 'soup'], 'the topic: "soup" is not'],
    [['worksheet', 'oil', '--seed', 'x'], '--seed: "x" is not a whole number'],
    [['worksheet', 'oil', '--count', '0'], '--count: 0 is not'],
    [
      ['worksheet', 'oil', '--check', '22 thou'],
      '--check: "22 thou" is not the number of a problem',
    ],
    [['worksheet', 'oil', '--check', '11: 3 in'], 'there is no problem 11; the sheet has 10'],
    [['worksheet', 'oil', '--units', 'feet'], '--units: "feet" is not'],
  ])('refuses %j', async (argv, complaint) => {
    const { code, err } = await captured(argv);
    expect(code).toBe(2);
    expect(err).toContain(complaint);
  });
});
