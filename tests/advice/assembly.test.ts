import { readFileSync } from 'node:fs';
import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { beforeAll, describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';

const file = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url));
type Assembly = { readonly [field: string]: { readonly [field: string]: object } };

/** The page of the first engine of the example's plan, if its file says this of its assembly. */
async function pageOf(change: (assembly: Assembly) => object = (all) => all): Promise<string> {
  const shed = JSON.parse(file('pump-set-shed.json').toString());
  const engine = { ...shed.engine, assembly: change(shed.engine.assembly) };
  const read = readShed({ ...shed, engine }, file('pump-set-shed-readings.csv').toString());
  const [, page = ''] = buildSheet(await planBuilds(read), { format: 'text' }).split('\f');
  return flowing(page);
}

/** What a report says of an engine of which only this is known. */
const reported = (sheet: object): string =>
  flowing(report(inspect(readSheet({ version: 1, engine: 'e', units: 'inch', ...sheet }))));

let page: string;
let early: string;
beforeAll(async () => {
  page = await pageOf();
  early = await pageOf((all) => ({
    ...all,
    timing: { ...all['timing'], spark: { ...all['timing']?.['spark'], lag: '0 deg' } },
    fasteners: { rodCaps: { thread: '5/16-24 UNF', condition: 'oiled', locking: 'pins' } },
    valves: {},
  }));
}, 60_000);

describe('what the build sheet of the pump set carries', () => {
  it.each<[what: string, said: RegExp]>([
    [
      'the torque in the units of the wrench',
      /Main bearing caps: 18\.0 to 20\.0 lbf·ft at the fastener, thread and face oiled \[\d+\]/,
    ],
    [
      'the torque of the rods',
      /Rod caps: 14\.0 to 18\.0 lbf·ft at the fastener, thread and face oiled \[\d+\]/,
    ],
    [
      'the lash of both kinds of valve',
      /Valve lash, inlet: 0\.0070 to 0\.0090 in, set cold \[\d+\]; set to: _+ .*Valve lash, exhaust: 0\.0130 to 0\.0150 in, set cold \[\d+\]/,
    ],
    // π * 13 * 22 / 360 = 2.4958 in.
    [
      'where the mark of the spark is on the rim',
      /spark, running: 22\.0 deg before top dead centre; 2\.50 in along the rim/,
    ],
    // π * 13 * 45 / 360 = 5.105 in.
    [
      'where those of the valves are',
      /inlet closes: 45\.0 deg ± 2\.0 deg after bottom dead centre; 5\.11 in along the rim/,
    ],
    ['whose these are', /spark and valves are timed by these figures \[\d+\]/],
    [
      'the compression ratio against what is wanted',
      /compression ratio \d\.\d\d to \d\.\d\d by the spaces given, with .*: within 4\.60 to 5\.10 \[\d+\]/,
    ],
    // 3.25 / 2 + 1.75 = 3.375 in, 0.125 in over the floor; 0.375 and 0.5 in of oil.
    [
      'the dip of the dippers',
      /Depth that the dippers enter the oil, by the sizes of the file 0\.2500 to 0\.3750 in, with 0\.1250 in left .*clearance of the dipper 0\.1250 in: above the least of 0\.0600 in \[\d+\]/,
    ],
    [
      'the fit of the pin',
      /piston pin in its rod not measured _+ 0\.0003 to 0\.0008 specified \[\d+\]/,
    ],
    [
      'the fit of the timing gear',
      /timing gear on the crankshaft not measured _+ -0\.0019 to -0\.0006 published \[\d+\]/,
    ],
    ['the side clearance of the rings', /cylinder 1 0\.0015 to 0\.0035 specified \[\d+\]/],
    [
      'the gap of the points, before the spark',
      /gap of the points 0\.0120 to 0\.0150 in \[\d+\]: set it before the spark is timed/,
    ],
  ])('%s', (_, said) => {
    expect(page).toMatch(said);
  });

  it("and asks for none of these by the maker's manual any more", () => {
    for (const asked of page.match(/[^.:;[\]]*by the maker's manual/g) ?? []) {
      expect(asked).not.toMatch(/lash|gap|timed|dipper|side clearance|compress/i);
      // Of the bolts only the flywheel's torque is not known.
      if (/torque/.test(asked)) expect(asked).toContain('Flywheel');
    }
  });

  it('names everyone who set a figure', () => {
    const named = new Set(
      page.match(/\[\d+\](?= (?:specified|published|common practice|computed))/g),
    );
    expect(new Set(page.match(/\[\d+\]/g))).toEqual(named);
  });
});

describe('what may hurt the builder', () => {
  it('nobody is let to swing an engine that may kick back', () => {
    const caution = early.indexOf('CAUTION: Do not swing the starting handle');
    expect(caution).toBeGreaterThan(early.indexOf('First start'));
    expect(caution).toBeLessThan(early.indexOf('Started on'));
    expect(page).not.toContain('Do not swing');
  });

  it('the torque of a head that the shed does not count as a part', async () => {
    const { heads, ...shed } = JSON.parse(file('pump-set-shed.json').toString());
    const engine = { ...shed.engine, alsoNeeds: ['valve set'] };
    const csv = file('pump-set-shed-readings.csv').toString();
    const readings = csv
      .split('\n')
      .filter((line) => !line.startsWith('head '))
      .join('\n');
    const plan = await planBuilds(readShed({ ...shed, engine }, readings));
    expect(plan.builds[0]?.parts.some(({ section }) => section === 'heads')).toBe(false);
    expect(flowing(buildSheet(plan, { format: 'text' }))).toContain(
      'Cylinder head: 20.0 lbf·ft at the fastener',
    );
  });

  it('a spark that kicks back is a caution, before anything is timed', () => {
    // 22° before the top with a coupling that holds nothing back.
    expect(page).not.toContain('throws the starting handle back');
    const caution =
      'CAUTION: The spark for starting comes too early, and throws the starting handle back.';
    expect(early).toContain(caution);
    expect(early.indexOf(caution)).toBeLessThan(early.indexOf('Valve lash, inlet'));
  });

  it('parts that are pressed come with what a press can do', () => {
    expect(page).toContain('Parts under a press can burst and fly');
  });
});

describe('bolts', () => {
  it('of no known grade get no torque in a rod', () => {
    expect(early).toContain("Rod caps torqued, by the maker's manual: ________");
    expect(early).toContain(
      'Rod caps: no torque is stated, and none can be reckoned: grade of the bolts is not stated',
    );
  });

  it('with castle nuts are never slackened to a slot', () => {
    expect(page).toContain('Never slacken a nut to bring its slot to the hole');
    expect(page).toContain('take another nut or washer, and never slacken it to a slot');
  });
});

describe('valves', () => {
  it('of which the file says nothing are set by the manual', () => {
    expect(early).toContain("Valve lash, inlet, by the maker's manual: ________");
    expect(early).toContain("Valve lash, exhaust, by the maker's manual: ________");
  });

  it('that are set hot are told cold at the safe end, and to be checked', () => {
    const piece = (length: string, material: string, temperature: string) => ({
      length,
      material,
      temperature,
    });
    const said = reported({
      assembly: {
        valves: {
          exhaust: {
            lash: { min: '0.012 in', max: '0.014 in' },
            set: 'hot',
            train: {
              carrier: [piece('6 in', 'grey iron', '100 °C')],
              train: [
                piece('2 in', 'steel', '90 °C'),
                piece('4 in', 'austenitic valve steel', '220 °C'),
              ],
            },
          },
        },
      },
    });
    // In thou, 80 K of 6 in of iron at 10.4 to 11.4, 70 K of 2 in of steel at 11.2 to 12.1 and 200 K of 4 in of valve at
    // 16.5 to 18.4 ppm/K: it closes by 9.3 to 11.4, so that 12 hot are 21.3 to 23.4 cold. Too much rattles, too little burns.
    expect(said).toContain('0.0213 to 0.0234 in cold would leave that hot');
    expect(said).toContain(
      'set it to 0.0234 in, the safe end, since a valve without lash burns, and check it hot',
    );
  });

  it("are not condemned by another engine's limit", () => {
    // Past 5/64 in, where another manual ends its seats, and under its margin of 1/64 in.
    const sheet = readSheet({
      version: 1,
      engine: 'e',
      units: 'inch',
      valves: [{ name: 'exhaust 1', kind: 'exhaust', seatWidth: '0.090 in', margin: '0.012 in' }],
    });
    const said = actionsFrom(inspect(sheet)).flatMap((each) =>
      describeAction(each, { units: 'inch' }),
    );
    expect(said).toHaveLength(2);
    for (const each of said) {
      expect(each).toContain("find the maker's limit before you scrap or cut anything");
      expect(each).toContain('published for another engine');
      expect(each).not.toMatch(/fit another valve|have the seat/);
    }
  });
});

describe('a compression test without a rule of its engine', () => {
  it('is only advised on', () => {
    const said = reported({ assembly: { compression: { chamber: '68 mL' } } });
    expect(said).toContain(
      'These are rules of other engines, which disagree: they advise and condemn nothing',
    );
    expect(said).toContain(
      'compression ratio not computed, as these are not given: bore, stroke, deck clearance, gasket',
    );
  });
});
