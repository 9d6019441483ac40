import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterMachining, readShed, writeShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { writeWhole } from '../../src/command/whole-file.js';
import { plainShed } from '../shed/sheds.js';
import { captured } from './captured.js';

const shed = JSON.stringify(plainShed(), null, 2);
const work = JSON.stringify({
  version: 1,
  on: '2026-05-01',
  parts: [{ name: 'head B', done: [{ work: 'skim head' }], flatness: '0.001 in' }],
  boxes: [{ part: 'rods A', feature: 'rod A1', reading: '' }],
});
const after = writeShed(afterMachining(readShed(shed), work));
const files = { 'shed.json': shed, 'work.json': work, 'new.json': after };

describe('crankwright done', () => {
  it('prints the shed file with what came back, and says which boxes are empty', async () => {
    expect(await captured(['done', 'shed.json', 'work.json'], { files })).toEqual({
      code: 0,
      out: after,
      err: 'crankwright: not filled in: rods A, rod A1\n',
    });
  });

  it('writes it to a file, over one that is there only with --force', async () => {
    const written: unknown[] = [];
    const writeFile = async (...call: readonly unknown[]) => {
      written.push(call);
    };
    const words = ['done', 'shed.json', 'work.json', '--output', 'shed.json'];
    const { code, out } = await captured([...words, '--force'], { files, writeFile });
    expect([code, out]).toEqual([0, '']);
    await captured(words, { files, writeFile });
    expect(written).toEqual([
      ['shed.json', after, { force: true }],
      ['shed.json', after, { force: false }],
    ]);
  });

  it('takes the readings of a CSV into the file, and says so', async () => {
    const words = ['done', 'examples/pump-set-shed.json', 'work.json'];
    const csv = 'examples/pump-set-shed-readings.csv';
    const { code, out, err } = await captured([...words, '--readings', csv], {
      files: {
        'work.json': JSON.stringify({ version: 1, parts: [{ name: 'block A', what: 'washed' }] }),
      },
    });
    expect(code).toBe(0);
    expect(err).toContain('leave --readings out from now on');
    expect(readShed(out).blocks?.[0]?.bores?.[0]?.readings?.length).toBeGreaterThan(3);
  });

  it('warns that readings of before the work may be in a CSV that was not given', async () => {
    const grind = { done: [{ work: 'grind rod journals' }] };
    const done = async (name: string) => {
      const made = { version: 1, parts: [{ name, ...grind }] };
      const words = ['done', 'examples/pump-set-shed.json', 'work.json'];
      return captured(words, { files: { 'work.json': JSON.stringify(made) } });
    };
    const { code, err } = await done('crankshaft A');
    expect(code).toBe(0);
    expect(err).toMatch(
      /no readings of rod 1, rod 2 of "crankshaft A"; if a CSV has them, they are of before this work/,
    );
    const read = { version: 1, parts: [{ name: 'crankshaft B', ...grind }] };
    const words = ['done', 'shed.json', 'read.json'];
    const quiet = await captured(words, { files: { ...files, 'read.json': JSON.stringify(read) } });
    expect(quiet.err).toBe('');
  });

  it('refuses work of a day after today, at its place in the record', async () => {
    const early = await captured(['done', 'shed.json', 'work.json'], {
      files,
      today: '2026-04-30',
    });
    expect([early.code, early.out]).toEqual([1, '']);
    expect(early.err).toContain('on: is 2026-05-01, which is after today, 2026-04-30');
    expect(early.err).not.toContain('history');
  });

  it.each<[string, readonly string[], number, string]>([
    ['no record of work', ['done', 'shed.json'], 2, 'done needs a shed file and a record of work'],
    ['a third file', ['done', 'a', 'b', 'c'], 2, '"c" is one too many'],
    ['--force alone', ['done', 'shed.json', 'work.json', '--force'], 2, '--force needs --output'],
    ['a missing file', ['done', 'shed.json', 'nowhere.json'], 1, 'nowhere.json: no such file'],
  ])('refuses %s', async (_, words, code, message) => {
    const refused = await captured(words, { files });
    expect([refused.code, refused.out]).toEqual([code, '']);
    expect(refused.err).toContain(message);
  });
});

describe('crankwright diff', () => {
  it('tells what changed in the shed and in the plan', async () => {
    const { code, out } = await captured(['diff', 'shed.json', 'new.json'], { files });
    expect(code).toBe(0);
    expect(out).toContain('head B (head): done: skim head (2026-05-01); flatness was read again.');
    expect(out).toMatch(/\n\n(?:The plan|It costs|Built) /);
  });

  it('says that nothing differs', async () => {
    const { out } = await captured(['diff', 'shed.json', 'shed.json'], { files });
    expect(out).toMatch(/^Nothing differs in the shed\.\n\nThe plan is the same: /);
  });
});

describe('crankwright plan --chances', () => {
  it('prints the chances after the plan, with the options that they share', async () => {
    const { crankshafts: _, ...others } = plainShed() as { readonly crankshafts?: unknown };
    const unknown = { ...others, crankshafts: [{ name: 'crankshaft X', odds: '25 %' }] };
    const given = { 'half.json': JSON.stringify(unknown) };
    const asked = ['plan', 'half.json', '--chances'];
    const { code, out } = await captured(asked, { files: given });
    expect(code).toBe(0);
    expect(out.indexOf('CHANCES')).toBeGreaterThan(out.indexOf('BEFORE YOU ACT'));
    expect(out).toContain('crankshaft X: 25 %, as you say');
    const all = [
      '--at-most',
      '1',
      '--no-buying',
      '--reserve',
      'crankshaft X',
      '--time-limit',
      '60',
    ];
    const without = await captured([...asked, ...all], { files: given });
    expect(without.out).toContain('no complete engine: more than 99 %');
  });

  it('puts them at the end of the page, and prints nothing besides', async () => {
    const { crankshafts: _, ...others } = plainShed() as { readonly crankshafts?: unknown };
    const unknown = { ...others, crankshafts: [{ name: 'crankshaft X', odds: '25 %' }] };
    const given = { 'half.json': JSON.stringify(unknown) };
    const asked = ['plan', 'half.json', '--chances', '--html'];
    let page = '';
    const { code, out, err } = await captured([...asked, 'plan.html'], {
      files: given,
      writeFile: async (_path, text) => {
        page = text;
      },
    });
    expect([code, out, err]).toEqual([0, '', 'crankwright: wrote plan.html\n']);
    expect(page.indexOf('<h2>Chances</h2>')).toBeGreaterThan(
      page.indexOf('<h2>Before you act</h2>'),
    );
    expect(page).toContain('crankshaft X: 25 %, as you say');
    expect((await captured([...asked, '-'], { files: given })).out).toBe(page);
  });

  it('goes with neither JSON nor boxes', async () => {
    for (const other of ['--json', '--build-sheet']) {
      const { code, err } = await captured(['plan', 'shed.json', '--chances', other], { files });
      expect(code).toBe(2);
      expect(err).toContain('cannot be combined');
    }
  });
});

describe('crankwright plan --boxes', () => {
  it('prints a file that done takes back as it is', async () => {
    const boxes = await captured(['plan', 'shed.json', '--boxes', 'block A'], { files });
    expect([boxes.code, boxes.err]).toEqual([0, '']);
    expect(boxes.out).toMatch(/^\{\n {2}"\$schema": "work\.schema\.json",\n/);
    const back = await captured(['done', 'shed.json', 'boxes.json'], {
      files: { ...files, 'boxes.json': boxes.out },
    });
    expect([back.code, back.out]).toEqual([0, shed]);
    expect(back.err).toContain('not filled in: crankshaft');
  });

  it.each(['engine 1', 'Engine 1', '1'])(
    'takes the engine as the plan numbers it: %s',
    async (it) => {
      const byName = await captured(['plan', 'shed.json', '--boxes', 'block A'], { files });
      const byNumber = await captured(['plan', 'shed.json', '--boxes', it], { files });
      expect(byNumber).toEqual(byName);
      const plan = await captured(['plan', 'shed.json'], { files });
      expect(plan.out).toMatch(/^ENGINE 1: block A$/m);
    },
  );

  it.each(['block X', 'engine 0', 'engine 99', 'magneto'])(
    'names the engines of the plan where another is asked for: %s',
    async (other) => {
      const { code, err } = await captured(['plan', 'shed.json', '--boxes', other], { files });
      expect(code).toBe(2);
      expect(err).toContain(`"${other}" is not an engine of the plan; `);
      expect(err).toContain('the plan builds engine 1 (block A)');
    },
  );

  it('asks whether the nearest was meant', async () => {
    const { err } = await captured(['plan', 'shed.json', '--boxes', 'block X'], { files });
    expect(err).toContain('did you mean "block');
  });
});

describe('a file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'record-'));
  const path = join(folder, 'shed.json');

  it('is written as a whole, and one that is there is left as it was without force', async () => {
    await writeWhole(path, 'one', { force: false });
    await expect(writeWhole(path, 'two', { force: false })).rejects.toMatchObject({
      code: 'EEXIST',
    });
    expect(readFileSync(path, 'utf8')).toBe('one');
    await writeWhole(path, 'three', { force: true });
    expect(readFileSync(path, 'utf8')).toBe('three');
    expect(readdirSync(folder)).toEqual(['shed.json']);
  });

  it('is as it was where the new one cannot be written', async () => {
    writeFileSync(path, 'kept');
    const endless = { toString: () => 'x' } as unknown as string;
    await expect(writeWhole(path, endless, { force: true })).rejects.toThrow();
    expect(readFileSync(path, 'utf8')).toBe('kept');
    expect(readdirSync(folder)).toEqual(['shed.json']);
  });
});
