import {
  type Angle,
  bar,
  degree,
  type GasCycle,
  gasTrace,
  inch,
  kPa,
  type Pressure,
  pistonMotion,
  ratio,
  rpm,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';
import { anyCrank } from './engines.js';

const crank = { stroke: inch(3.25), rodLength: inch(6) };
const cycle: GasCycle = { ...crank, compressionRatio: ratio(6) };
const own = {
  ...cycle,
  intakePressure: kPa(80),
  exhaustPressure: kPa(120),
  airPressure: kPa(100),
  compressionExponent: ratio(1.3),
  expansionExponent: ratio(1.2),
  ignition: degree(10),
  peakAngle: degree(20),
  peakPressure: kPa(2500),
  exhaustOpens: degree(120),
  valveOverlap: degree(40),
};
const traced = () => gasTrace(own);
const at = (degrees: number): number => {
  const reading = traced().readings[degrees];
  if (!reading) throw new Error(`${degrees}`);
  expect(valueIn(reading.crankAngle, degree)).toBeCloseTo(degrees, 9);
  return reading.pressure;
};
/** Volume above the piston, in clearance volumes. */
const volume = (degrees: number) => {
  const { position } = pistonMotion({ ...crank, speed: rpm(1), crankAngle: degree(degrees) });
  return 1 + 5 * (position / crank.stroke);
};

describe('gasTrace', () => {
  it('is constant over exhaust and intake', () => {
    for (const degrees of [180, 250, 339]) expect(at(degrees)).toBeCloseTo(120_000, 6);
    for (const degrees of [381, 500, 540]) expect(at(degrees)).toBeCloseTo(80_000, 6);
  });

  it('goes from one to the other while both valves stand open', () => {
    expect(at(360)).toBeCloseTo(100_000, 6);
    for (let degrees = 341; degrees <= 379; degrees++) {
      expect(at(degrees)).toBeLessThan(at(degrees - 1));
    }
  });

  it('keeps p V^n over compression and over expansion', () => {
    const compressed = 80_000 * 6 ** 1.3;
    for (const degrees of [560, 640, 700, 710]) {
      expect(at(degrees) * volume(degrees) ** 1.3).toBeCloseTo(compressed, 3);
    }
    const expanded = 2_500_000 * volume(20) ** 1.2;
    for (const degrees of [20, 60, 90, 120]) {
      expect(at(degrees) * volume(degrees) ** 1.2).toBeCloseTo(expanded, 3);
    }
  });

  it('rises all the way from ignition to the peak, and is nowhere above it', () => {
    for (let degrees = 711; degrees < 720; degrees++) {
      expect(at(degrees)).toBeGreaterThan(at(degrees - 1));
    }
    for (let degrees = 1; degrees <= 20; degrees++) {
      expect(at(degrees)).toBeGreaterThan(at(degrees - 1));
    }
    expect(Math.max(...traced().readings.map(({ pressure }) => pressure))).toBe(2_500_000);
  });

  it('blows down to the exhaust by the bottom', () => {
    const rest = 2_500_000 * (volume(20) / volume(150)) ** 1.2;
    expect(at(150)).toBeCloseTo((rest + 120_000) / 2, 3);
  });

  it('gives gauge pressures above the air around', () => {
    for (const { pressure, gauge } of traced().readings) {
      expect(gauge).toBeCloseTo(pressure - 100_000, 6);
    }
  });

  it('says what was taken from common practice, and what it is', () => {
    expect(traced().assumed).toEqual([]);
    const { assumed, basis } = gasTrace({ ...cycle, peakPressure: kPa(3000) });
    expect(assumed).toHaveLength(9);
    expect(assumed).not.toContain('peakPressure');
    expect(basis.kind).toBe('common practice');
    const usual = gasTrace(cycle);
    expect(usual.peakPressure).toBeCloseTo(3 * usual.compressionPressure, 6);
    expect(usual.compressionPressure).toBeCloseTo(95_000 * 6 ** 1.32, 3);
  });

  it('takes a field that is given as undefined for one that is left out', () => {
    const gap = { ...cycle, peakPressure: undefined } as unknown as GasCycle;
    expect(gasTrace(gap)).toEqual(gasTrace(cycle));
  });

  it('has the mean effective pressure that its loops enclose', () => {
    // Closed forms: ∫p dV of the polytropes between two volumes, in clearance volumes.
    const loop = (p: number, v: number, n: number, to: number) =>
      ((p * v) / (n - 1)) * (1 - (v / to) ** (n - 1));
    const sharp = gasTrace({
      ...own,
      ignition: degree(0),
      peakAngle: degree(1),
      exhaustOpens: degree(175),
      valveOverlap: degree(2),
      places: 7200,
    });
    const out = loop(2_500_000, 1, 1.2, 6);
    const into = loop(80_000 * 6 ** 1.3, 1, 1.3, 6);
    const breathing = (80_000 - 120_000) * 5;
    const expected = (out - into + breathing) / 5;
    expect(sharp.meanEffectivePressure / expected).toBeCloseTo(1, 2);
  });

  it('stays between a vacuum and the peak, whatever the engine', () => {
    const angle = (min: number, max: number) =>
      fc.double({ min, max, noNaN: true }).map((one) => degree(one));
    const knobs = fc.record({
      ignition: angle(0, 60),
      peakAngle: angle(1, 60),
      exhaustOpens: angle(90, 175),
      valveOverlap: angle(2, 180),
    });
    const ratios = fc.double({ min: 2, max: 20, noNaN: true });
    fc.assert(
      fc.property(anyCrank, knobs, ratios, (any, some, compression) => {
        const one = gasTrace({
          ...any,
          ...some,
          compressionRatio: ratio(compression),
          places: 360,
        });
        for (const { pressure } of one.readings) {
          expect(pressure).toBeGreaterThanOrEqual(95_000 * (1 - 1e-12));
          expect(pressure).toBeLessThanOrEqual(one.peakPressure * (1 + 1e-12));
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('gasTrace refuses', () => {
  it('a peak that compression alone exceeds', () => {
    const error = refusal(() => gasTrace({ ...cycle, peakPressure: kPa(1011) }));
    expect(error.message).toContain('at least what compression alone gives');
    const least = gasTrace(cycle).compressionPressure;
    expect(() => gasTrace({ ...cycle, peakPressure: least })).not.toThrow();
  });

  it('a gauge pressure for an absolute one, a bare number, and half a place', () => {
    expect(refusal(() => gasTrace({ ...cycle, intakePressure: -5000 as Pressure })).parameter).toBe(
      'intakePressure',
    );
    expect(refusal(() => gasTrace({ ...cycle, peakAngle: 150 as Angle })).hint).toContain(
      'degree(15)',
    );
    for (const places of [71, 7201, 100.5, Number.NaN]) {
      expect(refusal(() => gasTrace({ ...cycle, places })).parameter).toBe('places');
    }
    expect(valueIn(gasTrace({ ...cycle, places: 72 }).peakPressure, bar)).toBeGreaterThan(20);
  });
});

describe('a stretch of the trace that goes over into another', () => {
  // Along half a cosine: (1 - cos 60°) / 2 = 1/4 after a third of it, (1 - cos 45°) / 2 after a quarter.
  const between = (from: number, to: number, share: number) =>
    from + ((to - from) * (1 - Math.cos(Math.PI * share))) / 2;

  it('burns from compression to the peak between ignition and the peak', () => {
    // Ignition 10 degrees before the top, peak 20 after it: 0 is a third of the way, 5 a half.
    const compression = (degrees: number) => 80_000 * (6 / volume(degrees)) ** 1.3;
    expect(at(0)).toBeCloseTo(between(compression(0), 2_500_000, 1 / 3), 3);
    expect(at(5)).toBeCloseTo(between(compression(5), 2_500_000, 1 / 2), 3);
  });

  it('blows down from expansion to the exhaust between its opening and the bottom', () => {
    // From 120 to 180 degrees: 140 is a third of the way, 150 a half.
    const expansion = (degrees: number) => 2_500_000 * (volume(20) / volume(degrees)) ** 1.2;
    expect(at(140)).toBeCloseTo(between(expansion(140), 120_000, 1 / 3), 3);
    expect(at(150)).toBeCloseTo(between(expansion(150), 120_000, 1 / 2), 3);
  });

  it('changes from exhaust to intake over the overlap of the valves', () => {
    // From 340 to 380 degrees: 350 is a quarter of the way, 370 three.
    expect(at(350)).toBeCloseTo(between(120_000, 80_000, 1 / 4), 3);
    expect(at(370)).toBeCloseTo(between(120_000, 80_000, 3 / 4), 3);
  });
});

describe('gasTrace refuses, by its name,', () => {
  it.each<[keyof GasCycle, number, number]>([
    ['compressionRatio', 1.9, 31],
    ['ignition', degree(-1), degree(61)],
    ['peakAngle', degree(0.5), degree(61)],
    ['exhaustOpens', degree(89), degree(176)],
    ['valveOverlap', degree(1), degree(181)],
    ['intakePressure', -1, Number.NaN],
    ['exhaustPressure', -1, Number.NaN],
    ['airPressure', -1, Number.NaN],
    ['peakPressure', kPa(1011), Number.NaN],
    ['compressionExponent', 0.5, 5],
    ['expansionExponent', 0.5, 5],
  ])('a %s below %d or above %d', (field, low, high) => {
    for (const wrong of [low, high]) {
      const error = refusal(() => gasTrace({ ...cycle, [field]: wrong }));
      expect([error.parameter, error.value]).toEqual([field, wrong]);
    }
  });
});
