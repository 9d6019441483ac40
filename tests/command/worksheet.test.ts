import { printWorksheet, worksheet } from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';
import { captured } from './captured.js';

const sheet = worksheet({ about: 'ring gap', seed: 7, units: 'metric', count: 3 });
const asked = ['worksheet', 'ring', 'gap', '--seed', '7', '--count', '3', '--units', 'metric'];

describe('crankwright worksheet', () => {
  it('prints the sheet, and how to print it again', async () => {
    const { code, out } = await captured([...asked, '--answers']);
    expect(code).toBe(0);
    expect(out).toContain(printWorksheet(sheet, { format: 'text', answers: true }));
    const [, again = ''] = /crankwright (worksheet .*)\n$/.exec(out) ?? [];
    expect((await captured([...again.split(' '), '--answers'])).out).toBe(out);
    const markdown = await captured([...asked, '--markdown']);
    expect(markdown.out).toContain(printWorksheet(sheet, { format: 'markdown' }));
  });

  it('checks answers', async () => {
    const right = sheet.problems[1]?.answer.text ?? expect.fail();
    const { out } = await captured([...asked, '--check', `2: ${right}`, '--check', '1: 5']);
    expect(out).toBe(
      '2: right.\n1: wrong. A number without its unit is no measurement. Write the unit.\n',
    );
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
    [['worksheet', 'oil', '--check', '99: 22 thou'], '--check: "99: 22 thou" is not the number'],
    [['worksheet', 'oil', '--units', 'feet'], '--units: "feet" is not'],
  ])('refuses %j', async (argv, complaint) => {
    const { code, err } = await captured(argv);
    expect(code).toBe(2);
    expect(err).toContain(complaint);
  });
});
