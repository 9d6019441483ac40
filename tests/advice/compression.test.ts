import {
  type CompressionReadings,
  compressionTest,
  crankingPressure,
  degree,
  dipperDip,
  foot,
  inch,
  leakDown,
  mL,
  mm,
  pistonStandDown,
  psi,
  psiGauge,
  publishedCompressionRules,
  ratio,
  skimForRatio,
  squareMm,
  standardAirPressure,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

const engine = (...readings: readonly (readonly [dry: number, wet?: number])[]) =>
  readings.map(
    ([dry, wet], i): CompressionReadings => ({
      name: String(i + 1),
      dry: psiGauge(dry),
      ...(wet !== undefined && { wet: psiGauge(wet) }),
    }),
  );

describe('a compression test', () => {
  it('passes by one manual and fails by the next: the result says so, and condemns nobody', () => {
    const { outcome, byOwnRules, rules } = compressionTest({
      cylinders: engine([100], [97], [84], [98]),
      rules: publishedCompressionRules(),
    });
    expect(outcome).toBe('rules disagree');
    expect(byOwnRules).toBeUndefined();
    expect(rules.map(({ verdict }) => verdict)).toEqual(['kept', 'kept', 'kept', 'broken']);
    // 16 psi apart is too much for another engine's manual alone.
    expect(rules[3]?.finding.grade).toBe('undecided');
  });

  it('hears the maker first', () => {
    const maker = {
      kind: 'at least',
      least: psiGauge(80),
      basis: { kind: 'specified', by: 'the manual' },
    } as const;
    const test = compressionTest({
      cylinders: engine([100], [84]),
      rules: [maker, ...publishedCompressionRules()],
    });
    expect([test.outcome, test.byOwnRules]).toEqual(['rules disagree', 'kept']);
  });

  it('does not decide two psi from the limit with a gauge that is good to three', () => {
    const rules = [{ kind: 'at least', least: psiGauge(80) }] as const;
    const cylinders = engine([82], [95]);
    expect(compressionTest({ cylinders, rules, gaugeWithin: psi(3) }).outcome).toBe('undecided');
    const trusting = compressionTest({ cylinders, rules });
    expect([trusting.outcome, trusting.takenAsExact]).toEqual(['kept', ['gauge', 'repeats']]);
  });

  it('does not call an engine good that has a cylinder nobody read', () => {
    const cylinders = [...engine([100], [98]), { name: '3' }];
    const test = compressionTest({ cylinders, rules: publishedCompressionRules() });
    expect([test.outcome, test.notRead]).toEqual(['undecided', ['3']]);
  });

  it('points to rings where oil helps, to valves where it does not, and to nothing on a good cylinder', () => {
    const { oiled } = compressionTest({
      cylinders: engine([100, 103], [70, 95], [68, 70]),
      rules: [{ kind: 'share of highest', least: ratio(0.75) }],
    });
    expect(oiled.map(({ suggests }) => suggests)).toEqual([
      'nothing',
      'rings or bore',
      'valves or gasket',
    ]);
  });

  it('does not tell rings from valves by a rise that the readings themselves scatter by', () => {
    const { oiled } = compressionTest({
      cylinders: engine([100], [70, 78]),
      rules: [{ kind: 'share of highest', least: ratio(0.75) }],
      repeatsWithin: psi(2),
    });
    expect(oiled[0]?.suggests).toBe('undecided');
  });

  it('suspects the gasket between two low neighbours, not between strangers, heads or worn rings', () => {
    const rules = [{ kind: 'share of highest', least: ratio(0.75) }] as const;
    const between = (cylinders: readonly CompressionReadings[]) =>
      compressionTest({ cylinders, rules }).gasketBetween;
    expect(between(engine([100], [40], [42], [98]))).toEqual([['2', '3']]);
    expect(between(engine([40], [100], [42], [98]))).toEqual([]);
    expect(between(engine([100], [40, 80], [42, 85], [98]))).toEqual([]);
    const twoHeads = engine([100], [40], [42], [98]).map((one, i) => ({
      ...one,
      head: i < 2 ? 'front' : 'rear',
    }));
    expect(between(twoHeads)).toEqual([]);
  });

  it('expects less on a hill, so that nobody tears a sound engine down', () => {
    const engineOf = {
      stroke: inch(3.25),
      rodLength: inch(6),
      compressionRatio: ratio(5.5),
      inletCloses: degree(50),
    };
    const sea = crankingPressure(engineOf).gauge;
    const airPressure = standardAirPressure(foot(5000));
    const hill = crankingPressure({ ...engineOf, airPressure }).gauge;
    // The ISA has 0.832 of the pressure there.
    expect(hill.max / sea.max).toBeCloseTo(0.832, 3);
  });
});

describe('a leakage test', () => {
  const tester = { supply: psiGauge(80), orifice: inch(0.04), bore: inch(3) };

  it('names what leaks where it is heard, and leaves a cylinder past the circular undecided', () => {
    const { finding, suspects } = leakDown({
      ...tester,
      held: psiGauge(52),
      heardAt: ['exhaust', 'breather'],
    });
    expect(finding).toMatchObject({ verdict: 'above', grade: 'undecided' });
    expect(suspects?.map(({ part }) => part)).toEqual(['exhaust valve', 'rings, piston or bore']);
  });

  it("does not hold a cheap tester's loss against a limit made for another orifice", () => {
    expect(leakDown({ supply: psiGauge(80), held: psiGauge(40) }).finding).toBeUndefined();
    const wide = { supply: psiGauge(80), held: psiGauge(40), orifice: inch(0.1) };
    expect(leakDown(wide).finding).toBeUndefined();
    const own = leakDown({ ...wide, limits: { max: ratio(0.2) } }).finding;
    expect(own).toMatchObject({ verdict: 'above', grade: 'worn out' });
  });

  it('does not decide where the gauges alone could turn it', () => {
    const { finding } = leakDown({ ...tester, held: psiGauge(61), gaugeWithin: psi(1) });
    expect(finding?.verdict).toBe('undecided');
  });

  it('shows how hard the air pushes: more than a hand holds', () => {
    const { pistonForce } = leakDown({ ...tester, held: psiGauge(70) });
    // 80 psi on π/4 · 3² in² is 565.5 lbf, 2515 N.
    expect(pistonForce).toBeCloseTo(2515, 0);
  });
});

describe('at assembly', () => {
  it('does not tell to skim past what the maker lets come off', () => {
    const work = skimForRatio({
      bore: mm(80),
      stroke: mm(80),
      chamber: { min: mL(74), max: mL(76) },
      deckClearance: mm(0),
      gasket: { thickness: mm(1), area: squareMm(9000) },
      wanted: ratio(6),
      skimArea: squareMm(9000),
      mayComeOff: mm(0.25),
    });
    // (74 + 9 - 402.12 / 5) mL over 90 cm² is 0.286 mm at least.
    expect(work.outcome).toBe('too much to skim');
    expect(work.outcome === 'too much to skim' && work.needed).toBeCloseTo(mm(0.2862), 6);
  });

  it('warns of a dipper that reaches the oil at the high mark only', () => {
    const { reachesOil, strikes } = dipperDip({
      stroke: inch(3),
      rodLength: inch(6),
      cylinder: 'upright',
      dipper: inch(1.5),
      centreAboveFloor: inch(3.4),
      oilDepth: { min: inch(0.3), max: inch(0.6) },
    });
    expect([reachesOil, strikes]).toEqual(['maybe', 'no']);
  });

  it('finds the piston that stands too low, as with a bent rod', () => {
    const sizes = {
      deckHeight: inch(9.02),
      stroke: inch(3.5),
      rodLength: inch(5.7),
      pinHeight: { min: inch(1.55), max: inch(1.555) },
    };
    expect(pistonStandDown({ ...sizes, measured: inch(0.018) }).stands).toBe('as the sizes say');
    expect(pistonStandDown({ ...sizes, measured: inch(0.035) }).stands).toBe('too low');
  });
});
