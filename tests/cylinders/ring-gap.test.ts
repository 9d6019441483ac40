import {
  boreShape,
  degree,
  format,
  inch,
  type Length,
  mm,
  recommendedRingGap,
  ringGapAlongBore,
  ringGapIn,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const micrometres = (min: number, max: number) => fc.integer({ min, max }).map((n) => mm(n / 1000));
const measured = fc.record({ gap: micrometres(0, 1000), measuredIn: micrometres(40_000, 100_000) });

describe('ringGapIn', () => {
  it('grows by π times what the bore grows', () => {
    const ring = { gap: thou(12), measuredIn: inch(3) };
    expect(format(ringGapIn({ ...ring, bore: inch(3.001) }), thou)).toBe('15.1 thou');
    expect(ringGapIn({ ...ring, bore: inch(3) })).toBe(thou(12));
    expect(ringGapIn({ ...ring, bore: inch(2.99) })).toBeLessThan(0);
  });

  it('keeps the length of the ring', () => {
    fc.assert(
      fc.property(measured, micrometres(-1500, 1500), (ring, by) => {
        const bore = (ring.measuredIn + by) as Length;
        const gap = ringGapIn({ ...ring, bore });
        const length = Math.PI * ring.measuredIn - ring.gap;
        expect(Math.PI * bore - gap).toBeCloseTo(length, 14);
      }),
    );
  });

  it('comes back in the bore it was measured in', () => {
    fc.assert(
      fc.property(measured, micrometres(0, 500), (ring, wear) => {
        const bore = (ring.measuredIn + wear) as Length;
        const there = ringGapIn({ ...ring, bore });
        const back = ringGapIn({ gap: there, measuredIn: bore, bore: ring.measuredIn });
        expect(back).toBeCloseTo(ring.gap, 14);
      }),
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses the size %s', (value) => {
    const good = { gap: thou(12), measuredIn: inch(3), bore: inch(3.001) };
    for (const field of Object.keys(good)) {
      const wrong = { ...good, [field]: value } as typeof good;
      expect(refusal(() => ringGapIn(wrong)).parameter).toBe(field);
    }
  });

  it('refuses a gap of more than a tenth of the bore, or less than none', () => {
    const ring = { measuredIn: inch(3), bore: inch(3) };
    expect(refusal(() => ringGapIn({ ...ring, gap: 0.012 as Length })).parameter).toBe('gap');
    expect(refusal(() => ringGapIn({ ...ring, gap: thou(-1) })).parameter).toBe('gap');
    expect(refusal(() => ringGapIn(null as never)).parameter).toBe('ring');
  });

  it('refuses the bore of another engine', () => {
    const call = () => ringGapIn({ gap: thou(12), measuredIn: inch(3), bore: inch(2.8) });
    expect(refusal(call).parameter).toBe('bore');
  });

  it('says how wide a gap may be in a number that can be read', () => {
    const long = Array.from({ length: 400 }, (_, i) => inch(2 + i / 100)).filter((measuredIn) => {
      const call = () => ringGapIn({ gap: 0.5 as Length, measuredIn, bore: measuredIn });
      return !/ … \d+(\.\d{1,4})? mm$/.test(refusal(call).expected);
    });
    expect(long).toEqual([]);
  });
});

describe('ringGapAlongBore', () => {
  const stations = [
    { station: inch(0.5), mean: inch(3.008) },
    { station: inch(3), mean: inch(3) },
  ];
  const ring = { gap: thou(12), measuredIn: inch(3) };

  it('gives the gap at every station, and their span', () => {
    const { gaps, span } = ringGapAlongBore({ ...ring, stations });
    expect(gaps.map(({ station }) => station)).toEqual([inch(0.5), inch(3)]);
    expect(gaps.map(({ gap }) => format(gap, thou))).toEqual(['37.1 thou', '12.0 thou']);
    expect([format(span.min, thou), format(span.max, thou)]).toEqual(['12.0 thou', '37.1 thou']);
  });

  it('says where the gap is tightest and widest, first of all where it is so', () => {
    const barrel = [3.002, 3.001, 3.005, 3.001, 3.005].map((mean, i) => ({
      station: inch(i),
      mean: inch(mean),
    }));
    const { tightest, widest, gaps } = ringGapAlongBore({ ...ring, stations: barrel });
    expect([tightest, widest]).toEqual([gaps[1], gaps[2]]);
  });

  it('takes the stations as boreShape gives them', () => {
    const shape = boreShape(
      [0.5, 3].flatMap((station, i) =>
        [0, 90].map((angle) => ({
          station: inch(station),
          angle: degree(angle),
          diameter: stations[i]?.mean as Length,
        })),
      ),
    );
    const along = ringGapAlongBore({ ...ring, stations: shape.stations });
    expect(along.span.max).toBeCloseTo(ringGapAlongBore({ ...ring, stations }).span.max, 14);
  });

  it('agrees with one station at a time', () => {
    const places = fc.array(micrometres(74_000, 79_000), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(places, (means) => {
        const all = means.map((mean, i) => ({ station: mm(i), mean }));
        const { gaps, span, tightest, widest } = ringGapAlongBore({ ...ring, stations: all });
        expect(span).toEqual({ min: tightest.gap, max: widest.gap });
        const each = means.map((bore) => ringGapIn({ ...ring, bore }));
        expect(gaps.map(({ gap }) => gap)).toEqual(each);
        expect(span).toEqual({ min: Math.min(...each), max: Math.max(...each) });
      }),
    );
  });

  it.each([
    [[], 'stations'],
    [undefined, 'stations'],
    [[null], 'stations[0]'],
    [[{ station: inch(1) }], 'stations[0].mean'],
    [[{ mean: inch(3) }], 'stations[0].station'],
    [[{ station: inch(1), mean: 3 as Length }], 'stations[0].mean'],
  ])('refuses %j for stations', (wrong, parameter) => {
    const call = () => ringGapAlongBore({ ...ring, stations: wrong as typeof stations });
    expect(refusal(call).parameter).toBe(parameter);
  });
});

describe('recommendedRingGap', () => {
  it('is a rule of thumb, grows with the bore, and says so', () => {
    const { limits, basis } = recommendedRingGap(inch(3));
    expect(limits.min).toBeCloseTo(thou(9), 12);
    expect(limits.max).toBeCloseTo(thou(12), 12);
    expect(basis.kind).toBe('common practice');
    expect(recommendedRingGap(inch(6)).limits.max).toBeCloseTo(thou(24), 12);
    expect(refusal(() => recommendedRingGap(3 as Length)).parameter).toBe('bore');
  });
});
