import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';

type Cylinder = Readonly<Record<string, unknown>>;

const sheet = (cylinders: readonly Cylinder[], assembly: object = {}, errors: object = {}) =>
  readSheet({
    version: 1,
    engine: 'e',
    units: 'inch',
    compressionTest: { cylinders, ...errors },
    assembly,
  });
const toDo = (...of: Parameters<typeof sheet>) =>
  actionsFrom(inspect(sheet(...of))).flatMap((action) => describeAction(action, { units: 'inch' }));
const flowing = (...of: Parameters<typeof sheet>) =>
  report(inspect(sheet(...of))).replace(/\s+/g, ' ');

const own = {
  compression: {
    rules: [{ kind: 'at least', least: '60 psi gauge', source: 'the manual' }],
  },
};

describe('a compression test on a sheet', () => {
  it('is judged by the rule of the sheet', () => {
    const cylinders = [
      { name: 'cylinder 1', dry: '72 psi gauge' },
      { name: 'cylinder 2', dry: '48 psi gauge', wet: '66 psi gauge' },
    ];
    expect(inspect(sheet(cylinders, own)).compression?.test?.byOwnRules).toBe('broken');
    expect(toDo(cylinders, own)).toEqual([
      'cylinder 2: low compression; test again, warm and with the throttle open; if it stands, set the lash first, then read it with a little oil, then find the leak with air: a piston under air can spin the crank',
    ]);
    const said = flowing(cylinders, own);
    expect(said).toContain('By the rules of this engine the readings break the rules.');
    // 66 over 48 is more than a tenth.
    expect(said).toContain('cylinder 2: oil raises it, which speaks of rings or bore');
    expect(said).toContain('taken as exact, as nothing is said of the error of the gauge');
  });

  it('is held against rules of other engines where it has none, which see no cylinder low if all are', () => {
    const cylinders = [
      { name: '1', dry: '20 psi gauge' },
      { name: '2', dry: '21 psi gauge' },
    ];
    expect(inspect(sheet(cylinders)).compression?.test?.byOwnRules).toBeUndefined();
    expect(flowing(cylinders)).toContain('by the rules of other engines, which only advise');
    expect(flowing(cylinders)).toContain(
      'They only compare the cylinders with each other: where all are low, they do not show it.',
    );
    const uneven = [...cylinders, { name: '3', dry: '60 psi gauge' }];
    expect(toDo(uneven)[0]).toContain(
      'low compression by a rule of another engine, which only advises: find the rule of this one',
    );
  });

  it('does not decide on a cylinder that nobody read', () => {
    const cylinders = [{ name: '1', dry: '72 psi gauge' }, { name: '2' }];
    expect(inspect(sheet(cylinders, own)).compression?.test?.outcome).toBe('undecided');
    expect(toDo(cylinders, own)).toEqual([]);
    expect(flowing(cylinders, own)).toContain('undecided, as 2 was not read');
    expect(flowing(cylinders, own)).toContain('2: its compression');
    // Without any reading there is no test, and the table says so.
    const none = inspect(sheet([{ name: '1' }]));
    expect(none.compression?.test).toBeUndefined();
    expect(report(none)).toContain('not read');
  });
});

describe('a leakage test on a sheet', () => {
  const leaking = (heardAt: readonly string[] | undefined) => [
    {
      name: '1',
      leakage: {
        supply: '80 psi gauge',
        held: '44 psi gauge',
        orifice: '0.040 in',
        ...(heardAt && { heardAt }),
      },
    },
  ];
  const engine = {
    bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
  };
  const inspected = (heardAt?: readonly string[]) =>
    inspect(
      readSheet({
        version: 1,
        engine: 'e',
        units: 'inch',
        ...engine,
        compressionTest: { cylinders: leaking(heardAt) },
      }),
    );

  it('tells what is lost, and where it goes', () => {
    // 1 - 44 / 80 = 45 %, over the 25 % of the circular that the tester is of.
    const [leak] = inspected(['breather']).compression?.leakage ?? [];
    expect(leak?.leak.lost).toBeCloseTo(0.45, 12);
    const [said = ''] = actionsFrom(inspected(['breather'])).flatMap((action) =>
      describeAction(action, { units: 'inch' }),
    );
    expect(said).toContain('look at rings, piston or bore before anything is ground');
    expect(said).toContain('a piston under air can spin the crank');
    expect(report(inspected(['breather']))).toContain('air at the breather');
    const [unheard = ''] = actionsFrom(inspected()).flatMap((action) =>
      describeAction(action, { units: 'inch' }),
    );
    expect(unheard).toContain('look at where the air comes out');
  });

  it('of another tester is not judged without a limit', () => {
    const other = [{ name: '1', leakage: { supply: '60 psi gauge', held: '30 psi gauge' } }];
    expect(toDo(other)).toEqual([]);
    expect(flowing(other)).toContain('1: it loses 50 % of the pressure of this tester; not judged');
  });
});

describe('what wrecks an engine stands among the things to do', () => {
  const crank = { rodLength: '6.000 in' };
  const actions = (assembly: object) =>
    actionsFrom(
      inspect(
        readSheet({
          version: 1,
          engine: 'e',
          units: 'inch',
          bores: { standard: { min: '3.0000 in', max: '3.0005 in' }, stroke: '3.25 in' },
          assembly: { ...crank, ...assembly },
        }),
      ),
    ).flatMap((action) => describeAction(action, { units: 'inch' }));

  it('a torque that overloads its bolts', () => {
    // 360 lbf·in / (0.10 * 0.3125 in) = 11 520 lbf, over 85 000 psi * 0.0581 in² = 4938 lbf.
    const rodCaps = {
      thread: '5/16-24 UNF',
      grade: 'SAE 5',
      condition: 'oiled',
      torque: '30 lbf ft',
    };
    expect(actions({ fasteners: { rodCaps } })[0]).toMatch(
      /^Rod caps: do not tighten to that torque before .* highest preload 11520\.0 lbf/,
    );
  });

  it('a dipper that strikes', () => {
    // 1.625 + 1.9 = 3.525 in down, and the floor at 3.4.
    const dipper = {
      cylinder: 'upright',
      dipper: '1.900 in',
      centreAboveFloor: '3.400 in',
      oilDepth: '0.5 in',
    };
    expect(actions({ dipper })).toEqual([
      'By these sizes a dipper strikes the floor of its trough: measure again, and do not turn the crankshaft with the pan on before that',
    ]);
  });

  it('a spark that throws the handle back, or may', () => {
    const spark = { advance: '22 deg', speedRatio: '1', lag: '8 deg' };
    expect(actions({ timing: { spark } })[0]).toMatch(
      /^do not swing the starting handle before this is settled: .*throws the starting handle back/,
    );
    const { lag, ...unknown } = spark;
    expect(actions({ timing: { spark: unknown } })[0]).toContain(
      'do not swing the starting handle',
    );
    expect(actions({ timing: { spark: { ...spark, lag: '24 deg' } } })).toEqual([]);
  });
});
