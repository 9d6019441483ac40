import {
  celsius,
  coldPistonClearance,
  hotPistonClearance,
  type Length,
  leastColdRingGap,
  type MeanExpansion,
  meanExpansion,
  mm,
  ppmPerKelvin,
  RebuildInputError,
  ringGapHot,
  ringGapIn,
  type Temperature,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const of = (least: number, most = least): MeanExpansion => ({
  coefficient: { min: ppmPerKelvin(least), max: ppmPerKelvin(most) },
  from: celsius(20),
  to: celsius(200),
  source: 'a test',
});
const at = (expansion: MeanExpansion, cold: number, hot = cold) => ({
  expansion,
  temperature: { min: celsius(cold), max: celsius(hot) },
});
const iron = meanExpansion('grey iron');
const alloy = meanExpansion('cast piston alloy');
const refusal = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof RebuildInputError) return error.parameter;
    throw error;
  }
  return 'nothing refused';
};

const degrees = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const spanOf = (min: number, max: number) =>
  fc.tuple(degrees(min, max), degrees(min, max)).map(([a, b]) => ({
    min: celsius(Math.min(a, b)),
    max: celsius(Math.max(a, b)),
  }));

describe('a warm piston', () => {
  const fit = { bore: mm(80), warmBore: at(iron, 100), warmPiston: at(alloy, 140, 180) };

  it('has the clearance that was wanted at its tightest, fitted to the most, whatever the temperatures', () => {
    fc.assert(
      fc.property(
        spanOf(-20, 250),
        spanOf(-20, 290),
        degrees(0, 40),
        degrees(0, 0.1),
        (ofBore, ofPiston, measured, wanted) => {
          const warm = {
            warmBore: { expansion: iron, temperature: ofBore },
            warmPiston: { expansion: alloy, temperature: ofPiston },
            measuredAt: celsius(measured),
          };
          const bore = mm(80);
          const { clearance } = coldPistonClearance({ bore, hotClearance: mm(wanted), ...warm });
          expect(clearance.max).toBeGreaterThanOrEqual(clearance.min);
          const fitted = (cold: Length) =>
            hotPistonClearance({ bore, piston: (bore - cold) as Length, ...warm }).clearance;
          expect(fitted(clearance.max).min).toBeCloseTo(mm(wanted), 12);
          expect(fitted(clearance.min).max).toBeCloseTo(mm(wanted), 12);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('keeps the share of its clearance where both are of one metal and equally warm', () => {
    const both = { warmBore: at(of(20), 120), warmPiston: at(of(20), 120) };
    const { clearance } = hotPistonClearance({ bore: mm(80), piston: mm(79.9), ...both });
    // 0.1 mm * (1 + 20e-6 * 100)
    expect(clearance.max).toBeCloseTo(0.1002e-3, 12);
    expect(clearance.min).toBe(clearance.max);
  });

  it('is found to seize whatever else the limits say, and is not called good where it does not', () => {
    const tight = { ...fit, piston: mm(79.9) };
    expect(hotPistonClearance(tight).findings.map(({ verdict }) => verdict)).toEqual(['below']);
    const most = { limits: { max: mm(0.2) } };
    const both = hotPistonClearance({ ...tight, ...most }).findings;
    expect(both.map(({ verdict, basis }) => [verdict, basis.kind])).toEqual([
      ['within', 'specified'],
      ['below', 'computed'],
    ]);
    const own = hotPistonClearance({ ...tight, limits: { min: mm(0.02) } }).findings;
    expect(own.map(({ verdict, basis }) => [verdict, basis.kind])).toEqual([
      ['below', 'specified'],
    ]);
    expect(hotPistonClearance({ ...fit, piston: mm(79.5) }).findings).toEqual([]);
  });

  it('is in doubt where what is not known of it reaches to an interference', () => {
    // At the tightest 80 * (1 + 10.4e-6 * 80) - 79.75 * (1 + 21.5e-6 * 160) = 0.0422 mm.
    const free = { ...fit, piston: mm(79.75) };
    expect(hotPistonClearance({ ...free, uncertainty: mm(0.04) }).findings).toEqual([]);
    expect(
      hotPistonClearance({ ...free, uncertainty: mm(0.05) }).findings.map(({ verdict }) => verdict),
    ).toEqual(['undecided']);
  });

  it('names what leaves the temperatures of its coefficient, at either end and where it was measured', () => {
    const names = (bore: Temperature, piston: Temperature, measuredAt?: Temperature) =>
      coldPistonClearance({
        bore: mm(80),
        hotClearance: mm(0),
        warmBore: { expansion: of(11), temperature: bore },
        warmPiston: { expansion: of(20), temperature: { min: celsius(100), max: piston } },
        ...(measuredAt !== undefined && { measuredAt }),
      }).outsideRange;
    expect(names(celsius(100), celsius(200))).toEqual([]);
    expect(names(celsius(100), celsius(201))).toEqual(['warmPiston']);
    expect(names(celsius(10), celsius(200))).toEqual(['warmBore']);
    expect(names(celsius(100), celsius(200), celsius(15))).toEqual(['warmBore', 'warmPiston']);
  });

  it('refuses what cannot be of it, by name', () => {
    const cold = { ...fit, hotClearance: mm(0.03) };
    const reversed = { expansion: alloy, temperature: { min: celsius(180), max: celsius(140) } };
    expect(refusal(() => coldPistonClearance({ ...cold, warmPiston: reversed }))).toBe(
      'warmPiston.temperature',
    );
    expect(refusal(() => coldPistonClearance({ ...cold, hotClearance: mm(-0.01) }))).toBe(
      'hotClearance',
    );
    expect(refusal(() => hotPistonClearance({ ...fit, piston: mm(79.9), limits: {} }))).toBe(
      'fit.limits',
    );
    const span = { min: mm(70), max: mm(79.9) };
    expect(refusal(() => hotPistonClearance({ ...fit, piston: span }))).toBe('piston');
  });
});

describe('a warm ring', () => {
  const ring = { gap: mm(0.3), measuredIn: mm(80) };

  it('opens in a bore that grows alone as in one that is wider', () => {
    const hot = ringGapHot({ ...ring, warmBore: at(of(11), 120), warmRing: at(of(11), 20) });
    const wider = (mm(80) * (1 + 11e-6 * 100)) as Length;
    expect(hot.gap.min).toBeCloseTo(ringGapIn({ ...ring, bore: wider }), 14);
    expect(hot.gap.max).toBe(hot.gap.min);
  });

  it('just touches at its tightest if it was filed to the least safe gap', () => {
    fc.assert(
      fc.property(spanOf(-20, 200), spanOf(100, 290), degrees(0, 0.2), (ofBore, ofRing, wanted) => {
        const warm = {
          warmBore: { expansion: iron, temperature: ofBore },
          warmRing: { expansion: iron, temperature: ofRing },
        };
        const bore = mm(80);
        const { gap } = leastColdRingGap({ bore, hotGap: mm(wanted), ...warm });
        fc.pre(gap.min >= 0);
        const filed = (cold: Length) => ringGapHot({ gap: cold, measuredIn: bore, ...warm }).gap;
        expect(filed(gap.max).min).toBeCloseTo(mm(wanted), 12);
        expect(filed(gap.min).max).toBeCloseTo(mm(wanted), 12);
      }),
      { numRuns: 60 },
    );
  });

  it('needs no gap where it is colder than its bore: the result is negative and nothing is clamped', () => {
    const { gap } = leastColdRingGap({
      bore: mm(80),
      warmBore: at(of(11), 120),
      warmRing: at(of(11), 20),
    });
    expect(gap.max).toBeCloseTo(-Math.PI * 0.08 * 11e-6 * 100, 12);
  });

  it('is judged at its tight end, and by limits of the caller first', () => {
    const warm = { warmBore: at(iron, 60, 120), warmRing: at(iron, 150, 200) };
    const verdicts = (more: object) =>
      ringGapHot({ ...ring, ...warm, ...more }).findings.map(({ verdict, basis }) => [
        verdict,
        basis.kind,
      ]);
    // At the tightest 0.3 - 251.3 * (11.4e-6 * 180 - 10.4e-6 * 40) = -0.111 mm, at the widest 0.3 - 0.053 mm.
    expect(verdicts({})).toEqual([['below', 'computed']]);
    expect(verdicts({ limits: { min: mm(0.05), max: mm(0.4) } })).toEqual([['below', 'specified']]);
    expect(verdicts({ limits: { max: mm(0.4) } })).toEqual([
      ['within', 'specified'],
      ['below', 'computed'],
    ]);
    expect(verdicts({ gap: mm(0.45) })).toEqual([]);
  });

  it('refuses a gap that is no gap of its bore, and parts that are not of a ring', () => {
    const warm = { warmBore: at(iron, 100), warmRing: at(iron, 200) };
    expect(refusal(() => ringGapHot({ ...ring, ...warm, gap: mm(9) }))).toBe('gap');
    expect(
      refusal(() =>
        leastColdRingGap({ bore: mm(80), ...warm, warmPiston: warm.warmRing } as never),
      ),
    ).toBe('ring.warmPiston');
    expect(
      refusal(() =>
        leastColdRingGap({
          bore: mm(80),
          ...warm,
          warmRing: { ...warm.warmRing, hot: 1 } as never,
        }),
      ),
    ).toBe('warmRing.hot');
  });
});
