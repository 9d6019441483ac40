import { describeGrindPlan, grindPlan, inch, mm } from 'crankwright';
import { readShed, triage, triageReport } from 'crankwright/shed';
import {
  actionsFrom,
  describeAction,
  type Inspection,
  inspect,
  readSheet,
} from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { spoiltShed } from '../shed/sheds.js';
import { changed, exampleText, type Json } from '../sheet/sheets.js';

const WORSE = [0.00001, 0.00005, 0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.005];
const stated = (size: number) => `±${size.toFixed(5)} in`;
const bench = (changes: Readonly<Record<string, Json>>): Inspection =>
  inspect(readSheet(changed(JSON.parse(exampleText('inch')), { oil: undefined, ...changes })));

/** The verdict on everything that was measured, by its name. Runout is judged only where it is outside. */
function verdictsOf({ rods, mains, endPlay, cylinders }: Inspection): ReadonlyMap<string, string> {
  const bearings = [mains, rods].flatMap((group) => group?.bearings ?? []);
  const findings = [
    ...bearings.flatMap(({ name, findings: shape, bent, fitted }) =>
      [...shape, ...(bent ? [bent] : []), ...(fitted ? [fitted.explanation.finding] : [])].map(
        (finding) => [name, finding] as const,
      ),
    ),
    ...(endPlay ? [['crankshaft', endPlay.finding] as const] : []),
    ...cylinders.flatMap(({ name, findings: shape, piston, rings }) => [
      ...[...shape, ...(piston?.finding ? [piston.finding] : [])].map(
        (finding) => [name, finding] as const,
      ),
      ...rings.map(({ name: ring, filing }) => [`${name}, ${ring}`, filing.finding] as const),
    ]),
  ];
  return new Map(findings.map(([name, { feature, verdict }]) => [`${name}: ${feature}`, verdict]));
}

describe('as an instrument gets worse', () => {
  it.each([
    ['micrometer', ['oil clearance', 'out-of-round']],
    ['boreGauge', ['oil clearance', 'piston clearance', 'taper']],
    ['wallGauge', ['oil clearance']],
    ['feelerGauge', ['ring gap']],
    ['dialIndicator', ['end play']],
  ] as const)(
    'verdicts on what is read with the %s become undecided, and change in no other way',
    (instrument, features) => {
      const before = verdictsOf(bench({}));
      let last = before;
      for (const size of WORSE) {
        const now = verdictsOf(bench({ instruments: { [instrument]: stated(size) } }));
        for (const [name, verdict] of now) {
          // A runout within its limits was not among them before.
          const was = last.get(name) ?? 'undecided';
          expect([name, verdict]).toEqual([name, verdict === 'undecided' ? verdict : was]);
          // Once undecided, it stays so.
          if (was === 'undecided') expect([name, verdict]).toEqual([name, was]);
        }
        last = now;
      }
      for (const feature of features) {
        const became = [...last].filter(
          ([name, verdict]) =>
            name.includes(`: ${feature}`) &&
            verdict === 'undecided' &&
            before.get(name) !== verdict,
        );
        expect(became).not.toEqual([]);
      }
    },
  );

  it('what a rule decides, a bolder one decides too, and alike; simple acceptance decides everything', () => {
    for (const size of WORSE) {
      const by = (decisionRule: string) =>
        verdictsOf(
          bench({
            decisionRule,
            instruments: {
              micrometer: stated(size),
              boreGauge: stated(size),
              feelerGauge: stated(size),
              dialIndicator: stated(size),
              wallGauge: stated(size),
            },
          }),
        );
      const [simple, half, full] = [
        'simple acceptance',
        'ISO 14253-1:2017',
        'full expanded uncertainty',
      ].map(by) as [
        ReadonlyMap<string, string>,
        ReadonlyMap<string, string>,
        ReadonlyMap<string, string>,
      ];
      expect([...simple.values()]).not.toContain('undecided');
      for (const [bolder, shyer] of [
        [simple, half],
        [half, full],
      ] as const) {
        for (const [name, verdict] of shyer) {
          if (verdict !== 'undecided')
            expect([name, bolder.get(name) ?? 'within']).toEqual([name, verdict]);
        }
      }
    }
  });
});

describe('a crankshaft near its last step', () => {
  // Standard 1.6245 to 1.6250 in and steps to 20 under: it must leave 1.6050 in, a thousandth for the wheel and the
  // out-of-round of 0.0001 in, so that 1.6061 in at its smallest just cleans up.
  const shed = (smallest: number, instruments: Json = {}) => {
    const sizes = [smallest + 0.0001, smallest, smallest + 0.0001, smallest];
    const journals = [0, 1].flatMap((journal) =>
      sizes.map((size, i) => [
        `crankshafts[0].rodJournals[${journal}].readings[${i}].diameter`,
        `${size.toFixed(4)} in`,
      ]),
    );
    return triage(readShed(spoiltShed({ ...Object.fromEntries(journals), instruments })));
  };
  const dispositionOf = (smallest: number, instruments: Json = {}) =>
    shed(smallest, instruments).parts.find(({ name }) => name === 'crankshaft A')?.disposition;

  it('is scrap or not where nobody says how well it is measured', () => {
    expect(dispositionOf(1.606)).toBe('scrap');
    expect(dispositionOf(1.6061)).toBe('machine');
  });

  it('is undecided where it misses the step by less than it is measured to', () => {
    expect(dispositionOf(1.606, { micrometer: '±0.0002 in' })).toBe('undecided');
    expect(dispositionOf(1.606, { micrometer: '±0.0001 in' })).toBe('undecided');
    expect(dispositionOf(1.606, { micrometer: '±0.00005 in' })).toBe('scrap');
    expect(dispositionOf(1.6058, { micrometer: '±0.0002 in' })).toBe('scrap');
    const text = triageReport(shed(1.606, { micrometer: '±0.0002 in' }));
    expect(text).toContain('crankshaft A, from donor A: undecided until it is measured better');
    expect(text).toContain('measure rod 1, rod 2 again before you grind');
    expect(text).not.toContain('no step serves: rod 1');
  });

  it('is scrap all the same where other journals are past saving', () => {
    // Mains have steps to 40 under by default: 1.94 in is past them, and worn out of round.
    const mains = [0, 1, 2, 3].map((i) => [
      `crankshafts[0].mainJournals[0].readings[${i}].diameter`,
      i % 2 === 0 ? '1.9400 in' : '1.9388 in',
    ]);
    const rods = [0, 1, 2, 3].map((i) => [
      `crankshafts[0].rodJournals[0].readings[${i}].diameter`,
      '1.6059 in',
    ]);
    const found = (changes: readonly (readonly string[])[]) =>
      triage(
        readShed(
          spoiltShed({ ...Object.fromEntries(changes), instruments: { micrometer: '±0.0002 in' } }),
        ),
      ).parts.find(({ name }) => name === 'crankshaft A')?.disposition;
    expect(found(rods)).toBe('undecided');
    expect(found([...rods, ...mains])).toBe('scrap');
  });

  it('goes from no scrap to use, and from no use to scrap, however badly it is measured', () => {
    for (let tenths = 16035; tenths <= 16075; tenths += 8) {
      const surely = dispositionOf(tenths / 1e4);
      for (const size of WORSE) {
        const now = dispositionOf(tenths / 1e4, { micrometer: stated(size) });
        if (surely === 'scrap') expect(['scrap', 'undecided']).toContain(now);
        else expect(now).not.toBe('scrap');
      }
    }
  });

  it('is not sent to be straightened by a dial that does not tell', () => {
    const read = (dialIndicator: string) =>
      triage(
        readShed(
          spoiltShed({
            'engine.mainJournals.runout': { max: '0.0020 in' },
            'crankshafts[0].mainJournals[0].runout': '0.0022 in',
            instruments: { dialIndicator },
          }),
        ),
      ).parts.find(({ name }) => name === 'crankshaft A');
    expect(read('±0.0001 in')?.jobs.map(({ work }) => work)).toEqual(['straighten']);
    const part = read('±0.0010 in');
    expect(part?.disposition).toBe('undecided');
    expect(part?.jobs).toEqual([]);
    expect(part?.because.map(({ kind }) => kind)).toContain('measure again');
  });
});

describe('every part of a shed', () => {
  it('goes from no scrap to use as it is, and from no use to scrap, as instruments get worse', () => {
    const dispositions = (instruments: Json = {}) =>
      triage(readShed(spoiltShed({ instruments }))).parts.map(
        ({ name, disposition }) => [name, disposition] as const,
      );
    const surely = dispositions();
    for (const size of WORSE) {
      const instruments = Object.fromEntries(
        ['micrometer', 'boreGauge', 'wallGauge', 'feelerGauge', 'dialIndicator', 'depthGauge'].map(
          (one) => [one, stated(size)],
        ),
      );
      dispositions(instruments).forEach(([name, now], i) => {
        const was = surely[i]?.[1];
        if (was === 'scrap') expect([name, now]).not.toEqual([name, 'use as it is']);
        else expect([name, now]).not.toEqual([name, 'scrap']);
      });
    }
  });
});

describe('a journal 0.002 mm past a rule of thumb, measured to ±0.003 mm', () => {
  // The rule: within 0.0127 mm of its size. 41.2000 - 0.0127 - 0.0020 = 41.1853 mm.
  const journal = {
    name: 'rod 1',
    smallest: mm(41.1853),
    largest: mm(41.1853),
    outOfRound: mm(0),
    taper: mm(0),
  };
  const request = {
    journals: [journal],
    standard: { min: mm(41.2), max: mm(41.21) },
    steps: [mm(0.25)],
  };

  it('is not ground to its last size before it is measured again', () => {
    const plan = grindPlan({ ...request, sizeUncertainty: mm(0.003) });
    if (plan.outcome !== 'grind') expect.unreachable();
    expect(plan.stepsLeft).toBe(0);
    expect(plan.inDoubt?.journals.map(({ name, band }) => [name, band])).toEqual([
      ['rod 1', mm(0.003)],
    ]);
    expect(describeGrindPlan(plan, { units: 'metric' }).join('\n')).toContain(
      'measure again before you grind',
    );
  });

  it('nor where the owner set the limit, that it is past by less than it is measured to', () => {
    const own = { ...request, sizeAllowance: inch(0.0005) };
    const plan = (sizeUncertainty: number) =>
      grindPlan({ ...own, sizeUncertainty: mm(sizeUncertainty) });
    expect(plan(0.003)).toMatchObject({ outcome: 'grind', inDoubt: { undersize: 0 } });
    // Measured to ±0.001 mm, it is past it.
    expect(plan(0.001)).not.toHaveProperty('inDoubt');
  });

  it('nor on a sheet', () => {
    const readings = [6, 30].flatMap((station) =>
      [0, 90].map((angle) => ({
        station: `${station} mm`,
        angle: `${angle} deg`,
        diameter: '41.1853 mm',
      })),
    );
    const sheet = readSheet({
      version: 1,
      engine: 'pump set',
      units: 'metric',
      instruments: { micrometer: '±0.003 mm' },
      crankshaft: {
        rodJournals: {
          standard: { min: '41.200 mm', max: '41.210 mm' },
          steps: ['standard', '0.25 mm under'],
        },
      },
      rods: [{ name: 'rod 1', journal: { readings }, housingBore: '44.500 mm' }],
    });
    const texts = actionsFrom(inspect(sheet)).flatMap((action) =>
      describeAction(action, { units: 'metric' }),
    );
    const grind = texts.find((text) => text.includes('grind the rod journals to'));
    expect(grind).toMatch(
      /^rod 1 in doubt: measure again before any metal comes off; if rod 1 may not stay, grind/,
    );
  });

  it('and is not passed by a minimum that it is above by less than it is measured to', () => {
    const near = (smallest: number) =>
      grindPlan({
        ...request,
        journals: [{ ...journal, smallest: mm(smallest), largest: mm(smallest) }],
        steps: [mm(0)],
        minimum: mm(41.19),
        sizeUncertainty: mm(0.003),
      });
    expect(near(41.195).outcome).toBe('use as it is');
    for (const smallest of [41.192, 41.1885]) {
      expect(near(smallest)).toMatchObject({
        outcome: 'none',
        nearly: { undersize: 0, journals: ['rod 1'] },
      });
    }
  });
});
