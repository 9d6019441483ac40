import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { plainShed } from '../shed/sheds.js';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const examples = (name: string) => readFileSync(`${root}/examples/${name}`, 'utf8');
const [shed, csv] = [examples('pump-set-shed.json'), examples('pump-set-shed-readings.csv')];
const absent = (path: string) => Promise.reject(Object.assign(new Error(path), { code: 'ENOENT' }));
/** A folder that holds these files only. */
const folder = (files: Readonly<Record<string, string>>) => ({
  readFile: (path: string) => {
    const text = files[path];
    return text === undefined ? absent(path) : Promise.resolve(text);
  },
});

describe('forgotten readings', () => {
  it.each(['report', 'plan'])(
    'are told in one line, where a CSV of that name is there: %s',
    async (command) => {
      for (const name of ['shed-readings.csv', 'shed.csv', 'readings.csv']) {
        const said = await captured(
          [command, 'shed.json'],
          folder({ 'shed.json': shed, [name]: csv }),
        );
        expect(said).toEqual({
          code: 2,
          out: '',
          err: `crankwright: shed.json has next to no readings, but ${name} is there: add --readings ${name}\nTry crankwright --help.\n`,
        });
      }
      const within = await captured(
        [command, 'my/shed.json'],
        folder({ 'my/shed.json': shed, 'my/shed.csv': csv }),
      );
      expect(within.err).toContain('add --readings my/shed.csv\n');
    },
  );

  it('are a remark where no such file is there, as nothing need have been measured yet', async () => {
    const said = await captured(['report', 'shed.json'], folder({ 'shed.json': shed }));
    expect(said.err.split('\n')[0]).toBe(
      'crankwright: shed.json has next to no readings of its blocks, crankshafts and rods; if they are in a CSV, add --readings FILE',
    );
  });

  it('are hinted at where one housing was read and a CSV named after the shed is there', async () => {
    const { version, units, engine } = plainShed();
    const one = JSON.stringify({
      ...{ version, shed: 'one', units, engine },
      blocks: [{ name: 'A', bores: [{ name: 'c1' }, { name: 'c2' }] }],
      rods: [{ name: 'R', rods: [{ name: 'r1', housingBore: '1.7508 in' }] }],
    });
    const hint =
      'crankwright: most places in my.json have no reading, but my-readings.csv is there; if it holds them, add --readings my-readings.csv\n';
    const files = folder({ 'my.json': one, 'my-readings.csv': csv });
    expect(await captured(['report', 'my.json'], files)).toMatchObject({ code: 0, err: hint });
    expect(
      await captured(['report', 'my.json'], folder({ 'my.json': one, 'readings.csv': csv })),
    ).toMatchObject({ code: 0, err: '' });
  });

  it('are not spoken of where there are some, or nothing to read', async () => {
    const files = folder({ 'shed.json': shed, 'x.csv': csv, 'shed.csv': csv });
    const given = await captured(['report', 'shed.json', '--readings', 'x.csv'], files);
    expect([given.code, given.err]).toEqual([0, '']);
    const some = folder({ 'shed.json': JSON.stringify(plainShed()), 'shed.csv': csv });
    expect(await captured(['report', 'shed.json'], some)).toMatchObject({ code: 0, err: '' });
    const { version, units, engine } = plainShed();
    const bare = JSON.stringify({ version, shed: 'bare', units, engine });
    expect(
      await captured(['report', 'shed.json'], folder({ 'shed.json': bare, 'shed.csv': csv })),
    ).toMatchObject({ code: 0, err: '' });
  });
});

describe('names on the command line', () => {
  const tried = (...argv: readonly string[]) =>
    captured(argv, { files: { 'shed.json': JSON.stringify(plainShed()) } });

  it.each([
    [
      ['plan', 'shed.json', '--must-build', 'blok A'],
      '--must-build: "blok A" is not the name of one of the blocks. Did you mean "block A"?',
    ],
    [
      ['plan', 'shed.json', '--reserve', 'hed B'],
      '--reserve: "hed B" is not the name of a part. Did you mean "head B"?',
    ],
    [
      ['report', 'shed.json', '--units', 'metrik'],
      '--units: "metrik" is not inch or metric; did you mean "metric"?',
    ],
    [
      ['report', 'shed.json', '--must-bild', 'x'],
      '--must-bild is not an option; --must-build is one of plan',
    ],
    [['raport', 'shed.json'], '"raport" is not a command; did you mean "report"?'],
    [['new', 'shd'], 'new: "shd" is not sheet, shed or readings; did you mean "shed"?'],
  ])('%j get the nearest', async (argv, said) => {
    const { code, out, err } = await tried(...argv);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(`crankwright: ${said}\n`);
  });

  it('cannot be both kept back and built', async () => {
    const { code, err } = await tried(
      ...['plan', 'shed.json', '--must-build', 'block A', '--reserve', 'block A'],
    );
    expect(code).toBe(2);
    expect(err).toContain('--must-build: "block A" is reserved, so no plan may take it.');
  });

  it('says with --why what a report and a plan leave out', async () => {
    const files = { files: { 'shed.json': shed, 'r.csv': csv } };
    const readings = ['shed.json', '--readings', 'r.csv'];
    for (const command of ['report', 'plan']) {
      const short = await captured([command, ...readings], files);
      const full = await captured([command, ...readings, '--why'], files);
      expect([short.code, full.code]).toEqual([0, 0]);
      expect(full.out.split('\n').length).toBeGreaterThan(short.out.split('\n').length);
    }
    expect((await captured(['plan', ...readings, '--why', '--json'], files)).code).toBe(2);
  });
});
