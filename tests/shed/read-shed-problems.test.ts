import { describe, expect, it } from 'vitest';
import type { Json } from '../sheet/sheets.js';
import { plainShed, shedProblems, spoiltShed } from './sheds.js';

const pathsOf = (changes: Readonly<Record<string, Json | undefined>>) =>
  shedProblems(spoiltShed(changes)).map(({ path }) => path);

describe('a mistake in a shed', () => {
  it.each<[string, Json | undefined, RegExp]>([
    ['version', 2, /must be 1/],
    ['shed', undefined, /is missing/],
    ['units', 'metrc', /"metrc" must be inch or metric; did you mean "metric"\?/],
    ['engine', undefined, /is missing/],
    ['engine.cylinders', '2', /whole number of cylinders, 1 to 24/],
    ['engine.cylinders', 0, /1 to 24/],
    ['engine.mains', 1.5, /whole number of mains/],
    ['engine.rodsPerJournal', 3, /must be 1 or 2/],
    ['engine.bores', undefined, /is missing/],
    ['engine.bores.wear', 'all around', /must be one side or all round; did you mean "all round"/],
    ['engine.alsoNeeds', ['head', 'head'], /lists an entry twice/],
    ['engine.endPlay', {}, /min, a max or both/],
    ['engine.lubrication', 'splosh', /did you mean "splash"/],
    ['engine.ignition', 'battery', /magneto.*coil/],
    ['engine.cooling', 'oil', /air.*hopper.*water/],
    ['blocks', {}, /must be a list/],
    ['blocks[0].bores', [], /"block A" has 0 here/],
    ['engine.bores.steps', [], /at least 1 entry/],
    ['blocks[1].faults', ['frost heaved'], /did you mean "frost-cracked"/],
    ['crankshafts[0].rodJournals[0].faults', ['cracked'], /must be scored, pitted or spun/],
    ['rods[2].faults', ['scored'], /must be cracked, overheated, spun or bent/],
    ['rods[2].faults', ['bent', 'bent'], /twice/],
    ['heads[0].interchange', [], /at least 1 entry/],
    ['heads[0].interchange', ['a', 'a'], /twice/],
    ['ringSets[0].count', 0, /whole number of pieces, 1 to/],
    ['shells[0].pairs', -1, /whole number of pairs, 0 to/],
    ['shells[0].pairs', 1e9, /0 to 10000/],
    ['shells[1].undersize', '10 over', /is not an undersize.*"20 under"/],
    ['shells[1].undersize', '200 under', /"200 under" is not a length of 0 in … 0.118 in/],
    ['pistonSets[1].oversize', '20 under', /is not an oversize.*"20 over"/],
    ['pistonSets[1].oversize', '0.020 over', /not an oversize that can be read/],
    ['thrustWashers[0].thickness', '96 in', /is not a length of 0.000394 in … 0.787 in/],
    ['blocks[0].bores[0].wall', '20 in', /is not a length of 0.0197 in … 1.97 in/],
    ['blocks[0].thrustWidth', '2.3', /no unit/],
    ['heads[0].guideBore', { min: '0.32 in', max: '0.31 in' }, /swap the two/],
    ['machining[0].work', 'grind rod jurnals', /did you mean "grind rod journals"/],
    ['machining[0].price', 18, /18 is not text; write amount and currency in quotes/],
    ['machining[0].price', '18', /has no currency/],
    ['machining[0].price', '18 EUR USD', /more than one currency/],
    ['machining[0].price', '18 EUR/USD', /more than one currency/],
    ['machining[0].price', '-18 EUR', /is negative/],
    ['toBuy.shells[0].price', undefined, /is missing/],
    ['toBuy.shells[0].price', '$14', /write the three letters/],
    ['toBuy.shells[0].wall', 'thin', /no number that can be read/],
    // The example is of the thing that belongs there.
    [
      'crankshafts[0].rodJournals[0].readings[0].angle',
      null,
      /null is not text; write number and unit in quotes, e\.g\. "90 deg", or leave the field out if it is not known$/,
    ],
    ['shells[1].undersize', 10, /10 is not text; write an undersize in quotes, e\.g\. "20 under"$/],
    ['heads[0].flatness', 2, /2 is not text; write number and unit in quotes, e\.g\. "2.1248 in"$/],
  ])('%s as %j is told at its place', (path, value, message) => {
    const problems = shedProblems(spoiltShed({ [path]: value }));
    const there = problems.filter((problem) => problem.path.startsWith(path));
    expect(there, JSON.stringify(problems)).toHaveLength(1);
    expect(there[0]?.message).toMatch(message);
    expect(problems).toHaveLength(1);
  });

  it.each<[string, RegExp]>([
    [
      'pistonSets[0].oversise',
      /^is not a known field; did you mean "oversize"\? known fields here: name/,
    ],
    ['blocks[0].bores[1].wal', /did you mean "wall"\?/],
    ['engine.bores.leastwall', /did you mean "leastWall"\?/],
    ['crankshaft', /did you mean "crankshafts"\?/],
    ['toBuy.headz', /did you mean "heads"\?/],
    ['machining[1].colour', /^is not a known field; known fields here: work, shop, price$/],
    ['shells[0].price', /known fields here: name, from/],
  ])('a field %s is refused with the nearest there is', (path, message) => {
    const problems = shedProblems(spoiltShed({ [path]: 'x' }));
    expect(problems).toEqual([{ path, message: expect.stringMatching(message) }]);
  });

  it('names the fastener whose lock is no lock', () => {
    const [problem] = shedProblems(
      spoiltShed({
        'engine.assembly': { fasteners: { rodCaps: { locking: 'pin' } } },
      }),
    );
    expect(problem?.path).toBe('engine.assembly.fasteners.rodCaps.locking');
    expect(problem?.message).toMatch(/did you mean "pins"/);
  });

  it('hides none in another', () => {
    const changes = {
      units: 'feet',
      'engine.headFlatness': 'flat',
      'engine.rodJournals.oilClearance': 'tight',
      'engine.bores.ringGap': { min: '0.2 in' },
      'blocks[0].bores[0].readings[0].angle': '0 in',
      'blocks[0].mainHousings[1].housingBore': '3.1263 in',
      'blocks[1].from': 7,
      'crankshafts[0].thrustWidth': 'wide',
      'crankshafts[0].rodJournals[0].readings[0].diameter': '1.62 oz',
      'crankshafts[0].rodJournals[1].readings': [
        { station: '0.2 in', angle: '0 deg', diameter: '1.7249 in' },
        { station: '0.2 in', angle: '90 deg', diameter: '1.7249 in' },
        { station: '1.2 in', angle: '0 deg', diameter: '1.7249 in' },
        { station: '1.2 in', angle: '90 deg', diameter: '1.7249 in' },
      ],
      'rods[1].name': 'rods A',
      'shells[0].wall': '0.9 in',
      'toBuy.shells[0].price': '14.50 USD',
      'toBuy.ringSets[0].prize': 'first',
    };
    expect(pathsOf(changes).sort()).toEqual(
      [
        'units',
        'engine.headFlatness',
        'engine.rodJournals.oilClearance',
        'engine.bores.ringGap',
        'blocks[0].bores[0].readings[0].angle',
        'blocks[0].mainHousings[1].housingBore',
        'blocks[1].from',
        'crankshafts[0].thrustWidth',
        'crankshafts[0].rodJournals[0].readings[0].diameter',
        'crankshafts[0].rodJournals[1]',
        'rods[1].name',
        'shells[0].wall',
        'toBuy.shells[0].price',
        'toBuy.ringSets[0].prize',
      ].sort(),
    );
  });

  it('leads to no other where the engine cannot be read', () => {
    expect(pathsOf({ engine: 7 })).toEqual(['engine']);
    expect(pathsOf({ 'engine.mainJournals': 7 })).toEqual(['engine.mainJournals']);
    expect(pathsOf({ 'engine.bores.leastWall': 'x' })).toEqual(['engine.bores.leastWall']);
    expect(pathsOf({ 'engine.bores.steps': 'x' })).toEqual(['engine.bores.steps']);
    expect(pathsOf({ 'engine.bores.steps': Array(51).fill('standard') })).toEqual([
      'engine.bores.steps',
    ]);
    expect(pathsOf({ 'engine.rodsPerJournal': '2', 'crankshafts[1].rodJournals': [] })).toEqual([
      'engine.rodsPerJournal',
    ]);
    expect(pathsOf({ 'engine.bores.steps[2]': 'x' })).toEqual(['engine.bores.steps[2]']);
    expect(pathsOf({ 'blocks[0].mainHousings': 'x' })).toEqual(['blocks[0].mainHousings']);
    expect(pathsOf({ 'pistonSets[0].pistons[1]': 'x' })).toEqual(['pistonSets[0].pistons[1]']);
  });

  it('of a unit is found on a metric shed wherever a step stands', () => {
    const shed = {
      ...plainShed(),
      units: 'metric',
    };
    const bare = shedProblems(shed).map(({ path, message }) => {
      expect(message).toMatch(/has no unit, but this engine is metric.*"0.25 mm (under|over)"/);
      return path;
    });
    expect(bare).toEqual([
      'engine.rodJournals.steps[1]',
      'engine.rodJournals.steps[2]',
      'engine.bores.steps[1]',
      'engine.bores.steps[2]',
      'engine.bores.steps[3]',
      'pistonSets[1].oversize',
      'ringSets[1].oversize',
      'shells[1].undersize',
      'toBuy.shells[0].undersize',
    ]);
  });
});
