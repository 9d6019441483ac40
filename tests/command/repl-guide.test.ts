import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runText } from '../../src/command/prompt/run-text.js';
import { Session } from '../../src/command/prompt/session.js';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const lessons = readdirSync(`${root}/docs/lessons`).map((name) => `docs/lessons/${name}`);
/** The blocks of a guide that begin with a sign: `> ` at the prompt, `$ ` on the command line. */
const blocksOf = (file: string, sign: '> ' | '$ '): readonly string[] =>
  [...readFileSync(`${root}/${file}`, 'utf8').matchAll(/```\w+\n([\s\S]*?)```/g)]
    .map(([, block = '']) => block)
    .filter((block) => block.startsWith(sign));

/** What is typed: lines behind `> `, which go on behind `... `. */
const typedIn = (block: string): readonly string[] =>
  [...block.matchAll(/^> .*(?:\n\.\.\. .*)*$/gm)].map(([text]) => text);

describe.each([['docs/repl.md'], ['README.md'], ...lessons.map((file) => [file])])('%s', (file) => {
  it('shows at the prompt what the prompt says', async () => {
    const shown = blocksOf(file, '> ');
    expect(shown.length).toBeGreaterThan(0);
    const session = await Session.begin('inch');
    for (const block of shown) {
      const said = typedIn(block).map((text) => {
        const { done, notes, wrong } = runText(session, text.replaceAll(/^(?:>|\.\.\.) /gm, ''));
        const values = done.flatMap(({ value, silent }) => (silent ? [] : session.show(value)));
        return [text, ...notes, ...values, ...(wrong ? [wrong.message] : [])].join('\n');
      });
      expect(`${said.join('\n')}\n`).toBe(block);
    }
  });
});

describe.each([...lessons, 'docs/formula-cards.md'])('%s', (file) => {
  it('shows what the command prints', async () => {
    const shown = blocksOf(file, '$ ');
    expect(shown.length).toBeGreaterThan(0);
    for (const block of shown) {
      const [typed = '', ...printed] = block.trimEnd().split('\n');
      const [, line] = /^\$ npx crankwright (.*)$/.exec(typed) ?? expect.fail();
      const words = [...(line ?? '').matchAll(/'([^']*)'|(\S+)/g)].map(([, a, b]) => a ?? b ?? '');
      // The examples stand in the package that a reader has installed.
      const { out } = await captured(
        words.map((word) => word.replace('node_modules/crankwright/', '')),
      );
      // A line of three dots stands for what is left out.
      const parts = printed.join('\n').split(/^\.\.\.$/m);
      if (parts.length === 1) expect(out.trimEnd()).toBe(parts[0]);
      for (const part of parts) expect(out).toContain(part.replaceAll(/^\n|\n$/g, ''));
    }
  });
});

describe.each(lessons)('%s', (file) => {
  it('is a whole lesson: readings, a picture, the formula, where they deceive, an exercise', () => {
    const text = readFileSync(`${root}/${file}`, 'utf8');
    const headings = [...text.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    expect(headings).toEqual(
      expect.arrayContaining([
        'What we want to know',
        'The readings',
        'The formula',
        'Where the readings deceive',
        'Exercise',
        'What was not measured',
      ]),
    );
    expect(text).toMatch(/const picture = /);
    expect(text).toMatch(/crankwright worksheet .*--check/);
    expect(text).toMatch(/manual/);
  });
});
