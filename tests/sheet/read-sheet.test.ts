import { format, inch, RebuildInputError, thou } from 'crankwright';
import { FileError, readSheet } from 'crankwright/sheet';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleText, type Json, spoilt } from './sheets.js';

function problemsOf(input: unknown): readonly { path: string; message: string }[] {
  try {
    readSheet(input);
  } catch (error) {
    if (error instanceof FileError) return error.problems;
    throw error;
  }
  return [];
}

describe('readSheet', () => {
  it('reads every quantity of the example sheets into SI', () => {
    const sheet = readSheet(exampleText('inch'));
    expect(format(sheet.rods?.[1]?.journal.readings[3]?.diameter as never, inch)).toBe('1.6033 in');
    expect(format(sheet.rods?.[1]?.journal.readings[2]?.station as never, inch)).toBe('1.2500 in');
    expect(sheet.shells?.map(({ undersize }) => format(undersize, thou))).toEqual([
      '0.0 thou',
      '20.0 thou',
      '30.0 thou',
      '0.0 thou',
      '10.0 thou',
    ]);
    expect(readSheet(exampleText('metric')).units).toBe('metric');
    expect(readSheet(JSON.parse(exampleText('inch')))).toEqual(sheet);
  });

  it('names the path of a reading that cannot be read, and where it goes wrong', () => {
    expect(problemsOf(spoilt({ 'rods[1].journal.readings[3].diameter': '2.12x in' }))).toEqual([
      {
        path: 'rods[1].journal.readings[3].diameter',
        message: expect.stringMatching(
          /^"2.12x in" has no unit of length at character 5 \("x in"\)/,
        ),
      },
    ]);
  });

  it('tells all of ten mistakes in one error, and loses none', () => {
    const problems = problemsOf(
      spoilt({
        version: 2,
        'crankshaft.endPlay.readings[0].pulled': 13,
        'rods[0].journal.readings[1].diameter': '53 in',
        'rods[1].fittedShells': 'a shell nobody has',
        'mains[0].housingBore': { min: '2.1263 in', max: '2.1262 in' },
        'shells[1].undersize': '0.020 under',
        'shells[2].pairs': -1,
        'cylinders[0].name': 'cylinder 2',
        'cylinders[1].colour': 'red',
        'oil.sump': '1 qt',
      }),
    );
    expect(problems.map(({ path }) => path).sort()).toEqual([
      'crankshaft.endPlay.readings[0].pulled',
      'cylinders[1].colour',
      'cylinders[1].name',
      'mains[0].housingBore',
      'oil.sump',
      'rods[0].journal.readings[1].diameter',
      'rods[1].fittedShells',
      'shells[1].undersize',
      'shells[2].pairs',
      'version',
    ]);
  });

  it('looks for contradictions in what is sound beside what is not, at its own place', () => {
    const problems = problemsOf(
      spoilt({
        'rods[0].housingBore': 'wide',
        'crankshaft.rodJournals.standard': { min: '1.5995 in', max: '1.6000 in' },
        'cylinders[0].piston': '3',
        'cylinders[1].rings[0].gap': '0.39 in',
      }),
    );
    expect(problems.map(({ path }) => path)).toEqual([
      'rods[0].housingBore',
      'cylinders[0].piston',
      'rods[1].journal',
      'cylinders[1].rings[0]',
    ]);
  });

  it.each<[string, Json | undefined, string, RegExp]>([
    ['engine', undefined, 'engine', /is missing/],
    ['engine', '  ', 'engine', /must not be empty/],
    ['engine', 5, 'engine', /must be text/],
    ['units', 'inches', 'units', /"inches" must be inch or metric/],
    ['units', undefined, 'units', /is missing: inch or metric/],
    ['rods', {}, 'rods', /must be a list/],
    ['rods', [], 'rods', /at least 1 entry/],
    ['rods[0].journal', 'x', 'rods[0].journal', /object with named fields/],
    ['rods[0].jurnal', {}, 'rods[0].jurnal', /did you mean "journal"/],
    ['rods[0].journal.runout', '3', 'rods[0].journal.runout', /no unit, and length needs one/],
    ['rods[0].housingBore', 1.75, 'rods[0].housingBore', /1.75 is not text; write number and unit/],
    ['rods[0].housingBore', '1.75', 'rods[0].housingBore', /no unit, and length needs one/],
    ['rods[0].journal.readings[2]', undefined, 'rods[0].journal.readings[2]', /is missing|object/],
    [
      'rods[0].journal.readings[0].diameter',
      '16.046 in',
      'rods[0].journal.readings[0].diameter',
      /A digit has slipped/,
    ],
    [
      'crankshaft.rodJournals',
      undefined,
      'crankshaft.rodJournals',
      /standard size of the journals/,
    ],
    [
      'crankshaft.rodJournals.standard.max',
      '1.6 in',
      'crankshaft.rodJournals.standard',
      /min is above max/,
    ],
    [
      'crankshaft.rodJournals.standard',
      { min: '1.5995 in', max: '1.6 in' },
      'rods[0].journal',
      /only wear smaller/,
    ],
    [
      'crankshaft.rodJournals.oilClearance',
      { max: '0.003 in' },
      'crankshaft.rodJournals.oilClearance',
      /both a min and a max/,
    ],
    [
      'crankshaft.endPlay.limits',
      { source: 'me' },
      'crankshaft.endPlay.limits',
      /a min, a max or both/,
    ],
    [
      'crankshaft.endPlay.limits',
      { min: '9 thou', max: '2 thou' },
      'crankshaft.endPlay.limits',
      /swap/,
    ],
    [
      'crankshaft.mainJournals.wear',
      'half',
      'crankshaft.mainJournals.wear',
      /one side or all round/,
    ],
    [
      'cylinders[0].bore.ringTravel',
      { min: '5 in', max: '6 in' },
      'cylinders[0].bore',
      /has no reading in it/,
    ],
    ['cylinders[0].rings[0].gap', '0.39 in', 'cylinders[0].rings[0]', /outside/],
    [
      'shells',
      undefined,
      'rods[0].fittedShells',
      /is not in the list of shells for rods; add it, with 0 pairs/,
    ],
    ['oil.line', ['32 cSt'], 'oil.line', /two points/],
    ['oil.line[1].viscosity', '300 cSt', 'oil.line', /two points of one oil/],
    [
      'oil.sample.temperature',
      '104 °F',
      'oil.fuelViscosity',
      /Only petrol from 15 to 25 °C has a default/,
    ],
    ['oil.sample.viscosity', '0.4 cSt', 'oil.sample.viscosity', /as thick as the fuel/],
    ['oil.leak', { flow: '3 mL' }, 'oil.leak.flow', /no unit of flow/],
    ['oil.leak', 'drips', 'oil.leak', /object with named fields/],
    ['oil.bearing.clearance', '-1 thou', 'oil.bearing.clearance', /this bearing cannot turn/],
    ['oil.bearing.filmRatio', '3', 'oil.bearing.filmRatio', /a number, without quotes/],
    ['oil.bearing.filmRatio', 0, 'oil.bearing.filmRatio', /from 0.1 to 1000/],
    ['oil.bearing.material', 'butter', 'oil.bearing.material', /tin babbitt/],
    [
      'oil.bearing.material',
      { name: 'x', meanPressure: '8 MPa' },
      'oil.bearing.material.temperature',
      /missing/,
    ],
    ['oil.bearing.supply', { by: 'luck' }, 'oil.bearing.supply.by', /pump or splash/],
    ['oil.bearing.duty', 'light', 'oil.bearing.duty', /general or closely fitted/],
    [
      'oil.bearing.bigEnd.compressionRatio',
      '6',
      'oil.bearing.bigEnd.compressionRatio',
      /without quotes/,
    ],
    ['oil.bearing.bigEnd.rodLength', '1 in', 'oil.bearing.bigEnd.rodLength', /rod/],
    ['oil.bearing.length', '4 in', 'oil.bearing.length', /outside/],
    ['oil.bearing.load', '400 lb', 'oil.bearing.load', /force/],
    ['oil.bearing.roughness.shell', undefined, 'oil.bearing.roughness.shell', /missing/],
    ['oil.fuelViscosity', '0.6 cSt', 'oil.fuel', /the film needs its line/],
    ['oil.thresholds', { act: '5 vol%', critical: '2 vol%' }, 'oil.thresholds', /swap/],
    ['oil.thinning', { act: '30 %', critical: '20 %' }, 'oil.thinning', /swap/],
    ['oil.doubt', { inlet: '60 ΔK' }, 'oil.doubt.inlet', /50 ΔK/],
    ['oil.doubt', { load: '300 %' }, 'oil.doubt.load', /200 %/],
    ['oil.leak.clearanceVolume', '60 L', 'oil.leak.clearanceVolume', /10000 mL/],
    ['extra', 1, 'extra', /is not a known field; known fields here: version, engine/],
  ])('%s as %j is a problem at %s', (path, value, place, message) => {
    const problems = problemsOf(spoilt({ [path]: value }));
    const there = problems.find((problem) => problem.path === place);
    expect(there?.message, JSON.stringify(problems)).toMatch(message);
  });

  it('finds every contradiction, each at its own place', () => {
    const all = (rod: number, diameter: string) =>
      Object.fromEntries(
        [0, 1, 2, 3].map((i) => [`rods[${rod}].journal.readings[${i}].diameter`, diameter]),
      );
    const problems = problemsOf(
      spoilt({
        ...all(0, '1.7000 in'),
        ...all(1, '1.4000 in'),
        'mains[0].housingBore': '3.1262 in',
        'shells[3].wall': '0.918 in',
        'crankshaft.rodJournals.oilClearance.max': '0.03 in',
        'crankshaft.mainJournals.minimum': '2.1 in',
        'crankshaft.endPlay.limits': { max: '0.3 in' },
        'cylinders[0].piston': '2.7 in',
        'cylinders[0].rings[0].measuredIn': '2.5 in',
        'cylinders[0].rings[1].measuredIn': '2.5 in',
        'cylinderLimits.ringGap': { max: '0.2 in' },
      }),
    );
    expect(problems.map(({ path }) => path).sort()).toEqual(
      [
        'cylinderLimits.ringGap',
        'cylinders[0].piston',
        'cylinders[0].rings[0]',
        'cylinders[0].rings[1]',
        'crankshaft.endPlay.limits',
        'crankshaft.mainJournals',
        'crankshaft.rodJournals.oilClearance',
        'mains[0].housingBore',
        'rods[0].journal',
        'rods[1].journal',
        'shells[3].wall',
      ].sort(),
    );
    for (const { message } of problems) expect(message).not.toContain('wrap the reading');
  });

  it.each<[string, Json, string, RegExp]>([
    ['engine', 'x'.repeat(61), 'engine', /at most 60 characters/],
    ['engine', 'two\nlines', 'engine', /on one line/],
    ['rods[0].housingBore', '2.7506 in', 'rods[0].housingBore', /within .* for that journal/],
    ['rods[0].housingBore', '1.6100 in', 'rods[0].housingBore', /within .* for that journal/],
    ['shells[1].wall', '0.719 in', 'shells[1].wall', /^0.719 in is not near/],
    ['shells[1].wall', '0.14 in', 'shells[1].wall', /^0.14 in is not near/],
    [
      'shells[1].wall',
      { min: '0.01 in', max: '0.0719 in' },
      'shells[1].wall',
      /^0.01 in … 0.0719 in is not near/,
    ],
  ])('%s as %j', (path, value, place, message) => {
    const found = problemsOf(spoilt({ [path]: value })).find((problem) => problem.path === place);
    expect(found?.message ?? '').toMatch(message);
  });

  it('names unknown fields one by one, in a leak too', () => {
    const problems = problemsOf(
      spoilt({ 'oil.leak': { drops: '6 per minute', drip: 1, rate: 2 }, 'rods[0].jounral': {} }),
    );
    expect(problems.map(({ path }) => path)).toEqual([
      'rods[0].jounral',
      'oil.leak.drip',
      'oil.leak.rate',
    ]);
  });

  it.each([
    [
      'rods[0].jounral',
      /^is not a known field; did you mean "journal"\? known fields here: name, journal/,
    ],
    ['cylinders[1].bore.ringtravel', /did you mean "ringTravel"\?/],
    ['crankshaft.endplay', /did you mean "endPlay"\?/],
    ['oill', /did you mean "oil"\? known fields here: version, engine/],
    ['rods[0].colour', /^is not a known field; known fields here: name, journal/],
  ])('suggests the nearest field for %s, if one is near', (path, message) => {
    const problems = problemsOf(spoilt({ [path]: {} }));
    expect(problems).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it('suggests the nearest word', () => {
    expect(problemsOf(spoilt({ 'shells[0].fits': 'rod' }))[0]).toEqual({
      path: 'shells[0].fits',
      message: '"rod" must be rods or mains; did you mean "rods"?',
    });
  });

  it('takes several readings of a size for the span they make', () => {
    const { rods } = readSheet(
      spoilt({ 'rods[0].housingBore': ['1.7508 in', '1.7506 in', '1.7507 in'] }),
    );
    expect(rods?.[0]?.housingBore).toEqual({ min: inch(1.7506), max: inch(1.7508) });
  });

  it('wants a unit on the steps of a metric engine', () => {
    const sheet = JSON.parse(exampleText('metric'));
    sheet.crankshaft.mainJournals.steps = ['standard', '0.25 mm under', '50 under'];
    expect(problemsOf(sheet)).toEqual([
      {
        path: 'crankshaft.mainJournals.steps[2]',
        message: expect.stringMatching(/^"50 under" has no unit, but this engine is metric/),
      },
    ]);
  });

  it('wants a unit on the undersizes of a metric engine', () => {
    const sheet = JSON.parse(exampleText('metric'));
    sheet.shells[0].undersize = '25 under';
    expect(problemsOf(sheet)).toContainEqual({
      path: 'shells[0].undersize',
      message: expect.stringMatching(/this engine is metric; write it in mm/),
    });
  });

  it.each([
    ['{ "version": 1, ', /is not JSON/],
    ['[]', /must be an object/],
    [null, /must be an object/],
    [7, /must be an object/],
  ])('refuses %j whole', (input, message) => {
    expect(() => readSheet(input)).toThrow(message);
    expect(() => readSheet(input)).toThrow(RebuildInputError);
  });

  it('takes __proto__ for an unknown field and nothing else', () => {
    const text = '{ "version": 1, "engine": "e", "units": "inch", "__proto__": { "oil": 1 } }';
    expect(problemsOf(text)).toEqual([
      { path: '__proto__', message: expect.stringMatching(/not a known field/) },
    ]);
  });

  it('meets any JSON with a sheet or a FileError', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(problemsOf(text).length).toBeGreaterThan(0);
      }),
    );
  });

  it('lists the problems a line each, with their count', () => {
    expect(() => readSheet({ version: 1, engine: 'e' })).toThrow(
      /^sheet: 1 problem found\. Correct it:\n {2}units: is missing: inch or metric$/,
    );
    expect(() => readSheet({ version: 1 })).toThrow(/^sheet: 2 problems found\. Correct them:\n/);
  });
});
