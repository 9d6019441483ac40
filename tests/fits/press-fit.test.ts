import {
  boreAfterPressing,
  celsius,
  elasticConstants,
  type FitMetal,
  fitOf,
  heatingLimit,
  interferencePressure,
  MPa,
  meanExpansion,
  mm,
  type PressFitRequest,
  pressFit,
  RebuildInputError,
  ratio,
  shrinkTemperature,
  times,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const steel = elasticConstants('steel');
const parts = {
  diameter: mm(40),
  diametralInterference: mm(0.03),
  shaft: { ...steel, bore: mm(10) },
  hub: { ...elasticConstants('grey iron'), outside: mm(80) },
} as const;
const metals: readonly FitMetal[] = ['steel', 'grey iron', 'aluminium alloy', 'bronze', 'brass'];
const pressed = fc
  .record({
    d: fc.integer({ min: 5, max: 200 }),
    wall: fc.double({ min: 1.1, max: 4, noNaN: true }),
    through: fc.double({ min: 0, max: 0.9, noNaN: true }),
    share: fc.double({ min: 1e-5, max: 2e-3, noNaN: true }),
    inner: fc.constantFrom(...metals),
    outer: fc.constantFrom(...metals),
  })
  .map(({ d, wall, through, share, inner, outer }) => ({
    diameter: mm(d),
    diametralInterference: mm(d * share),
    shaft: { ...elasticConstants(inner), bore: mm(d * through) },
    hub: { ...elasticConstants(outer), outside: mm(d * wall) },
  }));
const refusal = (run: () => unknown): RebuildInputError => {
  try {
    run();
  } catch (error) {
    if (error instanceof RebuildInputError) return error;
  }
  throw new Error('was taken');
};

describe('the pressure of an interference', () => {
  it('grows in proportion to the interference', () => {
    fc.assert(
      fc.property(pressed, fc.double({ min: 0.1, max: 5, noNaN: true }), (fit, factor) => {
        const more = { ...fit, diametralInterference: times(fit.diametralInterference, factor) };
        const [once, again] = [interferencePressure(fit), interferencePressure(more)];
        expect(Math.abs(again / once / factor - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 50 },
    );
  });

  it('strains both parts so that together they give the interference', () => {
    // An independent way round: Hooke's law at the surfaces, from the stresses that pressFit gives.
    fc.assert(
      fc.property(pressed, (fit) => {
        const { hubBore, shaftSurface } = pressFit(fit);
        const strain = ({ hoop, radial }: typeof hubBore, { elasticity, poisson }: typeof steel) =>
          (hoop - poisson * radial) / elasticity;
        const given = strain(hubBore, fit.hub) - strain(shaftSurface, fit.shaft);
        expect(Math.abs((given * fit.diameter) / fit.diametralInterference - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 50 },
    );
  });

  it('keeps hub and shaft in balance: the hoop stress across a wall carries the pressure on it', () => {
    // Lamé's hoop stress is a + b / r²; its mean over the wall, times twice the wall, is pressure times diameter.
    fc.assert(
      fc.property(pressed, (fit) => {
        const { hubBore, hubOutside, pressure } = pressFit(fit);
        const [inside, outside] = [fit.diameter / 2, fit.hub.outside / 2];
        const b = (hubBore.hoop - hubOutside.hoop) / (1 / inside ** 2 - 1 / outside ** 2);
        const a = hubBore.hoop - b / inside ** 2;
        const carried = a * (outside - inside) + b * (1 / inside - 1 / outside);
        expect(Math.abs(carried / (pressure.max * inside) - 1)).toBeLessThan(1e-8);
      }),
      { numRuns: 50 },
    );
  });

  it('is nothing where there is a clearance', () => {
    const loose = { ...parts, diametralInterference: mm(-0.01) };
    expect(interferencePressure(loose)).toBe(0);
    const fit = pressFit(loose);
    expect(fit.kind).toBe('clearance');
    expect(fit.pressure).toEqual({ min: 0, max: 0 });
    expect(fit.hubBore).toEqual({ hoop: 0, radial: 0, equivalent: 0 });
    expect(Object.is(fit.hubBore.radial, 0)).toBe(true);
  });

  it('agrees with that of a whole press fit, and a shaft without a bore with one of none', () => {
    expect(pressFit(parts).pressure.max).toBeCloseTo(interferencePressure(parts), 3);
    const solid = interferencePressure({ ...parts, shaft: steel });
    expect(interferencePressure({ ...parts, shaft: { ...steel, bore: mm(0) } })).toBe(solid);
    expect(pressFit({ ...parts, shaft: steel }).shaftBore).toBeUndefined();
  });

  it('refuses parts that cannot be', () => {
    const named = (fit: PressFitRequest) => refusal(() => pressFit(fit)).parameter;
    expect(named({ ...parts, hub: { ...parts.hub, outside: mm(40) } })).toBe('hub.outside');
    expect(named({ ...parts, shaft: { ...steel, bore: mm(40) } })).toBe('shaft.bore');
    expect(named({ ...parts, diametralInterference: mm(2.1) })).toBe('diametralInterference');
    expect(named({ ...parts, diametralInterference: { min: mm(0), max: mm(2.1) } })).toBe(
      'diametralInterference.max',
    );
    expect(named({ ...parts, length: mm(30) })).toBe('friction');
    expect(named({ ...parts, friction: ratio(0.1) })).toBe('length');
    expect(named({ ...parts, hub: { ...parts.hub, tensileStrength: MPa(0) } })).toBe(
      'hub.tensileStrength',
    );
  });
});

describe('what a press fit holds', () => {
  it('is pressure on its area times friction, and the force at half the diameter', () => {
    const friction = { min: ratio(0.1), max: ratio(0.2) };
    const span = { min: mm(0.01), max: mm(0.03) };
    const { held, pressure } = pressFit({
      ...parts,
      diametralInterference: span,
      length: mm(30),
      friction,
    });
    const area = Math.PI * 0.04 * 0.03;
    // The least holds for sure; the most is what the press may need.
    expect(held?.axialForce.min).toBeCloseTo(0.1 * pressure.min * area, 6);
    expect(held?.axialForce.max).toBeCloseTo(0.2 * pressure.max * area, 6);
    expect(held?.torque.min).toBeCloseTo((held?.axialForce.min ?? 0) * 0.02, 6);
    expect(pressure.max / pressure.min).toBeCloseTo(3, 9);
  });

  it('is nothing for sure in a transition fit', () => {
    const fit = pressFit({
      ...parts,
      diametralInterference: fitOf('40H7/k6').interference,
      length: mm(30),
      friction: ratio(0.12),
    });
    expect(fit.kind).toBe('transition');
    expect(fit.held?.torque.min).toBe(0);
    expect(fit.held?.torque.max).toBeGreaterThan(0);
  });
});

describe('strength', () => {
  it('makes an interference past yield a finding with its stress, no error', () => {
    // Hand: p = 207000 * 0.2 / (2 * 40) * (1 - 1 / 4) = 388 MPa; 2 p / (1 - 1 / 4) = 1035 MPa.
    const { findings, pressure } = pressFit({
      diameter: mm(40),
      diametralInterference: mm(0.2),
      shaft: steel,
      hub: { ...steel, outside: mm(80), yieldStrength: MPa(350) },
    });
    expect(valueIn(pressure.max, MPa)).toBeCloseTo(388.125, 3);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ verdict: 'above', feature: 'hub at its bore, yield' });
    expect(valueIn(findings[0]?.value as never, MPa)).toBeCloseTo(1035, 6);
  });

  it('is judged at the most interference, of each part that has one', () => {
    const { findings, hubBore, shaftBore } = pressFit({
      ...parts,
      diametralInterference: { min: mm(0), max: mm(0.03) },
      shaft: { ...parts.shaft, yieldStrength: MPa(350) },
      hub: { ...parts.hub, tensileStrength: MPa(200) },
    });
    expect(findings.map(({ feature }) => feature)).toEqual([
      'hub at its bore, tearing',
      'shaft, yield',
    ]);
    expect(findings.map(({ value }) => value)).toEqual([hubBore.hoop, shaftBore?.equivalent]);
    expect(pressFit(parts).findings).toEqual([]);
  });

  it('has no equivalent stress below that of any shear, and a hollow shaft yields at its bore first', () => {
    fc.assert(
      fc.property(pressed, (fit) => {
        const { hubBore, shaftSurface, shaftBore, pressure } = pressFit(fit);
        expect(hubBore.equivalent).toBeCloseTo(hubBore.hoop + pressure.max, 2);
        if (shaftBore) {
          expect(shaftBore.equivalent).toBeGreaterThanOrEqual(
            shaftSurface.equivalent * (1 - 1e-12),
          );
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe('a bushing pressed in', () => {
  const bushing = { outside: mm(25.05), bore: mm(20), ...elasticConstants('bronze') };
  const housing = { bore: mm(25), outside: mm(40), ...steel };

  it('closes by the strain of its bore, which its hoop stress there gives', () => {
    const { closing, pressure, bore } = boreAfterPressing({ bushing, housing });
    const { shaftBore } = pressFit({
      diameter: mm(25),
      diametralInterference: mm(0.05),
      shaft: { ...elasticConstants('bronze'), bore: mm(20) },
      hub: { ...steel, outside: mm(40) },
    });
    // Nothing presses on the bore itself, so its strain is the hoop stress over the modulus.
    const strain = (shaftBore?.hoop ?? 0) / bushing.elasticity;
    expect(closing).toBeCloseTo(-strain * 0.02, 12);
    expect(bore).toBeCloseTo(0.02 - closing, 15);
    expect(pressure).toBeGreaterThan(0);
  });

  it('stays as it is where it drops in', () => {
    const loose = boreAfterPressing({ bushing: { ...bushing, outside: mm(24.99) }, housing });
    expect(loose).toMatchObject({ pressure: 0, closing: 0, bore: 0.02 });
    expect(loose.diametralInterference).toBeLessThan(0);
  });

  it('closes by nearly all of its interference where it is thin and its housing stout', () => {
    const thin = { ...bushing, bore: mm(23) };
    const stout = { ...housing, outside: mm(100) };
    const { closing, diametralInterference } = boreAfterPressing({ bushing: thin, housing: stout });
    expect(closing / diametralInterference).toBeGreaterThan(0.8);
    expect(closing / diametralInterference).toBeLessThan(1.05);
  });
});

describe('how hot a hub must be', () => {
  const exact = (coefficient: number) => ({
    coefficient: coefficient as never,
    from: celsius(-200),
    to: celsius(300),
    source: 'the test',
  });
  const warm = { ...exact(12e-6), from: celsius(0) };
  const request = {
    diameter: mm(50),
    diametralInterference: mm(0.05),
    handlingGap: mm(0.05),
    hub: warm,
    shaft: warm,
    shaftTemperature: celsius(20),
  };

  it('follows from growth: 0.1 mm on 50 mm at 12 ppm/K is 166.7 K', () => {
    const { hubTemperature, outsideRange, finding } = shrinkTemperature(request);
    expect(valueIn(hubTemperature.max, celsius)).toBeCloseTo(186.67, 2);
    expect(hubTemperature.min).toBe(hubTemperature.max);
    expect(outsideRange).toEqual([]);
    expect(finding).toBeUndefined();
  });

  it('is less with a cold shaft, and counts on the least that the shaft shrinks', () => {
    const span = { ...warm, coefficient: { min: 11e-6 as never, max: 13e-6 as never } };
    const cold = shrinkTemperature({ ...request, shaft: span, shaftTemperature: celsius(-50) });
    // 50.05 mm × 11 ppm/K × 70 K = 38.5 µm less: 61.5 µm remain, 102.4 K.
    expect(valueIn(cold.hubTemperature.max, celsius)).toBeCloseTo(122.44, 1);
    expect(cold.outsideRange).toEqual(['shaft']);
    const hot = shrinkTemperature({ ...request, shaft: span, shaftTemperature: celsius(40) });
    // Warmer than when measured it has grown; the most counts: 50.05 mm × 13 ppm/K × 20 K = 13.0 µm.
    expect(valueIn(hot.hubTemperature.max, celsius)).toBeCloseTo(20 + 113.013 / 0.6, 2);
  });

  it('takes the worst of a span of interference and of expansion', () => {
    const { hubTemperature } = shrinkTemperature({
      ...request,
      diametralInterference: { min: mm(-0.2), max: mm(0.05) },
      hub: { ...warm, coefficient: { min: 10e-6 as never, max: 20e-6 as never } },
    });
    expect(valueIn(hubTemperature.max, celsius)).toBeCloseTo(220, 6);
    // With a clearance of more than the gap it goes on as it is.
    expect(hubTemperature.min).toBe(celsius(20));
  });

  it('is judged by your own limit first, and by a rule of thumb that says it is one', () => {
    const own = shrinkTemperature({ ...request, heating: { limits: { max: celsius(150) } } });
    expect(own.finding).toMatchObject({ verdict: 'above', basis: { kind: 'specified' } });
    const rule = shrinkTemperature({ ...request, heating: heatingLimit('mild steel') });
    expect(rule.finding).toMatchObject({
      verdict: 'within',
      basis: { kind: 'common practice' },
    });
  });

  it('is told to be outside of the range of a mean', () => {
    const iron = meanExpansion('grey iron');
    const { outsideRange } = shrinkTemperature({ ...request, hub: iron, shaft: iron });
    expect(outsideRange).toEqual(['hub']);
  });
});
