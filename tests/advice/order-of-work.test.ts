import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { exampleText, type Json, spoilt } from '../sheet/sheets.js';

const inspected = (changes: Readonly<Record<string, Json | undefined>>) =>
  inspect(readSheet(spoilt(changes)));
const kinds = (changes: Readonly<Record<string, Json | undefined>>) =>
  actionsFrom(inspected(changes)).map(({ kind }) => kind);
const advice = (changes: Readonly<Record<string, Json | undefined>>) =>
  actionsFrom(inspected(changes)).flatMap((action) => describeAction(action, { units: 'inch' }));

describe('nothing is spent on a crankshaft that cannot be used as it is', () => {
  const bent = { 'mains[1].journal.runout': '0.020 in' };

  it('a runout of 20 thou is a bent crankshaft, not stock for the wheel', () => {
    expect(kinds(bent)).toContain('bent crankshaft');
    for (const kind of ['grind', 'buy shells', 'fit shells'] as const) {
      expect(kinds(bent)).not.toContain(kind);
    }
    expect(advice(bent).find((text) => text.startsWith('flywheel main: the crankshaft'))).toMatch(
      /reads as bent: read the dial again; if it stands, have it crack-tested, straightened and crack-tested again, then read its runout and its journals again/,
    );
  });

  it("goes by the owner's limit of the runout", () => {
    const own = { ...bent, 'crankshaft.mainJournals.runout': { max: '0.025 in' } };
    expect(kinds(own)).not.toContain('bent crankshaft');
    const tight = {
      'mains[1].journal.runout': '0.0015 in',
      'crankshaft.mainJournals.runout': { max: '0.0010 in' },
    };
    expect(kinds(tight)).toContain('bent crankshaft');
  });

  it('a crankshaft whose mains are past saving gets no rods ground', () => {
    const lost = kinds({ 'crankshaft.mainJournals.minimum': '1.995 in' });
    expect(lost).toContain('no step serves');
    for (const kind of ['grind', 'buy shells', 'fit shells'] as const) {
      expect(lost).not.toContain(kind);
    }
  });
});

describe('the order of work', () => {
  it('compares housings and gets shells before anything is ground, and tests before that', () => {
    const all = kinds({});
    const places = ['crack test', 'compare the housings', 'buy shells', 'grind'] as const;
    const at = places.map((kind) => all.indexOf(kind));
    expect(Math.min(...at)).toBeGreaterThanOrEqual(0);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it('says to have the block tested before it is bored', () => {
    expect(advice({}).find((text) => text.includes('crack-tested before you pay'))).toMatch(
      /^have the crankshaft and the block crack-tested/,
    );
  });

  it('says that a wall was not measured where a bore is to be cut', () => {
    expect(report(inspected({})).replace(/\s+/g, ' ')).toContain('cylinder 2: its wall');
  });

  it('gives the wall of shells to be made where the shelf has none', () => {
    // Flywheel main, by the rule of 0.75 to 1.5 thou per inch of a journal of 1.9900 in, 0.0014925 to 0.002985 in:
    // (2.1263 - 1.9895 - 0.002985) / 2 = 0.0669075 to (2.1263 - 1.9900 - 0.0014925) / 2 = 0.0674038, rounded inward.
    expect(advice({}).find((text) => text.startsWith('get 1 pair'))).toContain(
      'a wall of 0.0670 to 0.0674 in for flywheel main; measure them before the journals are ground',
    );
  });

  it('buys nothing for a bearing whose readings say that it cannot turn', () => {
    const locked = { 'rods[0].housingBore': '1.7470 in', 'shells[2].pairs': 0 };
    expect(advice(locked).find((text) => text.startsWith('rod 1'))).toContain('IT WILL NOT TURN');
    const bought = actionsFrom(inspected(locked)).filter(({ kind }) => kind === 'buy shells');
    expect(bought).not.toContainEqual(expect.objectContaining({ journals: 'rods' }));
  });

  it('says DO NOT RUN where fuel leaks into oil that nobody measured', () => {
    const [first] = advice({ 'oil.sample': undefined });
    expect(first).toMatch(/^DO NOT RUN/);
    expect(advice({ 'oil.sample': undefined }).join('\n')).toContain(
      'of fuel leaks into it, and how much is in it is not known; drain it',
    );
  });

  it('files no ring for a cylinder that is to be bored', () => {
    const text = report(inspected({}));
    const [, first = '', second = ''] = text.split(/\nCYLINDER \d\n/);
    expect(text.split('\nCYLINDER 1\n')[0]).not.toMatch(/top ring: file/);
    expect(second).toMatch(/Piston and rings must fit the finished bore/);
    expect(second).not.toMatch(/top ring: file/);
    // Its bore is sound: its ring is judged for the case that only the other is sleeved.
    const flowing = first.replace(/\s+/g, ' ');
    expect(flowing).toMatch(/If it stays: .*top ring: file/);
  });
});

describe('what must not run comes first', () => {
  it('says DO NOT RUN before it says to change the oil, where one sample calls for both', () => {
    const sheet = readSheet(exampleText('metric'));
    const [first, second] = actionsFrom(inspect(sheet)).flatMap((action) =>
      describeAction(action, { units: 'metric' }),
    );
    expect(first).toMatch(/^DO NOT RUN: drain the oil and find out why it is thin/);
    expect(second).toMatch(/^change the oil and find the leak/);
  });
});

describe('what decides comes before what hangs on it', () => {
  it('wrong shells, which wreck the engine, come before the end play', () => {
    const all = kinds({ 'crankshaft.endPlay.readings': [{ pushed: '0 thou', pulled: '20 thou' }] });
    expect(all.indexOf('wrong shells')).toBeGreaterThan(-1);
    expect(all.indexOf('wrong shells')).toBeLessThan(all.indexOf('set the end play'));
  });

  it('a step that a journal in wrong shells sets waits for its readings to be taken again', () => {
    // Rod 1 is standard and 1.2 thou out of round; rod 2 reads 20 under in standard shells, so both go to that size.
    const rods = (second: string) =>
      Object.fromEntries(
        [0, 1, 2, 3].flatMap((i) => [
          [`rods[0].journal.readings[${i}].diameter`, i % 2 === 0 ? '1.6246 in' : '1.6234 in'],
          [`rods[1].journal.readings[${i}].diameter`, second],
        ]),
      );
    // Of 20 under the shelf has one pair, and of 30 under none now.
    const none = { 'shells[2].pairs': 0 };
    const ordered = (changes: Readonly<Record<string, Json | undefined>>) =>
      advice(changes).filter((text) => /get .* for the rod journals|grind .*rod/.test(text));
    const waits = /^not before rod 2 has been read again, as the step hangs on it: /;
    const marked = ordered({ ...rods('1.6047 in'), ...none }).filter((text) => waits.test(text));
    expect(marked.map((text) => text.replace(waits, '').slice(0, 5))).toEqual(['get 1', 'grind']);
    // In shells of its own size nothing is to be read again.
    const own = { ...rods('1.6047 in'), 'rods[1].fittedShells': 'rod 20 under, used' };
    const sure = ordered({ ...own, 'rods[0].fittedShells': undefined });
    expect(sure.length).toBeGreaterThan(0);
    expect(sure.filter((text) => waits.test(text))).toEqual([]);
  });

  it('whether journals are ground at all comes before the shells for the ground size', () => {
    // Out of round by 1.1 thou, by the rule of thumb alone.
    const doubted = { 'crankshaft.mainJournals.shape': undefined };
    const said = advice(doubted);
    const order = said.findIndex((text) => /in doubt: .* grind the main journals/.test(text));
    const bought = said.findIndex((text) => /^if it comes to grinding, get .* main/.test(text));
    expect(order).toBeGreaterThan(-1);
    expect(bought).toBeGreaterThan(order);
  });
});

describe('an order that rests on rules of thumb alone', () => {
  const last = /in doubt: only rules of thumb ask for it/;
  const orderOf = (journals: string, changes: Readonly<Record<string, Json | undefined>> = {}) =>
    advice(changes).find((text) => text.startsWith(`grind the ${journals} journals`));

  it('says so, and an order by a limit of this engine does not', () => {
    // Rod 2 is out of round by 1.2 thou, where the rule lets it have 0.5; the mains have a limit of their own.
    expect(orderOf('rod')).toMatch(last);
    expect(orderOf('main')).toBeDefined();
    expect(orderOf('main')).not.toMatch(last);
    const own = { 'crankshaft.rodJournals.shape': { max: '0.001 in', source: 'sheet 3' } };
    expect(orderOf('rod', own)).toBeDefined();
    expect(orderOf('rod', own)).not.toMatch(last);
  });
});

describe('shells that are to be made', () => {
  const made = (least: string) =>
    advice({
      'crankshaft.mainJournals.oilClearance': { min: least, max: '0.0030 in', source: 'sheet 3' },
    }).find((text) => text.includes('have them made'));

  it('are told to be close where their walls may hardly differ', () => {
    expect(made('0.0022 in')).toContain('closer than most are made: ask the shop first');
    expect(made('0.0015 in')).toBeDefined();
    expect(made('0.0015 in')).not.toContain('closer than most');
  });
});

describe('metal that is sound', () => {
  it('a journal that is sound by itself is named before it is ground with the others', () => {
    expect(advice({}).find((text) => text.startsWith('grind the rod journals'))).toContain(
      'rod 1 reads sound at 0.0200 in under: ask the grinder whether rod 2 can be ground alone',
    );
  });

  it('a crankshaft of which every journal is sound, each at its own size, is not simply ground', () => {
    const journal = (name: string, diameter: number) => ({
      name,
      journal: {
        readings: {
          unit: 'in',
          angles: ['0 deg', '60 deg', '120 deg'],
          stations: ['0.2 in', '0.8 in'],
          diameters: [
            [diameter, diameter, diameter],
            [diameter, diameter, diameter],
          ],
        },
      },
      housingBore: '1.7507 in',
    });
    const sheet = readSheet({
      version: 1,
      engine: 'pump set',
      units: 'inch',
      crankshaft: { rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } } },
      rods: [journal('rod 1', 1.6248), journal('rod 2', 1.6048)],
    });
    const said = actionsFrom(inspect(sheet)).flatMap((action) =>
      describeAction(action, { units: 'inch' }),
    );
    expect(said.find((text) => text.includes('grind rod 1'))).toMatch(
      /^rod 1 reads sound at standard, the others at 0\.0200 in under: .* none needs grinding, if the manual allows two sizes on one crankshaft; else grind rod 1/,
    );
    expect(said.join('\n')).not.toContain('ask the grinder whether the others');
  });

  describe('of which every journal is sound at its own size, with one pair of each on the shelf', () => {
    const rod = (name: string, diameter: string) => ({
      name,
      journal: {
        readings: {
          angles: ['0 deg', '60 deg', '120 deg'],
          stations: ['0.2 in', '0.8 in'],
          diameters: [
            [diameter, diameter, diameter],
            [diameter, diameter, diameter],
          ],
        },
      },
      housingBore: '1.7507 in',
    });
    const pair = (name: string, undersize: string, wall: string) => ({
      name,
      fits: 'rods',
      undersize,
      wall,
      pairs: 1,
    });
    const inspection = inspect(
      readSheet({
        version: 1,
        engine: 'pump set',
        units: 'inch',
        crankshaft: { rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } } },
        rods: [rod('rod 1', '1.6248 in'), rod('rod 2', '1.6048 in')],
        shells: [pair('rod std', 'standard', '0.0620 in'), pair('rod 20', '20 under', '0.0720 in')],
      }),
    );
    const said = actionsFrom(inspection).flatMap((action) =>
      describeAction(action, { units: 'inch' }),
    );
    const place = (start: string) => said.findIndex((text) => text.startsWith(start));

    it('the choice not to grind comes before any shells, and each rod gets the pair of its size', () => {
      const order = [
        'rod 1 reads sound at standard',
        'rod 1: if none is ground, fit "rod std"',
        'rod 2: if none is ground, fit "rod 20"',
        'if it comes to grinding, get 1 pair of shells for the rod journals, 0.0200 in under',
        'rod 2: if it comes to grinding, fit "rod 20"',
      ];
      const places = order.map(place);
      expect(places).not.toContain(-1);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    });

    it('the one pair of the ground size goes to the journal that has that size', () => {
      expect(place('rod 1: if ground')).toBe(-1);
      expect(inspection.rods?.bearings.map(({ shells }) => shells?.shell.name)).toEqual([
        undefined,
        'rod 20',
      ]);
      expect(flowing(report(inspection))).toContain(
        'Shells from the shelf for the journals as they are: rod 1, "rod std": oil clearance 0.0019 in',
      );
    });
  });

  it('a cylinder that is within every limit is named before it is bored with the others', () => {
    expect(advice({}).find((text) => text.includes('bore to'))).toContain(
      'cylinder 1 is within every limit',
    );
  });

  it("the maker's service limits save the journal that they let pass", () => {
    // Rod 2 would have 0.0041 in with matching shells, and is 0.0012 in out of round.
    const served = {
      'crankshaft.rodJournals.oilClearance': {
        min: '0.0012 in',
        max: '0.0028 in',
        service: { max: '0.0060 in' },
      },
      'crankshaft.rodJournals.shape': { max: '0.0005 in', service: { max: '0.0015 in' } },
    };
    const found = inspected(served);
    expect(found.rods?.plan).toMatchObject({ outcome: 'use as it is' });
    // Nobody specified how far it may be below its size: the clearance allows it.
    expect(found.rods?.plan.because).toContainEqual(
      expect.objectContaining({
        journal: 'rod 2',
        basis: expect.objectContaining({ kind: 'computed' }),
      }),
    );
    expect(advice(served).find((text) => text.includes('WRONG SHELLS'))).toContain(
      'matching shells would leave 0.0041 in, within the service limit',
    );
  });

  it('what is in doubt is only fitted if it is ground', () => {
    const doubtful = {
      'crankshaft.mainJournals.shape': undefined,
      'mains[1].journal.readings': [
        { station: '0.3 in', angle: '0 deg', diameter: '1.9996 in' },
        { station: '0.3 in', angle: '90 deg', diameter: '1.9990 in' },
        { station: '1.5 in', angle: '0 deg', diameter: '1.9996 in' },
        { station: '1.5 in', angle: '90 deg', diameter: '1.9991 in' },
      ],
    };
    const said = advice(doubtful);
    expect(said.find((text) => text.includes('in doubt'))).toContain('main');
    expect(said.find((text) => text.startsWith('pulley main: '))).toContain(
      'if it comes to grinding, fit',
    );
  });
});
