import { cubicInch, degree, inch, lbfFoot, mm, ratio, thou, threadOf, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { assemblyChecks } from '../../src/assembly/checks.js';
import { describeDipper } from '../../src/assembly/describe-dipper.js';
import { sayLimits } from '../../src/assembly/say-limits.js';
import { assemblySettings } from '../../src/assembly/settings.js';
import { type AssemblyData, problemsFrom } from '../../src/reading/index.js';

const stroke = inch(3.25);
const bore = { min: inch(3), max: inch(3) };
const compression = {
  chamber: cubicInch(4),
  gasket: 'none',
  deckClearance: inch(0.02),
} as const;
const dipper = {
  cylinder: 'upright',
  dipper: inch(1.75),
  centreAboveFloor: inch(3.5),
  oilDepth: { min: inch(0.375), max: inch(0.5) },
} as const;

describe('the settings of an engine', () => {
  it('of which nothing is known are none', () => {
    expect(assemblySettings({})).toEqual({ fasteners: [], valves: [], rings: {}, fits: [] });
    expect(assemblySettings({ fasteners: {}, valves: {}, rings: {} })).toEqual(
      assemblySettings({}),
    );
  });

  it('come in the order of the work', () => {
    const torque = lbfFoot(20);
    const { fasteners, valves, wrench } = assemblySettings({
      wrench: 'lbf·in',
      fasteners: { flywheel: { torque }, head: { torque }, rodCaps: { torque }, mainCaps: {} },
      valves: { exhaust: { lash: { min: thou(12) } }, inlet: {} },
    });
    expect(wrench).toBe('lbf·in');
    expect(fasteners.map(({ holds }) => holds)).toEqual([
      'mainCaps',
      'rodCaps',
      'head',
      'flywheel',
    ]);
    expect(valves.map(({ valve }) => valve)).toEqual(['inlet', 'exhaust']);
  });

  it('have the room of the rings with whose limits they are', () => {
    const { rings } = assemblySettings({
      rings: {
        sideClearance: { max: thou(4), source: 'sheet 2' },
        backClearance: { min: thou(5) },
      },
    });
    expect(rings.sideClearance?.basis).toEqual({ kind: 'specified', by: 'sheet 2' });
    expect(rings.backClearance?.limits).toEqual({ min: thou(5) });
  });

  it('take how well a clearance was read', () => {
    const fits = [
      { name: 'pin', clearance: { max: mm(0.02) }, hole: mm(20.021), shaft: mm(20) },
    ] as const;
    // 21 µm over 20 µm: decided by itself, not if it may be 5 µm off.
    expect(assemblySettings({ fits }).fits[0]?.finding?.verdict).toBe('above');
    const certainty = { uncertainty: mm(0.005) };
    expect(assemblySettings({ fits }, { certainty }).fits[0]?.finding?.verdict).toBe('undecided');
  });

  it('join what stands in several places of the file', () => {
    const valves = {
      inletCloses: { angle: degree(45), after: 'bottom' },
      within: degree(2),
    } as const;
    const data: AssemblyData = { rodLength: inch(6), compression, timing: { valves }, dipper };
    const all = assemblySettings(data, { bore, stroke });
    expect(all.compression?.ratio).toBeDefined();
    // 45° and 2° either way: the travel left differs.
    expect(all.compression?.cranking?.travelLeft.min).toBeLessThan(
      all.compression?.cranking?.travelLeft.max ?? 0,
    );
    expect(all.timing?.card.notGiven).toEqual(['rim diameter']);
    // Without the stroke nothing of it has a piston.
    const alone = assemblySettings(data);
    expect(alone.compression?.notGiven).toEqual(['bore', 'stroke']);
    expect(alone.timing?.card.notGiven).toEqual(['rim diameter', 'stroke and rod']);
    expect(alone.dipper).toBeUndefined();
    const { rodLength: _, ...noRod } = data;
    expect(assemblySettings(noRod, { bore, stroke }).dipper).toBeUndefined();
  });
});

describe('the dippers', () => {
  const at = (more: Partial<NonNullable<AssemblyData['dipper']>> = {}) => {
    const settings = assemblySettings(
      { rodLength: inch(6), dipper: { ...dipper, ...more } },
      { stroke },
    );
    if (!settings.dipper) throw new Error('stroke and rod are known');
    return settings.dipper;
  };

  it('go as deep as crank, dipper and oil let them', () => {
    // Lowest point 3.25 / 2 + 1.75 = 3.375 in below the crank, 0.125 in over the floor at 3.5 in: 0.375 - 0.125 to
    // 0.5 - 0.125 in deep.
    const { dip, clearance } = at();
    expect([dip.min, dip.max].map((end) => valueIn(end, inch))).toEqual([
      expect.closeTo(0.25, 9),
      expect.closeTo(0.375, 9),
    ]);
    expect(valueIn(clearance.min, inch)).toBeCloseTo(0.125, 9);
    expect(describeDipper(at(), { units: 'inch' })).toEqual({
      depth:
        'by the sizes of the file 0.2500 to 0.3750 in, with 0.1250 in left to the floor of the trough',
      dangers: [],
      notes: [],
    });
  });

  it('are told if they strike the floor or miss the oil', () => {
    const said = (centre: number, oil: object) =>
      describeDipper(at({ centreAboveFloor: inch(centre), oilDepth: oil as never }), {
        units: 'inch',
      }).dangers.join();
    const between = (min: number, max: number) => ({ min: inch(min), max: inch(max) });
    // It reaches 3.375 in down. A floor 3.35 in down is struck.
    expect(said(3.35, between(0.4, 0.5))).toContain('strikes the floor');
    // 0.125 in over the floor: 0.1 in of oil is missed, 0.1 to 0.2 in may be.
    expect(said(3.5, between(0.1, 0.1))).toContain('no dipper reaches the oil');
    expect(said(3.5, between(0.1, 0.2))).toContain('may miss the oil');
    const dippers = at({ dipper: { min: inch(1.7), max: inch(1.9) } });
    // Down to 3.325 or to 3.525 in, where the floor is at 3.5 in.
    expect(describeDipper(dippers, { units: 'inch' }).dangers.join()).toContain(
      'may strike the floor',
    );
  });

  it('are judged by the limits of the file', () => {
    const { dipFinding, clearanceFinding } = at({
      dip: { max: inch(0.3), source: 'sheet 1' },
      clearance: { min: inch(0.06), source: 'sheet 1' },
    });
    expect(dipFinding?.verdict).toBe('above');
    expect(clearanceFinding?.verdict).toBe('within');
    const { notes } = describeDipper(at({ clearance: { min: inch(0.2) } }), { units: 'inch' });
    expect(notes).toEqual([
      'clearance of the dipper 0.1250 in: 0.0750 in below the limit of 0.2000 in (specified)',
    ]);
  });
});

describe('the checks of an assembly', () => {
  const problems = (data: AssemblyData | undefined, around = { stroke }) =>
    problemsFrom(assemblyChecks('here', data, around)).map(({ path }) => path);

  it('find nothing wrong with nothing', () => {
    expect(problems(undefined)).toEqual([]);
    expect(problems({})).toEqual([]);
    expect(problems({ rodLength: inch(6), compression, dipper, timing: {} })).toEqual([]);
  });

  it('tell a rod that cannot belong to the stroke, once', () => {
    // The throw is 1.625 in.
    const short: AssemblyData = { rodLength: inch(1.5), compression, dipper, timing: {} };
    expect(problems(short)).toEqual(['here.rodLength']);
    // Without the stroke nobody can tell.
    expect(problemsFrom(assemblyChecks('here', short, {}))).toEqual([]);
  });

  it('tell a bolt that cannot be', () => {
    // SAE bolts end at 1-1/2 in, and start at 1/4 in.
    const small = { thread: threadOf('No. 10-24 UNC'), grade: 'SAE 8', condition: 'dry' } as const;
    expect(problems({ fasteners: { rodCaps: small } })).toEqual(['here.fasteners.rodCaps']);
    // Backwards along the wrench, and as long as it.
    const adapter = { wrench: inch(6), adapter: inch(6), angle: degree(180) };
    expect(problems({ fasteners: { head: { torque: lbfFoot(20), adapter } } })).toEqual([
      'here.fasteners.head',
    ]);
    // An oval shank that is thicker than its thread.
    const thick = {
      thread: threadOf('3/8-24 UNF'),
      grade: 'SAE 5',
      condition: 'dry',
      leastDiameter: inch(0.5),
    } as const;
    expect(problems({ fasteners: { flywheel: thick } })).toEqual(['here.fasteners.flywheel']);
  });

  it('tell the place of each of the other mistakes', () => {
    const full: AssemblyData = { rodLength: inch(6), compression, dipper };
    // A crown of 5 in³ in 4 in³ of chamber leaves no room.
    const crown = { ...compression, crown: cubicInch(5) };
    expect(
      problemsFrom(assemblyChecks('here', { ...full, compression: crown }, { bore, stroke })),
    ).toEqual([expect.objectContaining({ path: 'here.compression' })]);
    // The deck comes nowhere near throw, rod and pin height: 1.625 + 6 + 1.85 = 9.475 in.
    const low = { ...compression, deckHeight: inch(5), pinHeight: inch(1.85) };
    expect(problems({ ...full, compression: low })).toEqual(['here.compression']);
  });

  it('tell springs that are no springs', () => {
    const spring = (height: number, force: number) => ({
      height: inch(height),
      force: { min: force as never },
    });
    const valves = (closedSpring: object, openSpring: object) =>
      ({ valves: { exhaust: { closedSpring, openSpring } } }) as AssemblyData;
    expect(problems(valves(spring(1.15, 150), spring(0.85, 350)))).toEqual([]);
    // Longer when open, and weaker when open.
    expect(problems(valves(spring(1.15, 150), spring(1.25, 350)))).toEqual([
      'here.valves.exhaust.openSpring',
    ]);
    expect(problems(valves(spring(1.15, 350), spring(0.85, 150)))).toEqual([
      'here.valves.exhaust.openSpring',
    ]);
  });

  it('tell a shaft that was never in its hole', () => {
    const fits = [
      { name: 'pin', hole: mm(20), shaft: mm(20.02) },
      { name: 'gear', hole: mm(28), shaft: mm(2.8) },
      { name: 'bush', isoFit: '20H7/g6', hole: mm(200) },
      { name: 'key', inchFit: { fitClass: 'FN2', basic: inch(1.125) }, shaft: mm(1.125) },
    ] as const;
    expect(problems({ fits })).toEqual([
      'here.fits[1].shaft',
      'here.fits[2].hole',
      'here.fits[3].shaft',
    ]);
  });

  it('pass over what could not be read', () => {
    const gaps = {
      fits: [undefined],
      compression: { ...compression, rules: [undefined, { kind: 'spread', most: 1e5 }] },
      fasteners: { head: { torque: lbfFoot(20), bolts: [undefined] } },
      valves: { inlet: undefined },
      timing: undefined,
      rodLength: inch(6),
    } as unknown as AssemblyData;
    expect(problems(gaps)).toEqual([]);
  });
});

describe('limits', () => {
  it('are told with one bound or two', () => {
    const said = (limits: object) => sayLimits({ limits }, 'length', 'inch');
    expect(said({ min: thou(8), max: thou(10) })).toBe('0.0080 to 0.0100 in');
    expect(said({ min: thou(8) })).toBe('at least 0.0080 in');
    expect(said({ max: thou(10) })).toBe('at most 0.0100 in');
    expect(sayLimits({ limits: { min: ratio(2) } }, 'ratio', 'inch')).toContain('at least');
  });
});
