import { describe, expect, it } from 'vitest';
import type { Json } from '../sheet/sheets.js';
import { shedProblems, spoiltShed } from './sheds.js';

type Changes = Readonly<Record<string, Json | undefined>>;

const problemsOf = (changes: Changes) => shedProblems(spoiltShed(changes));

/** Readings of a round, straight journal or bore. */
const round = (diameter: string): Json =>
  ['0.5 in', '3.5 in'].flatMap((station) =>
    ['0 deg', '90 deg'].map((angle) => ({ station, angle, diameter })),
  );

describe('the places of a part are as many as the engine has', () => {
  const bore = { name: 'cylinder 1', readings: round('3.0002 in') };
  const journals = [{ name: 'rod 1', readings: round('1.6248 in') }];
  const housings = [{ name: 'pulley main', housingBore: '2.1262 in' }];

  it.each<[Changes, string, RegExp]>([
    [
      { 'blocks[0].bores': [bore] },
      'blocks[0].bores',
      /"block A" has 1 here, but "pump set, vertical twin" has 2 cylinders/,
    ],
    [
      { 'crankshafts[1].rodJournals': journals },
      'crankshafts[1].rodJournals',
      /"crankshaft B" has 1 here/,
    ],
    [
      { 'blocks[1].mainHousings': housings },
      'blocks[1].mainHousings',
      /"block B" has 1 here, but .* has 2 mains/,
    ],
    [{ 'engine.mainJournals': undefined }, 'engine.mainJournals', /is missing: .* 2 mains/],
    [
      { 'rods[0].rods[2]': { name: 'rod A3', housingBore: '1.7507 in' } },
      'rods[0].rods',
      /"rods A" has 3 here, .* 2 cylinders; a single rod is a part too/,
    ],
    [{ 'rods[0].rods': [] }, 'rods[0].rods', /"rods A" has 0 here/],
    [
      { 'pistonSets[0].pistons[2]': { name: 'piston 3', diameter: '2.9968 in' } },
      'pistonSets[0].pistons',
      /"pistons A" has 3 here/,
    ],
    [
      {
        'toBuy.pistonSets': [
          {
            name: 'new pistons',
            oversize: 'standard',
            pistons: [{ name: 'piston 1', diameter: '2.9968 in' }],
            price: '90 EUR',
          },
        ],
      },
      'toBuy.pistonSets[0].pistons',
      /"new pistons" has 1 here/,
    ],
  ])('%#: %s', (changes, path, message) => {
    expect(problemsOf(changes)).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it('or so many as their rods ask for', () => {
    const problems = problemsOf({ 'engine.rodsPerJournal': 2 });
    expect(problems.map(({ path }) => path)).toEqual([
      'crankshafts[0].rodJournals',
      'crankshafts[1].rodJournals',
    ]);
    expect(problems[0]?.message).toMatch(/2 cylinders, with 2 rods on each journal$/);
    expect(problemsOf({ 'engine.rodsPerJournal': 2, 'engine.cylinders': 3 })[0]).toEqual({
      path: 'engine.rodsPerJournal',
      message: expect.stringMatching(/has 3 cylinders, which do not make pairs/),
    });
  });

  it('and none where the crankshaft has no mains with shells', () => {
    expect(problemsOf({ 'engine.mains': 0 }).map(({ path }) => path)).toEqual([
      'engine.mainJournals',
      'engine.mainHousing',
      'blocks[0].mainHousings',
      'blocks[1].mainHousings',
      'crankshafts[0].mainJournals',
      'crankshafts[1].mainJournals',
      'shells[2].fits',
    ]);
  });
});

describe('names', () => {
  it.each<[Changes, string, RegExp]>([
    [{ 'heads[1].name': 'head A' }, 'heads[1].name', /^"head A" is also the name of heads\[0\];/],
    [{ 'rods[1].name': ' block A ' }, 'rods[1].name', /"block A" is also the name of blocks\[0\];/],
    [
      { 'toBuy.shells[0].name': 'rod shells standard' },
      'toBuy.shells[0].name',
      /is also the name of shells\[0\]; give each part of the shed its own name/,
    ],
    [{ 'heads[1].name': '__proto__', 'heads[0].name': '__proto__' }, 'heads[1].name', /heads\[0\]/],
    [
      { 'blocks[0].bores[1].name': 'cylinder 1' },
      'blocks[0].bores[1].name',
      /^"cylinder 1" is also the name of blocks\[0\].bores\[0\]; give each place/,
    ],
    [
      { 'crankshafts[0].mainJournals[0].name': 'rod 1' },
      'crankshafts[0].mainJournals[0].name',
      /is also the name of crankshafts\[0\].rodJournals\[0\];/,
    ],
  ])('%j stand once', (changes, path, message) => {
    expect(problemsOf(changes)).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('may be %s', (name) => {
    expect(problemsOf({ 'heads[0].name': name, 'blocks[0].bores[0].name': name })).toEqual([]);
  });
});

describe('prices', () => {
  it('are of one currency', () => {
    const changes = { 'machining[2].price': '25 USD', 'toBuy.shells[0].price': 'GBP 14.50' };
    expect(problemsOf(changes)).toEqual([
      {
        path: 'machining[2].price',
        message: expect.stringMatching(/^is in USD, but machining\[0\].price is in EUR/),
      },
      { path: 'toBuy.shells[0].price', message: expect.stringMatching(/^is in GBP/) },
    ]);
  });
});

describe('a size that cannot be', () => {
  it.each<[Changes, string, RegExp]>([
    [
      { 'crankshafts[0].rodJournals[1].readings': round('1.6349 in') },
      'crankshafts[0].rodJournals[1]',
      /^rod 2, 1.6349 in at its largest.*Journals only wear smaller/,
    ],
    [
      { 'crankshafts[0].mainJournals[0].readings': round('1.8 in') },
      'crankshafts[0].mainJournals[0]',
      /at most 0.1181 in below the standard/,
    ],
    [
      { 'blocks[0].bores[0].readings': round('2.9950 in') },
      'blocks[0].bores[0]',
      /Bores only wear larger/,
    ],
    [
      { 'blocks[0].bores[0].ringTravel': { min: '5 in', max: '6 in' } },
      'blocks[0].bores[0]',
      /has no reading in it/,
    ],
    [
      { 'crankshafts[0].rodJournals[0].readings[0].diameter': '16.249 in' },
      'crankshafts[0].rodJournals[0].readings[0].diameter',
      /A digit has slipped/,
    ],
    [
      { 'rods[1].rods[0].housingBore': '2.7507 in' },
      'rods[1].rods[0].housingBore',
      /within .* for that journal/,
    ],
    [
      { 'blocks[1].mainHousings[0].housingBore': '2.0100 in' },
      'blocks[1].mainHousings[0].housingBore',
      /within .* for that journal/,
    ],
    [
      { 'engine.rodHousing': { max: '2.7510 in' } },
      'engine.rodHousing',
      /within .* for that journal/,
    ],
    [
      { 'engine.mainHousing': { min: '1.9 in' } },
      'engine.mainHousing',
      /within .* for that journal/,
    ],
    [{ 'engine.rodJournals.minimum': '1.7 in' }, 'engine.rodJournals.minimum', /No journal could/],
    [
      { 'engine.rodJournals.oilClearance.max': '0.03 in' },
      'engine.rodJournals.oilClearance',
      /is not a length of|outside/,
    ],
    [{ 'engine.endPlay': { max: '0.3 in' } }, 'engine.endPlay', /outside/],
    [{ 'engine.bores.ringGap': { max: '0.2 in' } }, 'engine.bores.ringGap', /outside/],
    [
      { 'engine.bores.leastWall': undefined },
      'engine.bores.leastWall',
      /wall of blocks\[0\].bores\[0\], "cylinder 1", was measured/,
    ],
    [{ 'shells[0].wall': '0.620 in' }, 'shells[0].wall', /^0.62 in is not near 0.06\d* in/],
    [{ 'shells[2].wall': '0.162 in' }, 'shells[2].wall', /the room that the housings leave/],
    [
      { 'pistonSets[0].pistons[1].diameter': '2.7 in' },
      'pistonSets[0].pistons[1].diameter',
      /within 5 % of bore/,
    ],
    [{ 'ringSets[0].rings[0].measuredIn': '2.5 in' }, 'ringSets[0].rings[0]', /within 5 %/],
  ])('%j', (changes, path, message) => {
    expect(problemsOf(changes)).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it('is a shell thicker than a fifth of its journal, where no housing is known', () => {
    const changes = { rods: [], 'engine.rodHousing': undefined };
    expect(problemsOf(changes)).toEqual([]);
    expect(problemsOf({ ...changes, 'shells[1].wall': '0.34 in' })).toEqual([
      { path: 'shells[1].wall', message: expect.stringMatching(/a fifth of the journal/) },
    ]);
  });
});

describe('a step that nobody makes', () => {
  it.each<[Changes, string, RegExp]>([
    [
      { 'shells[1].undersize': '15 under' },
      'shells[1].undersize',
      /^"rod shells 10 under" is for 0.0150 in, but the engine has 0.0000 in, 0.0100 in, 0.0200 in; if that step exists, add it to engine.rodJournals.steps$/,
    ],
    [
      { 'shells[2].undersize': '40 under', 'shells[2].wall': '0.0822 in' },
      'shells[2].undersize',
      /0.0300 in; if that step exists, add it to engine.mainJournals.steps$/,
    ],
    [
      { 'ringSets[1].oversize': '25 over' },
      'ringSets[1].oversize',
      /"rings 20 over" is for 0.0250 in.*engine.bores.steps/,
    ],
    [
      { 'toBuy.ringSets[0].oversize': '40 over' },
      'toBuy.ringSets[0].oversize',
      /"new rings standard" is for 0.0400 in/,
    ],
  ])('%j', (changes, path, message) => {
    expect(problemsOf(changes)).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it('is one if the engine names it', () => {
    const changes = {
      'engine.bores.steps': ['25 over'],
      'pistonSets[1]': undefined,
      'ringSets[1].oversize': '25 over',
    };
    expect(problemsOf({ ...changes, pistonSets: [] })).toEqual([]);
  });
});
