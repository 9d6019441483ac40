import {
  type Area,
  type CompressionRule,
  clearanceVolumeByBurette,
  compressionInAir,
  compressionRatio,
  compressionTest,
  crankingPressure,
  crownVolumeByBurette,
  degree,
  foot,
  type GaugePressure,
  gasketForRatio,
  inch,
  type Length,
  leakDown,
  mL,
  mm,
  pistonMotion,
  psi,
  psiGauge,
  type Ratio,
  radian,
  ratio,
  rpm,
  skimForRatio,
  squareMm,
  standardAirPressure,
  standardAtmosphere,
  sweptVolume,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cylinder = {
  bore: mm(80),
  stroke: mm(80),
  chamber: mL(70),
  deckClearance: mm(0.2),
  gasket: { thickness: mm(1), bore: mm(82) },
};

describe('a burette', () => {
  it('has no spread from one pouring, and the spread of several', () => {
    expect(clearanceVolumeByBurette({ poured: [mL(60)] }).spread).toBeUndefined();
    const { volume, mean, spread } = clearanceVolumeByBurette({
      poured: [mL(60), mL(63)],
      besides: mL(0.5),
      within: mL(0.25),
    });
    expect(volume.min).toBeCloseTo(mL(59.25), 12);
    expect(volume.max).toBeCloseTo(mL(62.75), 12);
    expect(mean).toBeCloseTo(mL(61), 12);
    expect(spread).toBeCloseTo(mL(3), 12);
  });

  it('finds the crown that was hidden in the bore, dome or dish', () => {
    fc.assert(
      fc.property(share(-5e-6, 5e-6), (crown) => {
        const plain = sweptVolume({ bore: mm(80), stroke: mm(12) });
        const poured = (plain - crown) as typeof plain;
        const found = crownVolumeByBurette({ bore: mm(80), depth: mm(12), poured: [poured] });
        expect(found.min).toBeCloseTo(crown, 15);
      }),
    );
  });
});

describe('compressionRatio', () => {
  it('is the same whether the spaces are given one by one or poured at once', () => {
    const { clearanceVolume, ratio: found } = compressionRatio(cylinder);
    const whole = compressionRatio({
      ...cylinder,
      chamber: clearanceVolume.min,
      deckClearance: mm(0),
      gasket: 'none',
    });
    expect(whole.ratio.min).toBeCloseTo(found.min, 12);
    expect(compressionRatio(cylinder).pistonToHeadFace.min).toBeCloseTo(mm(1.2), 12);
  });

  it('falls with every space and rises with a dome; a side valve has its pocket in the block', () => {
    const { ratio: plain } = compressionRatio(cylinder);
    expect(compressionRatio({ ...cylinder, blockChamber: mL(20) }).ratio.max).toBeLessThan(
      plain.min,
    );
    expect(compressionRatio({ ...cylinder, crown: mL(5) }).ratio.min).toBeGreaterThan(plain.max);
    expect(compressionRatio({ ...cylinder, crown: mL(-5) }).ratio.max).toBeLessThan(plain.min);
    const shaped = { ...cylinder, gasket: { thickness: mm(1), area: squareMm(9000) } };
    expect(compressionRatio(shaped).gasketVolume).toBeCloseTo(mL(9), 12);
  });

  it('takes every span at its worst', () => {
    const span = compressionRatio({
      ...cylinder,
      chamber: { min: mL(69), max: mL(71) },
      deckClearance: { min: mm(0.1), max: mm(0.3) },
      crown: { min: mL(-1), max: mL(1) },
    });
    const at = (chamber: number, deck: number, crown: number) =>
      compressionRatio({
        ...cylinder,
        chamber: mL(chamber),
        deckClearance: mm(deck),
        crown: mL(crown),
      }).ratio.min;
    expect(span.ratio.max).toBeCloseTo(at(69, 0.1, 1), 12);
    expect(span.ratio.min).toBeCloseTo(at(71, 0.3, -1), 12);
  });

  it('refuses a piston that would have no room', () => {
    const none = { ...cylinder, chamber: mL(0), crown: mL(8) };
    expect(refusal(() => compressionRatio(none)).parameter).toBe('chamber');
  });
});

describe('a ratio that is wanted', () => {
  it('is there after the skim, and with the gasket', () => {
    fc.assert(
      fc.property(share(6.5, 9), share(6e-3, 1e-2), (wanted, skimArea) => {
        const work = skimForRatio({
          ...cylinder,
          wanted: wanted as Ratio,
          skimArea: skimArea as Area,
        });
        if (work.outcome !== 'skim') return expect.fail(work.outcome);
        const chamber = mL(70 - work.by.min * skimArea * 1e6);
        expect(compressionRatio({ ...cylinder, chamber }).ratio.min).toBeCloseTo(wanted, 9);
        const found = gasketForRatio({
          ...cylinder,
          chamber: mL(45),
          gasket: { bore: mm(82) },
          wanted: wanted as Ratio,
        });
        if (found.outcome !== 'gasket') return expect.fail(found.outcome);
        const gasket = { bore: mm(82), thickness: found.thickness.min };
        const fitted = compressionRatio({ ...cylinder, chamber: mL(45), gasket });
        expect(fitted.ratio.min).toBeCloseTo(wanted, 9);
      }),
    );
  });

  it('says what else it may be: there already, too high, or more than may come off', () => {
    const to = (wanted: number, mayComeOff?: Length) =>
      skimForRatio({
        ...cylinder,
        wanted: ratio(wanted),
        skimArea: squareMm(9000),
        ...(mayComeOff !== undefined && { mayComeOff }),
      });
    const now = compressionRatio(cylinder).ratio.min;
    expect(to(now).outcome).toBe('as wanted');
    expect(to(5).outcome).toBe('too high already');
    expect(to(7, mm(0.5)).outcome).toBe('too much to skim');
    expect(to(7, mm(3))).toMatchObject({ outcome: 'skim', leastLeft: 'kept' });
    expect(to(7)).toMatchObject({ outcome: 'skim', leastLeft: 'not known' });
    const none = gasketForRatio({ ...cylinder, gasket: { bore: mm(82) }, wanted: ratio(12) });
    expect(none.outcome).toBe('no gasket is thin enough');
  });

  it('is refused at 1 and below, for skimming, gaskets and cranking', () => {
    for (const wanted of [ratio(1), ratio(0.5)]) {
      const skimmed = { ...cylinder, wanted, skimArea: squareMm(9000) };
      expect(refusal(() => skimForRatio(skimmed)).parameter).toBe('wanted');
      const fitted = { ...cylinder, gasket: { bore: mm(82) }, wanted };
      expect(refusal(() => gasketForRatio(fitted)).parameter).toBe('wanted');
      expect(
        refusal(() => crankingPressure({ ...crank, compressionRatio: wanted })).parameter,
      ).toBe('compressionRatio');
    }
  });
});

const crank = {
  stroke: mm(80),
  rodLength: mm(150),
  compressionRatio: ratio(6),
  inletCloses: degree(50),
};

describe('crankingPressure', () => {
  it('begins to squeeze where the piston is when the valve shuts', () => {
    fc.assert(
      fc.property(share(0.01, 1.5), (past) => {
        const { travelLeft, effectiveRatio } = crankingPressure({
          ...crank,
          inletCloses: radian(past),
        });
        const { position } = pistonMotion({
          stroke: crank.stroke,
          rodLength: crank.rodLength,
          speed: rpm(0),
          crankAngle: radian(Math.PI + past),
        });
        expect(travelLeft.min).toBeCloseTo(position, 12);
        expect(effectiveRatio.min).toBeCloseTo(1 + (5 * position) / 0.08, 9);
      }),
    );
  });

  it('is a wider span for what is known less, and says whose exponent it is', () => {
    const usual = crankingPressure(crank);
    const vague = crankingPressure({
      ...crank,
      inletCloses: { min: degree(40), max: degree(60) },
      exponent: { min: ratio(1.15), max: ratio(1.35) },
    });
    expect(vague.gauge.min).toBeLessThan(usual.gauge.min);
    expect(vague.gauge.max).toBeGreaterThan(usual.gauge.max);
    expect([usual.basis.kind, vague.basis.kind]).toEqual(['common practice', 'specified']);
  });

  it('falls with the air as compressionInAir moves a figure', () => {
    const high = standardAirPressure(foot(5000));
    const [here, there] = [
      crankingPressure(crank),
      crankingPressure({ ...crank, airPressure: high }),
    ];
    const moved = compressionInAir({
      reading: here.gauge.max,
      from: standardAtmosphere,
      to: high,
    });
    expect(moved).toBeCloseTo(there.gauge.max, 3);
  });

  it('refuses a rod shorter than its throw by name', () => {
    expect(refusal(() => crankingPressure({ ...crank, rodLength: mm(39) })).parameter).toBe(
      'rodLength',
    );
  });
});

describe('leakDown', () => {
  const fed = { supply: psiGauge(80), orifice: inch(0.04) };

  it('finds a hole like the orifice where the absolute pressure is split as two like holes split it', () => {
    // Both holes pass the same: p1 ψ(p2 / p1) = p2 ψ*, the second at the speed of sound. Solved by halving here.
    const psiOf = (r: number) => Math.sqrt(7 * (r ** (2 / 1.4) - r ** (2.4 / 1.4)));
    const p1 = fed.supply + standardAtmosphere;
    let [low, high] = [0.53 * p1, p1];
    for (let i = 0; i < 60; i++) {
      const mid = (low + high) / 2;
      if (p1 * psiOf(mid / p1) > mid * psiOf(0.528_281_787_717)) low = mid;
      else high = mid;
    }
    const held = (low - standardAtmosphere) as GaugePressure;
    const { leakArea } = leakDown({ ...fed, held });
    expect((leakArea?.min ?? 0) / ((Math.PI / 4) * fed.orifice ** 2)).toBeCloseTo(1, 9);
  });

  it('grows as less is held, and does not care for the discharge coefficient', () => {
    fc.assert(
      fc.property(share(1, 79), share(0.1, 0.9), (held, by) => {
        const area = (one: number, discharge: Ratio) =>
          leakDown({ ...fed, held: psiGauge(one), discharge }).leakArea?.min ?? 0;
        expect(area(held, ratio(0.8))).toBe(area(held, ratio(1)));
        expect(area(held * by, ratio(1))).toBeGreaterThan(area(held, ratio(1)));
      }),
    );
  });

  it('leaves out what was not given, and an area where nothing was held', () => {
    const bare = leakDown({ supply: psiGauge(80), held: psiGauge(70) });
    expect(Object.keys(bare)).toEqual(['lost']);
    const hole = leakDown({ ...fed, held: psiGauge(0) });
    expect([hole.leakArea, hole.lost]).toEqual([undefined, 1]);
    expect(leakDown({ ...fed, held: psiGauge(70), heardAt: [] }).suspects).toEqual([]);
    expect(leakDown({ ...fed, held: psiGauge(80) }).leakArea).toEqual({ min: 0, max: 0 });
  });

  it('widens with the error of the gauges', () => {
    const exact = leakDown({ ...fed, held: psiGauge(70) });
    const rough = leakDown({ ...fed, held: psiGauge(70), gaugeWithin: psi(1) });
    expect(rough.leakArea?.min).toBeLessThan(exact.leakArea?.min ?? 0);
    expect(rough.leakArea?.max).toBeGreaterThan(exact.leakArea?.max ?? 0);
    // 1 psi of 80, and 1 psi of 80 on seven eighths of it.
    expect(rough.finding?.uncertainty).toBeCloseTo((1 + 70 / 80) / 80, 12);
  });

  it('refuses a second gauge that shows more than the first', () => {
    expect(refusal(() => leakDown({ ...fed, held: psiGauge(81) })).parameter).toBe('held');
  });
});

describe('compressionTest', () => {
  const of = (...readings: readonly (number | undefined)[]) =>
    readings.map((one, i) => ({
      name: String(i + 1),
      ...(one !== undefined && { dry: psiGauge(one) }),
    }));
  const verdicts = (
    readings: readonly (number | undefined)[],
    rules: readonly CompressionRule[],
    errors: { repeatsWithin?: ReturnType<typeof psi>; gaugeWithin?: ReturnType<typeof psi> } = {},
  ) => compressionTest({ cylinders: of(...readings), rules, ...errors });
  const spread = { kind: 'spread', most: psi(10) } as const;
  const average = { kind: 'share of average', least: ratio(0.8) } as const;
  const least = { kind: 'at least', least: psiGauge(80) } as const;
  const near = { kind: 'near a figure', figure: psiGauge(100), within: psi(10) } as const;

  it('names the cylinder that decides, and all that are low', () => {
    const { rules, readings } = verdicts([100, 70, 60, 99], [spread, average, least, near]);
    expect(rules.map(({ verdict }) => verdict)).toEqual(['broken', 'broken', 'broken', 'broken']);
    expect(rules.map(({ cylinder: name }) => name)).toEqual(['3', '3', '3', '3']);
    // 80 % of the average of 82.25 is 65.8.
    expect(rules.map(({ low }) => low)).toEqual([['2', '3'], ['3'], ['2', '3'], ['2', '3']]);
    expect(readings).toEqual({ min: psiGauge(60), max: psiGauge(100) });
  });

  it('sees a cylinder above its figure too: carbon, or a skimmed head', () => {
    const [rule] = verdicts([101, 120], [near]).rules;
    expect(rule).toMatchObject({ verdict: 'broken', cylinder: '2', low: [] });
    expect(rule?.finding.verdict).toBe('above');
  });

  it('sees a cylinder above the average where that is asked for', () => {
    const both = { ...average, most: ratio(1.2) } as const;
    expect(verdicts([100, 100, 145], [average]).outcome).toBe('kept');
    // 145 of an average of 115.
    expect(verdicts([100, 100, 145], [both]).rules[0]).toMatchObject({
      verdict: 'broken',
      cylinder: '3',
      low: [],
    });
    const reversed = { ...average, most: ratio(0.7) } as const;
    expect(refusal(() => verdicts([100, 90], [reversed])).parameter).toBe('rules[0].most');
  });

  it('is undecided within the errors, in full against a figure, by what repeats between cylinders', () => {
    const by = { repeatsWithin: psi(1), gaugeWithin: psi(5) };
    expect(verdicts([100, 84], [least], by).outcome).toBe('undecided');
    expect(verdicts([100, 86], [least], by).outcome).toBe('kept');
    // The gauge is off on both alike; √2 psi is what is left.
    expect(verdicts([100, 92], [spread], by).outcome).toBe('kept');
    expect(verdicts([100, 91], [spread], by).outcome).toBe('undecided');
    expect(verdicts([100, 88], [spread], by).outcome).toBe('broken');
  });

  it('agrees with random errors drawn: few verdicts turn', () => {
    const by = { repeatsWithin: psi(2) };
    fc.assert(
      fc.property(
        fc.array(share(60, 120), { minLength: 2, maxLength: 6 }),
        fc.array(share(-0.7, 0.7), { minLength: 6, maxLength: 6 }),
        (readings, off) => {
          const rules = [least];
          const { outcome } = verdicts(readings, rules, by);
          const moved = readings.map((one, i) => one + 2 * (off[i] ?? 0));
          const turned = verdicts(moved, rules).outcome;
          if (outcome !== 'undecided') expect(turned).toBe(outcome);
        },
      ),
    );
  });

  it('does not pass an engine of which a cylinder was not read, but fails one', () => {
    const missing = verdicts([100, 95, undefined], [spread, least, average]);
    expect(missing.outcome).toBe('undecided');
    expect(missing.notRead).toEqual(['3']);
    expect(verdicts([100, 70, undefined], [spread]).outcome).toBe('broken');
    // A third low one would bring the average down.
    expect(verdicts([100, 50, undefined], [average]).outcome).toBe('undecided');
  });

  it('compares nothing where one cylinder is all there is', () => {
    expect(verdicts([100], [spread]).outcome).toBe('undecided');
    expect(verdicts([100], [least]).outcome).toBe('kept');
  });

  it('refuses two cylinders of one name, and a gauge that showed nothing at all', () => {
    const twice = [...of(100), ...of(90)];
    expect(refusal(() => compressionTest({ cylinders: twice, rules: [least] })).parameter).toBe(
      'cylinders[1].name',
    );
    expect(refusal(() => verdicts([0, 0], [least])).parameter).toBe('cylinders');
    expect(verdicts([0, 100], [least]).rules[0]?.low).toEqual(['1']);
  });
});
