import { readFileSync } from 'node:fs';
import { second } from 'crankwright';
import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import { readShed, shedSchema, triage, triageReport, workSchema } from 'crankwright/shed';
import { inspect, readSheet, report, sheetSchema } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { UnwritableOutput } from '../../src/command/output.js';
import { progressLine } from '../../src/command/progress.js';
import { plainShed, spoiltShed } from '../shed/sheds.js';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const pumpSet = readFileSync(`${root}/examples/pump-set-inch.json`, 'utf8');
const shedText = JSON.stringify(plainShed());
const shed = readShed(shedText);
const files = { 'shed.json': shedText };
const done = (out: string) => ({ code: 0, out, err: '' });

describe('crankwright report', () => {
  it('reports on an inspection sheet', async () => {
    const expected = report(inspect(readSheet(pumpSet)));
    expect(await captured(['report', 'examples/pump-set-inch.json'])).toEqual(done(expected));
  });

  it('reports in a shed', async () => {
    expect(await captured(['report', 'shed.json'], { files })).toEqual(
      done(triageReport(triage(shed))),
    );
  });

  it('reads standard input where no file or a dash is named', async () => {
    const expected = done(triageReport(triage(shed)));
    expect(await captured(['report'], { input: shedText })).toEqual(expected);
    expect(await captured(['report', '-'], { input: `\uFEFF${shedText}` })).toEqual(expected);
  });

  it('prints in the units asked for, and data without any', async () => {
    const metric = await captured(['report', 'shed.json', '--units', 'metric'], { files });
    expect(metric.out).toBe(triageReport(triage(shed), { units: 'metric' }));
    const sheet = await captured(['report', '--units=metric', 'examples/pump-set-inch.json']);
    expect(sheet.out).toContain('40.500 to 40.513 mm');
    const json = await captured(['report', 'shed.json', '--json'], { files });
    expect(JSON.parse(json.out)).toEqual(triage(shed));
    const sheetJson = await captured(['report', 'examples/pump-set-inch.json', '--json']);
    expect(JSON.parse(sheetJson.out)).toEqual(inspect(readSheet(pumpSet)));
  });

  it('joins readings to a shed, and to nothing else', async () => {
    const shed = 'examples/pump-set-shed.json';
    const readings = ['--readings', 'examples/pump-set-shed-readings.csv'];
    expect((await captured(['report', shed, ...readings])).code).toBe(0);
    const wrong = await captured(['report', 'examples/pump-set-inch.json', ...readings]);
    expect(wrong).toEqual({
      code: 2,
      out: '',
      err: expect.stringContaining('--readings is for a shed'),
    });
  });

  it('names every mistake in the file', async () => {
    const bad = JSON.stringify(
      spoiltShed({ 'blocks[0].name': undefined, 'shells[1].undersize': '11 nuts' }),
    );
    const { code, out, err } = await captured(['report'], { input: bad });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('blocks[0].name: ');
    expect(err).toContain('shells[1].undersize (rod shells 10 under): ');
    const noJson = await captured(['report'], { input: 'version: 1' });
    expect([noJson.code, noJson.err]).toEqual([1, expect.stringContaining('is not JSON')]);
    expect((await captured(['report'], { input: '[1]' })).code).toBe(1);
    expect((await captured(['report'], { input: '' })).code).toBe(1);
  });

  it('reads files with a byte order mark, and tells the line of what is wrong in them', async () => {
    const shed = 'examples/pump-set-shed.json';
    const csv = 'examples/pump-set-shed-readings.csv';
    const texts = Object.fromEntries(
      [shed, csv].map((file) => [file, `\uFEFF${readFileSync(`${root}/${file}`, 'utf8')}`]),
    );
    const marked = await captured(['report', shed, '--readings', csv], { files: texts });
    expect(marked).toEqual(await captured(['report', shed, '--readings', csv]));
    expect(marked.code).toBe(0);
    const twice = '{ "version": 1, "engine": "e",\n"units": "inch",\n"units": "metric" }';
    expect(await captured(['report'], { input: twice })).toEqual({
      code: 1,
      out: '',
      err: 'crankwright: sheet: 1 problem found. Correct it:\n  units: is given twice, at line 2, character 1 and line 3, character 1; keep one of the two\n',
    });
  });

  it('says why a file cannot be read', async () => {
    const reasons = {
      'nowhere.json': 'no such file',
      examples: 'it is a folder',
    };
    for (const [file, reason] of Object.entries(reasons)) {
      expect(await captured(['report', file])).toEqual({
        code: 1,
        out: '',
        err: `crankwright: ${file}: ${reason}\n`,
      });
    }
    const broken = await captured(['report', 'x'], {
      readFile: () => Promise.reject(new Error('the disk is on fire')),
    });
    expect(broken.err).toBe('crankwright: x: it cannot be read: the disk is on fire\n');
  });
});

describe('crankwright plan', () => {
  it('prints the plan, its data or the build sheet', async () => {
    const plan = await planBuilds(shed);
    const printed = async (...options: readonly string[]) =>
      captured(['plan', 'shed.json', ...options], { files });
    expect(await printed()).toEqual(done(planReport(plan)));
    expect(await printed('--units', 'metric')).toEqual(done(planReport(plan, { units: 'metric' })));
    expect(JSON.parse((await printed('--json')).out)).toEqual(plan);
    expect(await printed('--build-sheet')).toEqual(done(buildSheet(plan, { format: 'text' })));
    expect(await printed('--build-sheet', '--markdown', '--units', 'metric')).toEqual(
      done(buildSheet(plan, { units: 'metric' })),
    );
  });

  it('heeds its options', async () => {
    const argv = [
      ...['plan', '-', '--json', '--at-most', '1', '--no-buying'],
      ...['--most-per-engine', '400 EUR', '--reserve', 'head B', '--reserve=valves new'],
      ...['--must-build', 'block A', '--time-limit', '60'],
    ];
    const { out, code } = await captured(argv, { input: shedText });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(
      await planBuilds(shed, {
        atMost: 1,
        buying: false,
        mostPerEngine: { amount: 400, currency: 'EUR' },
        reserved: ['head B', 'valves new'],
        mustBuild: ['block A'],
        timeLimit: second(60),
      }),
    );
  });

  it('says of a name that the shed has not that the command is wrong', async () => {
    const tried = (...options: readonly string[]) =>
      captured(['plan', 'shed.json', ...options], { files });
    for (const [option, value] of [
      ['--reserve', 'block Z'],
      ['--must-build', 'head A'],
      ['--most-per-engine', '400 USD'],
    ] as const) {
      const { code, out, err } = await tried(option, value);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(new RegExp(`^crankwright: ${option}: `));
    }
  });

  it('plans a shed without parts, and refuses a sheet', async () => {
    const { version, units, engine } = plainShed();
    const bare = JSON.stringify({ version, shed: 'bare', units, engine });
    const { code, out } = await captured(['plan'], { input: bare });
    expect(code).toBe(0);
    expect(out).toContain('No complete engine can be built.');
    expect((await captured(['plan', 'examples/pump-set-inch.json'])).code).toBe(1);
  });

  it('says with its exit code that a plan is not proven', async () => {
    const limit = ['--time-limit', '0.000001'];
    const { code, out } = await captured(['plan', 'shed.json', ...limit], { files });
    expect(code).toBe(3);
    expect(out).toContain('NOT PROVEN');
  });
});

describe('the line of progress', () => {
  const watched = (complaintsAreOnTerminal: boolean) => {
    let err = '';
    const line = progressLine({
      complain: (text) => {
        err += text;
      },
      complaintsAreOnTerminal,
    });
    for (const elapsed of [0.2, 1.1, 1.9, 2.4]) {
      line.show({ stage: 'least cost', elapsed: second(elapsed) });
    }
    line.erase();
    return err;
  };

  it('shows on a terminal how long it has taken, after a while, and is gone at the end', () => {
    const erase = '\r\u001b[K';
    expect(watched(true)).toBe(
      `${erase}planning: least cost, 1 s${erase}planning: least cost, 2 s${erase}`,
    );
  });

  it('is not there where nobody watches', () => {
    expect(watched(false)).toBe('');
  });
});

describe('crankwright', () => {
  it('prints schemas', async () => {
    expect(JSON.parse((await captured(['schema', 'sheet'])).out)).toEqual(sheetSchema());
    expect(JSON.parse((await captured(['schema', 'shed'])).out)).toEqual(shedSchema());
    expect(JSON.parse((await captured(['schema', 'work'])).out)).toEqual(workSchema());
  });

  it('prints its version and its help, which fits a terminal and names every option and exit code', async () => {
    expect(await captured(['--version'])).toEqual(done('1.2.3\n'));
    const { code, out, err } = await captured(['plan', '--help']);
    expect([code, err]).toEqual([0, '']);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    for (const option of [
      ...['units', 'json', 'readings', 'build-sheet', 'markdown', 'at-most', 'no-buying'],
      ...[
        'most-per-engine',
        'reserve',
        'must-build',
        'holds-with',
        'time-limit',
        'help',
        'version',
      ],
    ]) {
      expect(out).toContain(`--${option}`);
    }
    for (const exit of [0, 1, 2, 3, 4, 5]) expect(out).toMatch(new RegExp(`^  ${exit}  `, 'm'));
    expect(await captured(['-h'])).toEqual(done(out));
  });

  it.each<[readonly string[], string]>([
    [
      [],
      'no command given; commands are report, plan, done, diff, schema, calc, repl, worksheet, new',
    ],
    [['pln'], '"pln" is not a command; did you mean "plan"?'],
    [
      ['__proto__'],
      '"__proto__" is not a command; commands are report, plan, done, diff, schema, calc, repl, worksheet, new',
    ],
    [['report', 'a', 'b'], 'report takes one operand; "b" is one too many'],
    [['report'], 'no file given'],
    [['report', '--reading', 'x'], '--reading is not an option; did you mean "--readings"?'],
    [['report', '--qqqqqqqqq'], '--qqqqqqqqq is not an option; report takes --units,'],
    [['new', 'sheet', '--rods', '2'], '--rods is not an option; new takes --name,'],
    [['report', '--constructor'], '--constructor is not an option'],
    [['report', '-x'], '-x is not an option'],
    [['report', '--at-most', '1'], '--at-most is not an option of report'],
    [['schema', 'sheet', '--json'], '--json is not an option of schema'],
    [['schema'], 'schema needs sheet, shed or work'],
    [['schema', 'shel'], 'schema: "shel" is not sheet, shed or work; did you mean "shed"?'],
    [['report', '--units'], '--units needs a value'],
    [['report', '--units', '--json'], '--units needs a value'],
    [['report', '--units='], '--units needs a value'],
    [['report', '--units', 'imperial'], '--units: "imperial" is not inch or metric'],
    [['report', '--json=yes'], '--json takes no value'],
    [['report', '--json', '--units', 'inch'], '--json and --units cannot be combined'],
    [['plan', '--json', '--build-sheet'], '--json and --build-sheet cannot be combined'],
    [['plan', '--json', '--json'], '--json is given twice'],
    [['plan', '--markdown'], '--markdown needs --build-sheet'],
    [['plan', '--readings', '-'], '--readings needs a file, not standard input'],
    [['plan', '--at-most', '1.5'], '--at-most: "1.5" is not a whole number of engines'],
    [['plan', '--at-most=-1'], '--at-most: "-1" is not a whole number of engines'],
    [['plan', '--holds-with', '0.5'], '--holds-with: "0.5" is not a chance above 0.5 and below 1'],
    [['plan', '--holds-with', '1'], '--holds-with: "1" is not a chance above 0.5 and below 1'],
    [['plan', '--holds-with', '95%'], '--holds-with: "95%" is not a chance above 0.5 and below 1'],
    [['plan', '--time-limit', '0'], '--time-limit: "0" is not a number of seconds above 0'],
    [['plan', '--time-limit', '1e3'], '--time-limit: "1e3" is not a number of seconds above 0'],
    [['plan', '--most-per-engine', '400'], '--most-per-engine: "400" has no currency'],
  ])('refuses %j', async (argv, complaint) => {
    const { code, out, err } = await captured(argv);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(`crankwright: ${complaint}`);
    expect(err).toContain('\nTry crankwright --help.\n');
  });

  it('says that its output cannot be written, with an exit code of its own', async () => {
    const print = () => Promise.reject(new UnwritableOutput('no space is left there'));
    const unwritten = {
      code: 4,
      out: '',
      err: 'crankwright: cannot write the output: no space is left there\n',
    };
    expect(await captured(['--help'], { print })).toEqual(unwritten);
    expect(await captured(['report', 'shed.json'], { files, print })).toEqual(unwritten);
    // A plan that is not proven, and not printed either, is first of all not printed.
    const late = ['plan', 'shed.json', '--time-limit', '0.000001'];
    expect(await captured(late, { files, print })).toEqual(unwritten);
  });

  it('lets a fault of its own be seen', async () => {
    const print = () => {
      throw new Error('a fault');
    };
    await expect(captured(['--help'], { print })).rejects.toThrow('a fault');
    await expect(captured(['plan', 'shed.json'], { files, print })).rejects.toThrow('a fault');
  });
});
