import {
  type Length,
  MPa,
  mm,
  newton,
  RebuildInputError,
  ringBackClearance,
  ringLeakArea,
  ringSideClearance,
  ringTension,
  squareMm,
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
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a ring in its groove', () => {
  const read = {
    grooveWidths: [2.05, 2.06, 2.09].map(mm),
    ringWidths: [1.99, 1.98].map(mm),
  };

  it('has the room of all that was read, and says what was read once', () => {
    const { clearance, readInOnePlace, findings } = ringSideClearance(read);
    expect([clearance.min, clearance.max]).toEqual([
      expect.closeTo(mm(0.06), 12),
      expect.closeTo(mm(0.11), 12),
    ]);
    expect(readInOnePlace).toEqual([]);
    expect(findings).toEqual([]);
    const [groove = mm(2), ring = mm(2)] = [read.grooveWidths[0], read.ringWidths[0]];
    expect(
      ringSideClearance({ grooveWidths: [groove], ringWidths: [ring] }).readInOnePlace,
    ).toEqual(['groove', 'ring']);
  });

  it('is judged at its worse end by the limits of the caller', () => {
    const verdict = (min: number, max: number) =>
      ringSideClearance({ ...read, limits: { min: mm(min), max: mm(max) } }).findings.map(
        (finding) => [finding.verdict, valueIn(finding.value, mm).toFixed(2)],
      );
    expect(verdict(0.04, 0.12)).toEqual([['within', '0.11']]);
    expect(verdict(0.04, 0.1)).toEqual([['above', '0.11']]);
    expect(verdict(0.07, 0.12)).toEqual([['below', '0.06']]);
  });

  it('sticks where any place of the groove is narrower than any of the ring', () => {
    const { findings } = ringSideClearance({
      grooveWidths: [mm(2.05), mm(1.98)],
      ringWidths: [mm(1.99)],
      limits: { max: mm(0.1) },
    });
    expect(findings.map(({ verdict, basis }) => [verdict, basis.kind])).toEqual([
      ['within', 'specified'],
      ['below', 'computed'],
    ]);
  });

  it('refuses a groove that was never of the ring, and readings that are none', () => {
    const groove = (width: Length) =>
      refusal(() => ringSideClearance({ ...read, grooveWidths: [mm(2.05), width] }));
    expect(groove(mm(3.2))).toBe('grooveWidths[1]');
    expect(groove(mm(1.4))).toBe('grooveWidths[1]');
    expect(groove(2.05 as Length)).toBe('grooveWidths[1]');
    expect(refusal(() => ringSideClearance({ ...read, ringWidths: [] }))).toBe('ringWidths');
  });
});

describe('the room behind a ring', () => {
  const ring = { bore: mm(80), radialThickness: mm(3.3) };

  it('is the same by the root and by the depth of the groove', () => {
    fc.assert(
      fc.property(real(77, 80), real(3.4, 5), (land, depth) => {
        const byDepth = ringBackClearance({ ...ring, land: mm(land), depth: mm(depth) });
        const byRoot = ringBackClearance({ ...ring, root: mm(land - 2 * depth) });
        expect(byDepth.radialClearance.min).toBeCloseTo(byRoot.radialClearance.min, 12);
        expect(byDepth.radialAgainstWall).toBeUndefined();
      }),
      { numRuns: 50 },
    );
  });

  it('is found missing where the ring bottoms, in the middle or as soon as the piston leans', () => {
    const behind = (root: number, leans?: number) =>
      ringBackClearance({
        ...ring,
        root: mm(root),
        ...(leans !== undefined && { pistonClearance: mm(leans) }),
      }).findings.map(({ feature, verdict }) => `${feature}: ${verdict}`);
    // (80 - 73.5) / 2 - 3.3 = -0.05 mm; (80 - 73.3) / 2 - 3.3 = 0.05 mm.
    expect(behind(73.5)).toEqual(['ring back clearance: below']);
    expect(behind(73.3)).toEqual([]);
    expect(behind(73.3, 0.08)).toEqual([]);
    expect(behind(73.3, 0.12)).toEqual(['ring back clearance against the wall: below']);
  });

  it('takes the limits of the caller for the piston in the middle', () => {
    const { findings } = ringBackClearance({
      ...ring,
      root: { min: mm(72), max: mm(72.2) },
      pistonClearance: mm(0.1),
      limits: { min: mm(0.65), max: mm(0.8) },
    });
    // The least is (80 - 72.2) / 2 - 3.3 = 0.6 mm.
    expect(findings.map(({ feature, verdict }) => `${feature}: ${verdict}`)).toEqual([
      'ring back clearance: below',
    ]);
  });

  it('refuses a root that is given twice, by half or not at all', () => {
    const given = (more: object) => refusal(() => ringBackClearance({ ...ring, ...more }));
    expect(given({})).toBe('root');
    expect(given({ land: mm(79.5) })).toBe('root');
    expect(given({ depth: mm(3.6) })).toBe('root');
    expect(given({ root: mm(72), land: mm(79.5) })).toBe('root');
    expect(given({ root: mm(72), depth: mm(3.6) })).toBe('root');
    expect(given({ root: mm(81) })).toBe('root');
    expect(given({ land: mm(72), depth: mm(3.6) })).toBe('land');
    expect(given({ root: mm(72), limits: {} })).toBe('ring.limits');
  });
});

/**
 * The gap that opens when a ring which presses evenly all round is let out of its bore: a chain of short straight links, each
 * turned against the one before by the curvature that is left once the moment is gone. It shares no formula with the library.
 */
function opened({
  bore,
  thickness,
  width,
  elasticity,
  pressure,
}: Readonly<Record<string, number>>) {
  const [D = 0, a = 0, h = 0, E = 0, p = 0] = [bore, thickness, width, elasticity, pressure];
  const links = 4000;
  const mean = (D - a) / 2;
  const link = (Math.PI * mean) / links;
  let [x, heading] = [0, 0];
  for (let i = 0; i < links; i++) {
    const angle = (Math.PI * (i + 0.5)) / links;
    // The moment of the pressure on all of the ring from here to its gap, summed piece by piece.
    const moment = momentAt(angle) * p * h * (D / 2) * mean;
    const curvature = 1 / mean - (moment * 12) / (E * h * a ** 3);
    x += Math.cos(heading + (curvature * link) / 2) * link;
    heading += curvature * link;
  }
  return 2 * x;
}

/** Moment at an angle from the back of a ring of radius 1 under a pressure of 1, by Simpson's rule over the rest of it. */
function momentAt(angle: number): number {
  const steps = 20;
  const width = (Math.PI - angle) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    // A force along the radius at the angle there turns about the section here with this arm.
    sum += weight * Math.sin(angle + i * width - angle);
  }
  return (sum * width) / 3;
}

describe('the tension of a ring', () => {
  const ring = {
    bore: mm(80),
    freeGap: mm(10.3),
    closedGap: mm(0.3),
    radialThickness: mm(3.3),
    width: mm(2),
    elasticity: MPa(100_000),
  };

  it('opens the ring as far as a chain of links that follows its curvature', () => {
    const gapFor = (freeGap: Length) => {
      const { wallPressure } = ringTension({ ...ring, freeGap, closedGap: mm(0) });
      return opened({
        bore: 0.08,
        thickness: 0.0033,
        width: 0.002,
        elasticity: 1e11,
        pressure: wallPressure.max,
      });
    };
    // A beam that bends little: exact for a small gap, 2 % too stiff at an eighth of the bore.
    expect(gapFor(mm(0.1)) / mm(0.1)).toBeCloseTo(1, 3);
    expect(gapFor(mm(10)) / mm(10)).toBeGreaterThan(1);
    expect(gapFor(mm(10)) / mm(10)).toBeLessThan(1.025);
  });

  it('grows with the gap, the width and the modulus, and with the cube of the thickness', () => {
    const base = ringTension(ring);
    const more = ringTension({ ...ring, freeGap: mm(20.3), width: mm(4) });
    expect(more.tangentialForce.max / base.tangentialForce.max).toBeCloseTo(4, 9);
    expect(more.wallPressure.max / base.wallPressure.max).toBeCloseTo(2, 9);
    const between = ringTension({ ...ring, elasticity: { min: MPa(80_000), max: MPa(100_000) } });
    expect(between.tangentialForce.min / base.tangentialForce.min).toBeCloseTo(0.8, 9);
    expect(between.tangentialForce.max).toBe(base.tangentialForce.max);
    const thick = ringTension({ ...ring, radialThickness: mm(4) });
    expect(thick.wallPressure.max / base.wallPressure.max).toBeCloseTo(
      (4 / 3.3) ** 3 * (76.7 / 76) ** 3,
      9,
    );
  });

  it('is the section modulus times the stress: the moment at the back is twice the tangential force times the mean radius', () => {
    const { tangentialForce, closedStress } = ringTension(ring);
    const moment = (closedStress.max * 0.002 * 0.0033 ** 2) / 6;
    expect(moment).toBeCloseTo(2 * tangentialForce.max * 0.03835, 9);
    // By hand: 4e11 * 0.01 * 3.5937e-8 / (9π * 0.08 * 4.5122e-4) = 140 840 Pa, times 0.002 * 0.04.
    expect(valueIn(tangentialForce.max, newton)).toBeCloseTo(11.267, 3);
  });

  it('takes the stress of spreading from how far it is opened past its free gap', () => {
    const { spreadStress, closedStress } = ringTension({ ...ring, spreadGap: mm(20.3) });
    expect(spreadStress?.max).toBeCloseTo(closedStress.max, 3);
    expect(ringTension(ring).spreadStress).toBeUndefined();
  });

  it('refuses a ring that has lost its spring, and gaps that are not of it', () => {
    const given = (more: object) => refusal(() => ringTension({ ...ring, ...more }));
    expect(given({ freeGap: mm(0.2) })).toBe('freeGap');
    expect(given({ freeGap: mm(25) })).toBe('freeGap');
    expect(given({ closedGap: mm(9) })).toBe('closedGap');
    expect(given({ radialThickness: mm(9) })).toBe('radialThickness');
    expect(given({ spreadGap: mm(10) })).toBe('spreadGap');
    expect(given({ elasticity: 100_000 })).toBe('elasticity');
  });
});

describe('what gaps leave open', () => {
  const gap = (size: number, land: number) => ({ gap: mm(size), landClearance: mm(land) });

  it('is less for each ring more, and never more than the tightest leaves', () => {
    const sizes = fc.array(fc.tuple(real(0, 1), real(0, 1)), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(sizes, (all) => {
        const rings = all.map(([size, land]) => gap(size, land));
        const { rings: each, area } = ringLeakArea({ rings });
        const least = Math.min(...each.map(({ max }) => max));
        expect(area.max).toBeLessThanOrEqual(least * (1 + 1e-12));
        expect(area.max).toBeGreaterThanOrEqual((least / Math.sqrt(all.length)) * (1 - 1e-12));
        const further = ringLeakArea({ rings: [...rings, gap(0.5, 0.5)] });
        expect(further.area.max).toBeLessThanOrEqual(area.max);
      }),
      { numRuns: 60 },
    );
  });

  it('takes gaps and lands as spans, and is shut where one ring is', () => {
    const { area } = ringLeakArea({
      rings: [
        {
          gap: { min: mm(0.2), max: mm(0.4) },
          landClearance: { min: mm(0.3), max: mm(0.5) },
        },
      ],
    });
    expect(area.min).toBeCloseTo(squareMm(0.03), 15);
    expect(area.max).toBeCloseTo(squareMm(0.1), 15);
    const shut = ringLeakArea({ rings: [gap(0.3, 0.5), gap(0, 0.5)] });
    expect([shut.area, shut.asHole]).toEqual([
      { min: 0, max: 0 },
      { min: 0, max: 0 },
    ]);
  });

  it('refuses a piston without rings, and a gap that is none', () => {
    expect(refusal(() => ringLeakArea({ rings: [] }))).toBe('rings');
    expect(refusal(() => ringLeakArea({ rings: [gap(0.3, 0.5), gap(-1, 0.5)] }))).toBe(
      'rings[1].gap',
    );
    expect(refusal(() => ringLeakArea({ rings: [{ ...gap(0.3, 0.5), land: 1 } as never] }))).toBe(
      'rings[0].land',
    );
  });
});
