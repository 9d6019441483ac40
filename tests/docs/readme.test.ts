import { readdirSync, readFileSync } from 'node:fs';
import { inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { HELP } from '../../src/command/help.js';

const read = (name: string) => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');
const readme = read('README.md');
/** Every fenced block, with its language. */
const blocks = [...readme.matchAll(/^```(\w+)\n([\s\S]*?)\n```$/gm)].map(
  ([, language = '', text = '']) => ({ language, text }),
);

describe('the README', () => {
  it('shows lines of a report just as they are printed now', () => {
    const printed = report(inspect(readSheet(read('examples/pump-set-inch.json'))));
    // What is typed at the prompt begins with one; tests/command/repl-guide.test.ts tries it.
    const [shown, ...others] = blocks.filter(
      ({ language, text }) => language === 'text' && !text.startsWith('> '),
    );
    expect(others).toEqual([]);
    expect(shown?.text.split('\n').length).toBeGreaterThan(7);
    expect(printed).toContain(`\n${shown?.text}\n`);
  });

  it('shows a report, a clearance at the prompt, two commands, a command line and the library, in this order', () => {
    const first = blocks.slice(0, 5);
    expect(first.map(({ language }) => language)).toEqual(['text', 'text', 'sh', 'sh', 'ts']);
    expect(first[1]?.text).toMatch(/^> clearance = oilClearance/);
    expect(first[2]?.text).toMatch(/^npm ci\b.*\nnpm test\b.*$/);
    expect(first[3]?.text).toMatch(/^npx crankwright report .*$/);
    expect(first[4]?.text).toContain("await import('crankwright')");
  });

  it('tells a teacher how to print a sheet in mm and how to check an answer', () => {
    const row = /^\| practise, or teach a class .*$/m.exec(readme)?.[0] ?? '';
    const options = [...row.matchAll(/--[a-z]+/g)].map(([option]) => option);
    expect(options).toEqual(['--seed', '--answers', '--units', '--check', '--check']);
    for (const option of options) expect(HELP).toContain(`\n  ${option} `);
  });

  it('leads to every lesson', () => {
    const lessons = readdirSync(new URL('../../docs/lessons/', import.meta.url));
    expect(lessons.length).toBe(4);
    for (const lesson of lessons) expect(readme).toContain(`(docs/lessons/${lesson})`);
  });

  it('imports as a plain prompt of Node takes it, wherever it awaits an import', () => {
    const typed = blocks.filter(({ text }) => text.includes('await import('));
    expect(typed.length).toBeGreaterThan(2);
    const AsyncFunction = (async () => {}).constructor as new (code: string) => unknown;
    for (const { text } of typed) expect(() => new AsyncFunction(text)).not.toThrow();
  });

  it('calls only commands that there are', () => {
    const calls = [...readme.matchAll(/^npx crankwright ([a-z]+)/gm)].map(([, name]) => name);
    expect(calls.length).toBeGreaterThan(2);
    for (const name of calls) expect(HELP).toContain(`\n  crankwright ${name} `);
    // A newcomer has one engine, or a shed.
    for (const of of ['sheet', 'shed'])
      expect(readme).toContain(`\nnpx crankwright new ${of} --name`);
  });

  it('names every entry point of the package', () => {
    const { exports } = JSON.parse(read('package.json')) as { exports: object };
    const rooms = Object.keys(exports).filter((name) => /^\.\/[\w-]+$/.test(name));
    expect(rooms.length).toBeGreaterThan(12);
    const rows = [...readme.matchAll(/^\| `crankwright\/([\w-]+)`/gm)].map(([, name]) => name);
    expect(rows.sort()).toEqual(rooms.map((name) => name.slice(2)).sort());
  });
});
