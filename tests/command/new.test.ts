import { readFileSync } from 'node:fs';
import { readingsToFill, readShed, type Shed } from 'crankwright/shed';
import { readSheet } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const ENGINE = [
  ...['--name', 'pump set', '--cylinders', '2', '--mains', '2', '--bore', '3.0000 to 3.0005'],
  ...['--rod-journal', '1.6245 in to 1.6250 in', '--main-journal', '1.9995 in to 2.0000 in'],
];
const names = ({ blocks = [] }: Shed) => blocks.map(({ name }) => name);

/** Answers questions in order, and keeps what was asked. */
function answering(...answers: readonly string[]) {
  const asked: string[] = [];
  const ask = async (question: string) => {
    asked.push(question);
    return answers[asked.length - 1];
  };
  return { asked, ask };
}

/** A disk that holds these files. */
function disk(files: Record<string, string> = {}) {
  const writeFile = async (path: string, text: string, { force }: { readonly force: boolean }) => {
    if (path in files && !force) throw Object.assign(new Error(path), { code: 'EEXIST' });
    if (path.startsWith('nowhere/')) throw Object.assign(new Error(path), { code: 'ENOENT' });
    files[path] = text;
  };
  return { files, writeFile };
}

describe('crankwright new shed', () => {
  it('prints a file that is read as it is, with the engine and the parts of its donors', async () => {
    const { code, out, err } = await captured([
      ...['new', 'shed', ...ENGINE, '--lubrication', 'splash', '--cores', '3'],
    ]);
    expect([code, err]).toEqual([0, '']);
    const shed = readShed(out);
    expect(names(shed)).toEqual(['block A', 'block B', 'block C']);
    expect(shed.engine).toMatchObject({ name: 'pump set', lubrication: 'splash', mains: 2 });
    expect(JSON.parse(out)).toMatchObject({ $schema: 'shed.schema.json', units: 'inch' });
  });

  it('prints the rows to fill, for the same file, which are read empty', async () => {
    const json = await captured(['new', 'shed', ...ENGINE]);
    const { code, out } = await captured(['new', 'shed', ...ENGINE, '--csv']);
    expect(code).toBe(0);
    expect(out).toBe(readingsToFill(json.out));
    expect(names(readShed(json.out, out))).toEqual(['block A']);
    const files = { 'my.json': json.out };
    expect((await captured(['new', 'readings', 'my.json'], { files })).out).toBe(out);
  });

  it('can be planned and reported on before anything is measured', async () => {
    const { out } = await captured(['new', 'shed', ...ENGINE]);
    for (const command of ['report', 'plan']) {
      const said = await captured([command], { input: out });
      expect(said.code).toBe(0);
    }
  });

  it('takes the units of the sizes, or those asked for', async () => {
    const metric = ENGINE.map((each) =>
      /\d/.test(each) && each.length > 1 ? '75.000 mm to 75.013 mm' : each,
    );
    const { out } = await captured(['new', 'shed', ...metric]);
    expect(JSON.parse(out)).toMatchObject({
      units: 'metric',
      engine: { bores: { standard: { min: '75.000 mm', max: '75.013 mm' } } },
    });
    const asked = await captured(['new', 'shed', ...metric, '--units', 'inch']);
    expect(JSON.parse(asked.out).units).toBe('inch');
  });

  it('asks on a terminal where no option answers, each with its default', async () => {
    const questions = answering(
      '',
      '',
      '2',
      '2',
      '1.6245 to 1.6250',
      '2.0000',
      '3 to 3.0005',
      '',
      '2',
    );
    const { code, out } = await captured(['new', 'shed'], { ask: questions.ask });
    expect(code).toBe(0);
    expect(names(readShed(out))).toEqual(['block A', 'block B']);
    expect(JSON.parse(out).engine).toMatchObject({
      name: 'my engine',
      mainJournals: { standard: { min: '2.0000 in', max: '2.0000 in' } },
    });
    expect(questions.asked).toHaveLength(9);
    expect(questions.asked[1]).toBe('Units, inch or metric [inch]: ');
    const ended = await captured(['new', 'shed'], { ask: answering('pump set').ask });
    expect([ended.code, ended.out]).toEqual([2, '']);
  });

  it('says at once what is wrong with an answer, asks that question again, and keeps the others', async () => {
    const questions = answering(
      ...['pump set', 'inches', 'inch', '2x', '2', '99', '0', '1.6250 to 1.6245', ''],
      ...['1.6245 to 1.6250', '300', '3.0000 to 3.0005', 'pmp', 'pump', '27', '2'],
    );
    const { code, out, err } = await captured(['new', 'shed'], { ask: questions.ask });
    expect(code).toBe(0);
    expect(err.trimEnd().split('\n')).toEqual([
      '"inches" is not inch or metric; did you mean "inch"?',
      '"2x" is not a whole number',
      expect.stringMatching(/^99 is not a whole number from 0 to \d+\./),
      '"1.6250 to 1.6245" has the two sizes the wrong way round. Write the smaller one first: "1.6245 in to 1.6250 in".',
      'a shed needs this size: parts are sorted by it',
      expect.stringMatching(
        /^7\.62 m is outside 3 mm … 1 m\. Check the unit and the decimal point, e\.g\. 2\.1248 inch/,
      ),
      '"pmp" is not splash or pump; did you mean "pump"?',
      expect.stringMatching(/^27 is not a whole number from 0 to 26\./),
    ]);
    const again = questions.asked.filter((each, i) => each === questions.asked[i - 1]);
    expect(again).toHaveLength(8);
    expect(JSON.parse(out).engine).toMatchObject({ name: 'pump set', cylinders: 2, mains: 0 });
    expect(names(readShed(out))).toEqual(['block A', 'block B']);
  });

  it('asks for a sheet in the same way, whose sizes may be left out', async () => {
    const questions = answering('', '', 'two', '2', '0', '', 'big', '3.0000 to 3.0005');
    const { code, out, err } = await captured(['new', 'sheet'], { ask: questions.ask });
    expect(code).toBe(0);
    expect(err).toContain('"two" is not a whole number\n"big" is not the smallest');
    expect(readSheet(out).engine).toBe('my engine');
  });

  it('asks nobody where there is no terminal, or an option answers', async () => {
    const questions = answering();
    const piped = await captured(['new', 'shed'], { ask: questions.ask, input: '' });
    expect(piped.err).toContain(
      'new shed needs --name, --cylinders, --mains, --rod-journal, --main-journal, --bore\n',
    );
    const some = await captured(['new', 'shed', '--name', 'x'], { ask: questions.ask });
    expect([some.code, questions.asked]).toEqual([2, []]);
  });
});

describe('crankwright new sheet', () => {
  const short = ['new', 'sheet', '--name', 'pump set', '--cylinders', '1', '--mains', '0'];

  it('prints a sheet that is read as it is, and reported on', async () => {
    const { code, out } = await captured([...short, '--bore', '75.000 mm to 75.013 mm']);
    expect(code).toBe(0);
    expect(readSheet(out)).toMatchObject({ engine: 'pump set', units: 'metric' });
    expect((await captured(['report'], { input: out })).code).toBe(0);
  });

  it('has tables that are read once they are filled in and named as they are read', async () => {
    const { out } = await captured([...short, '--bore', '3.0000 to 3.0005']);
    const { 'x-cylinders': cylinders, ...file } = JSON.parse(out);
    const [{ name, bore }] = cylinders;
    const readings = {
      ...bore.readings,
      stations: [0.5, 2, 3.5],
      diameters: [0, 1, 2].map(() => [3.0003, 3.0004, 3.0002]),
    };
    const sheet = readSheet({ ...file, cylinders: [{ name, bore: { readings } }] });
    expect(sheet.cylinders?.[0]?.bore.readings).toHaveLength(9);
  });
});

describe('--output', () => {
  it.each(['README.md', 'docs/shed-file.md'])(
    'works as %s types it, without a terminal',
    async (guide) => {
      const text = readFileSync(`${root}/${guide}`, 'utf8').replaceAll('\\\n', ' ');
      const [, typed = ''] = /^npx crankwright (new shed .+)$/m.exec(text) ?? [];
      const argv = [...typed.matchAll(/'([^']*)'|(\S+)/g)].map(
        ([, quoted, bare]) => quoted ?? bare ?? '',
      );
      const { files, writeFile } = disk();
      expect(await captured(argv, { writeFile, input: '' })).toEqual({
        code: 0,
        out: '',
        err: 'crankwright: wrote my-shed.json\n',
      });
      expect(names(readShed(files['my-shed.json']))).toEqual(['block A']);
    },
  );

  it('writes the file, says so and prints nothing', async () => {
    const { files, writeFile } = disk();
    const said = await captured(['new', 'shed', ...ENGINE, '--output', 'my.json'], { writeFile });
    expect(said).toEqual({ code: 0, out: '', err: 'crankwright: wrote my.json\n' });
    expect(names(readShed(files['my.json']))).toEqual(['block A']);
  });

  it('writes over a file only with --force', async () => {
    const { files, writeFile } = disk({ 'my.json': 'the record of years' });
    const argv = ['new', 'shed', ...ENGINE, '--output', 'my.json'];
    const refused = await captured(argv, { writeFile });
    expect([refused.code, files['my.json']]).toEqual([2, 'the record of years']);
    expect(refused.err).toContain(
      'crankwright: my.json is there already; --force writes over it\n',
    );
    expect((await captured([...argv, '--force'], { writeFile })).code).toBe(0);
    expect(names(readShed(files['my.json']))).toEqual(['block A']);
  });

  it('says where a file cannot be written', async () => {
    const { writeFile } = disk();
    const argv = ['new', 'shed', ...ENGINE, '--output', 'nowhere/my.json'];
    expect(await captured(argv, { writeFile })).toEqual({
      code: 4,
      out: '',
      err: 'crankwright: cannot write the output: nowhere/my.json: there is no such folder\n',
    });
  });
});

it.each<[readonly string[], string]>([
  [['new'], 'new needs sheet, shed or readings'],
  [['new', 'shed', 'x'], 'new shed: "x" is one too many'],
  [['new', 'sheet', '--cores', '2'], '--cores is not an option of new sheet'],
  [['new', 'sheet', '--csv'], '--csv is not an option of new sheet'],
  [['new', 'readings', 'x', '--name', 'x'], '--name is not an option of new readings'],
  [['new', 'shed', ...ENGINE, '--force'], '--force needs --output'],
  [['new', 'shed', ...ENGINE, '--cores', 'two'], '--cores: "two" is not a whole number'],
  [['new', 'shed', ...ENGINE, '--cores', '27'], '--cores: 27 is not a whole number from 0 to 26'],
  [
    ['new', 'shed', ...ENGINE, '--lubrication', 'pmp'],
    '--lubrication: "pmp" is not splash or pump',
  ],
  [
    ['new', 'shed', ...ENGINE.slice(0, -4), '--main-journal', '2 in', '--rod-journal', 'big'],
    '--rod-journal: "big" is not the smallest and the largest size of a new one',
  ],
  [
    ['new', 'shed', ...ENGINE.slice(0, -2), '--main-journal', '1.7500 to 1.7495 in'],
    '--main-journal: "1.7500 to 1.7495 in" has the two sizes the wrong way round. Write the smaller one first: "1.7495 in to 1.7500 in".',
  ],
  [['new', 'shed', ...ENGINE.slice(0, -2)], 'new shed needs --main-journal\n'],
])('crankwright refuses %j', async (argv, said) => {
  const { code, out, err } = await captured(argv, { input: '' });
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(`crankwright: ${said}`);
});
