import { degree, inch, mm, ratio, thou, valveArea, valveLift } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const valve = {
  valveDiameter: mm(40),
  seatWidth: mm(2),
  seatAngle: degree(45),
  portDiameter: mm(35),
  stemDiameter: mm(8),
};

describe('valveLift', () => {
  it('is what the rocker makes of the cam, less the lash', () => {
    const lobe = { baseCircle: inch(1), acrossNose: inch(1.25) };
    expect(valveLift(lobe).valve).toBe(valveLift(lobe).cam);
    const { cam, valve: lift } = valveLift({ ...lobe, rockerRatio: ratio(1.2), lash: thou(10) });
    expect(cam).toBeCloseTo(inch(0.25), 12);
    expect(lift).toBeCloseTo(inch(0.29), 12);
  });

  it('is less than nothing where the lobe is worn into the lash', () => {
    const worn = { baseCircle: inch(1), acrossNose: inch(1.005), lash: thou(12) };
    expect(valveLift(worn).valve).toBeLessThan(0);
  });

  it('refuses a nose that is lower than its heel', () => {
    const lobe = { baseCircle: inch(1.25), acrossNose: inch(1) };
    expect(refusal(() => valveLift(lobe)).parameter).toBe('acrossNose');
  });
});

describe('valveArea', () => {
  /** The cone between the seat's inner edge and the face, by the nearest point of the face, searched for. */
  const searched = (lift: number) => {
    const angle = degree(45);
    const [w, inner] = [0.002 * Math.cos(angle), 0.02 - 0.002 * Math.cos(angle)];
    let least = Infinity;
    for (let i = 0; i <= 20_000; i++) {
      // A point of the face, from the seat's inner edge to the rim, raised by the lift.
      const out = (w * i) / 20_000;
      least = Math.min(least, Math.hypot(out, lift - out * Math.tan(angle)));
    }
    const at = Math.min(lift * Math.sin(angle) * Math.cos(angle), w);
    return Math.PI * (2 * inner + at) * least;
  };

  it('takes the shortest way from the edge of the seat to the face', () => {
    for (const lift of [0.2, 1, 2, 2.8, 2.9, 4, 6]) {
      expect(valveArea({ ...valve, lift: mm(lift) }).least / searched(lift / 1000)).toBeCloseTo(
        1,
        6,
      );
    }
  });

  it('rises with the lift, without a step where one place takes over, and never above the port', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0001, max: 0.02, noNaN: true }),
        fc.integer({ min: 10, max: 60 }),
        (lift, angle) => {
          const at = (l: number) =>
            valveArea({ ...valve, seatAngle: degree(angle), lift: l as never });
          const [low, high] = [at(lift), at(lift * 1.0001)];
          expect(high.least).toBeGreaterThanOrEqual(low.least);
          // No more than the lift gains: a step would show.
          expect(high.least - low.least).toBeLessThan(2e-4 * low.curtain);
          expect(low.least).toBeLessThanOrEqual(low.port);
        },
      ),
    );
  });

  it('is open by nothing at no lift, and by less than the curtain at a small one', () => {
    expect(valveArea({ ...valve, lift: mm(0) })).toMatchObject({ curtain: 0, least: 0 });
    const { curtain, least, narrowest } = valveArea({ ...valve, lift: mm(1) });
    expect(least).toBeLessThan(curtain);
    expect(narrowest).toBe('seat');
  });

  it('says from which lift on the port governs, in each of its two ways', () => {
    for (const { portDiameter, seatWidth } of [
      { portDiameter: mm(35), seatWidth: mm(2) },
      { portDiameter: mm(15), seatWidth: mm(6) },
    ]) {
      const of = { ...valve, portDiameter, seatWidth };
      const { portGovernsFrom } = valveArea({ ...of, lift: mm(1) });
      const before = valveArea({ ...of, lift: (portGovernsFrom * 0.999) as never });
      const after = valveArea({ ...of, lift: (portGovernsFrom * 1.001) as never });
      expect(before.narrowest).toBe(portDiameter === mm(35) ? 'rim' : 'seat');
      expect(after.narrowest).toBe('port');
      expect(before.least / before.port).toBeCloseTo(1, 2);
    }
  });

  it('meets the port with its curtain where it says', () => {
    const { curtainMeetsPort } = valveArea({ ...valve, lift: mm(1) });
    const { curtain, port } = valveArea({ ...valve, lift: curtainMeetsPort });
    expect(curtain / port).toBeCloseTo(1, 12);
  });
});
