import {
  celsius,
  inch,
  type Length,
  meanExpansion,
  micrometre,
  mm,
  type PinInBore,
  pinFit,
  pinReamSize,
  RebuildInputError,
  type Span,
  thou,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const refusal = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof RebuildInputError) return error.parameter;
    throw error;
  }
  return 'nothing refused';
};
const microns = (span: Span<Length> | undefined) =>
  span && [span.min, span.max].map((end) => Number(valueIn(end, micrometre).toFixed(1)));
const warm = {
  warmPin: {
    expansion: meanExpansion('steel'),
    temperature: { min: celsius(110), max: celsius(130) },
  },
  warmBore: {
    expansion: meanExpansion('cast piston alloy'),
    temperature: { min: celsius(120), max: celsius(150) },
  },
} as const;
const said = (fit: PinInBore) =>
  pinFit(fit).findings.map(
    ({ feature, verdict, basis }) => `${feature}: ${verdict}, ${basis.kind}`,
  );
const [COLD, WARM] = ['pin clearance', 'pin clearance when warm'];

describe('a piston pin', () => {
  it('has the clearance of all that was read, cold and warm', () => {
    const { clearance, warmClearance, missing, outsideRange } = pinFit({
      joint: 'floating',
      pin: { min: mm(19.995), max: mm(20) },
      bore: { min: mm(20.002), max: mm(20.006) },
      ...warm,
    });
    expect(microns(clearance)).toEqual([2, 11]);
    // By hand: 20.002 * 19.5e-6 * 100 - 20 * 12.1e-6 * 110 = 12.4 µm; 20.006 * 21.5e-6 * 130 - 19.995 * 11.2e-6 * 90 = 35.8 µm.
    expect(microns(warmClearance)).toEqual([14.4, 46.8]);
    expect(missing).toEqual(['limits']);
    expect(outsideRange).toEqual([]);
  });

  it('says what is missing and makes nothing up', () => {
    expect(pinFit({ joint: 'floating' })).toEqual({
      outsideRange: [],
      missing: ['pin', 'bore', 'limits', 'warmPin', 'warmBore'],
      findings: [],
    });
    const half = pinFit({ joint: 'press', pin: mm(20), limits: { max: mm(-0.02) }, ...warm });
    expect(half).toEqual({ outsideRange: [], missing: ['bore'], findings: [] });
    const worn = { service: { limits: { max: mm(0.05) } } };
    expect(pinFit({ joint: 'bushing', pin: mm(20), bore: mm(20.01), ...worn }).missing).toEqual([
      'warmPin',
      'warmBore',
      'bushingWall',
      'warmBushing',
    ]);
  });

  it('that floats may be tight cold, and must turn when warm', () => {
    const tight = { joint: 'floating', pin: mm(20), bore: mm(19.99) } as const;
    expect(said(tight)).toEqual([]);
    expect(said({ ...tight, ...warm })).toEqual([]);
    // 19.98 * 19.5e-6 * 100 - 20 * 12.1e-6 * 110 = 12.3 µm is less than the 20 µm that it is too tight cold.
    expect(said({ ...tight, bore: mm(19.98), ...warm })).toEqual([`${WARM}: below, computed`]);
  });

  it('is closed on by a bushing of bronze that a rod of steel holds', () => {
    const hot = { min: celsius(120), max: celsius(120) };
    const rod = { expansion: meanExpansion('steel'), temperature: hot };
    const held = {
      joint: 'bushing',
      pin: mm(20),
      bore: mm(20.01),
      warmPin: rod,
      warmBore: rod,
    } as const;
    const bushing = { expansion: meanExpansion('bronze'), temperature: hot };
    const { warmClearance } = pinFit({ ...held, bushingWall: mm(2), warmBushing: bushing });
    // 10 + 24010 * 11.2e-6 * 100 - 4000 * 18e-6 * 100 - 20000 * 12.1e-6 * 100 = 5.5 µm; 10 + 29.1 - 6.9 - 22.4 = 9.7 µm.
    expect(microns(warmClearance)).toEqual([5.5, 9.7]);
    // Without a bushing the eye of the rod grows as the pin does: 10 + 20010 * 11.2e-4 - 20000 * 12.1e-4 = 8.2 µm.
    expect(microns(pinFit({ ...held, bushingWall: mm(0) }).warmClearance)).toEqual([8.2, 11.8]);
  });

  it('has no warm clearance in a bushing of which the wall or the metal is not known', () => {
    const rod = { expansion: meanExpansion('steel'), temperature: celsius(120) };
    const held = {
      pin: mm(20),
      bore: mm(20.01),
      warmPin: rod,
      warmBore: rod,
      limits: { min: mm(0) },
    };
    const blank = (fit: PinInBore) => {
      const { warmClearance, missing } = pinFit(fit);
      return [warmClearance, missing];
    };
    expect(blank({ joint: 'bushing', ...held })).toEqual([
      undefined,
      ['bushingWall', 'warmBushing'],
    ]);
    expect(blank({ joint: 'bushing', ...held, bushingWall: mm(2) })).toEqual([
      undefined,
      ['warmBushing'],
    ]);
    expect(blank({ joint: 'floating', ...held, warmBushing: rod })).toEqual([
      undefined,
      ['bushingWall'],
    ]);
    expect(pinFit({ joint: 'floating', ...held }).missing).toEqual([]);
  });

  it('turns in its bushing cold too, or is found not to', () => {
    const pair = { joint: 'bushing', pin: mm(20) } as const;
    expect(said({ ...pair, bore: mm(20.01) })).toEqual([]);
    expect(said({ ...pair, bore: { min: mm(19.999), max: mm(20.01) } })).toEqual([
      `${COLD}: below, computed`,
    ]);
  });

  it('is not held by a small end that is as large as it, or may be', () => {
    const pressed = (least: number, most: number) =>
      said({ joint: 'press', pin: mm(20), bore: { min: mm(least), max: mm(most) } });
    expect(pressed(19.96, 19.98)).toEqual([]);
    expect(pressed(19.98, 20)).toEqual([`${COLD}: above, computed`]);
    expect(pressed(19.98, 20.01)).toEqual([`${COLD}: above, computed`]);
  });

  it('is not held warm by an alloy rod that grows away from it', () => {
    const pressed = { joint: 'press', pin: mm(20), bore: mm(19.98), ...warm } as const;
    // The most: -20 + 19.98 * 21.5e-6 * 130 - 20 * 11.2e-6 * 90 = 15.7 µm of clearance.
    expect(said(pressed)).toEqual([`${WARM}: above, computed`]);
  });

  it('is judged by the limits of the caller, cold and warm, each at its worse end', () => {
    const fit = {
      joint: 'floating',
      pin: { min: mm(19.995), max: mm(20) },
      bore: { min: mm(20.002), max: mm(20.006) },
      ...warm,
      limits: { min: mm(0.002), max: mm(0.01) },
      warmLimits: { limits: { min: mm(0.01), max: mm(0.05) } },
    } as const;
    expect(said(fit)).toEqual([`${COLD}: above, specified`, `${WARM}: within, specified`]);
    // A limit at the other end does not tell whether it turns.
    const most = { limits: { max: mm(0.03) } };
    expect(said({ joint: 'bushing', pin: mm(20), bore: mm(19.99), ...most })).toEqual([
      `${COLD}: within, specified`,
      `${COLD}: below, computed`,
    ]);
  });

  it('refuses what is not of it, by name', () => {
    const fit = { joint: 'bushing', pin: mm(20), bore: mm(20.01) } as const;
    expect(refusal(() => pinFit({ ...fit, joint: 'clamped' as never }))).toBe('joint');
    expect(refusal(() => pinFit({ ...fit, bore: mm(30) }))).toBe('bore');
    expect(refusal(() => pinFit({ ...fit, limits: {} }))).toBe('fit.limits');
    expect(refusal(() => pinFit({ ...fit, warmLimits: { limits: {} } }))).toBe('warmLimits.limits');
    expect(refusal(() => pinFit({ ...fit, warmLimits: { limit: {} } as never }))).toBe(
      'warmLimits.limit',
    );
    expect(refusal(() => pinFit({ joint: 'bushing', bore: 20 as Length }))).toBe('bore');
  });
});

describe('what a bore is reamed to', () => {
  it('gives all of the pin the clearance that is wanted, and no more bore than that does', () => {
    const um = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 1000);
    fc.assert(
      fc.property(um(0, 10), um(-30, 30), um(0, 20), (varies, least, more) => {
        const pin = { min: mm(20), max: mm(20 + varies) };
        const clearance = { min: mm(least), max: mm(least + more) };
        const ream = pinReamSize({ pin, clearance });
        if (ream.outcome === 'pin varies too much') {
          expect(ream.pinVaries).toBeGreaterThan(ream.mayVary);
          return;
        }
        const { clearance: got } = pinFit({ joint: 'floating', pin, bore: ream.reamTo });
        const atLeast = pinFit({ joint: 'floating', pin, bore: ream.reamTo.min }).clearance;
        const atMost = pinFit({ joint: 'floating', pin, bore: ream.reamTo.max }).clearance;
        expect(atLeast?.min).toBeCloseTo(clearance.min, 8);
        expect(atMost?.max).toBeCloseTo(clearance.max, 8);
        expect(got?.max).toBeLessThanOrEqual(clearance.max + 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('tells a bore that is right, one that is too large already, and a pin that no bore suits', () => {
    const wanted = { pin: inch(0.75), clearance: { min: thou(0.2), max: thou(0.6) } };
    const outcome = (bore: Length | Span<Length>) => pinReamSize({ ...wanted, bore }).outcome;
    expect(outcome(inch(0.7502))).toBe('fits as it is');
    expect(outcome({ min: inch(0.7501), max: inch(0.7504) })).toBe('ream');
    const large = pinReamSize({ ...wanted, bore: { min: inch(0.7501), max: inch(0.7509) } });
    expect(large.outcome === 'too large' && valueIn(large.tooLargeBy, thou)).toBeCloseTo(0.3, 6);
    const worn = { ...wanted, pin: { min: inch(0.7495), max: inch(0.75) } };
    expect(pinReamSize(worn).outcome).toBe('pin varies too much');
    const just = { ...wanted, pin: { min: inch(0.7496), max: inch(0.75) } };
    expect(pinReamSize(just).outcome).toBe('ream');
  });

  it('refuses a bore that was never of the pin, and a clearance the wrong way round', () => {
    const wanted = { pin: mm(20), clearance: { min: mm(0.01), max: mm(0.02) } };
    expect(refusal(() => pinReamSize({ ...wanted, bore: mm(25) }))).toBe('bore');
    expect(
      refusal(() => pinReamSize({ ...wanted, clearance: { min: mm(0.02), max: mm(0.01) } })),
    ).toBe('clearance');
  });
});
