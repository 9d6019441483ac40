import {
  celsius,
  coldPistonClearance,
  hotPistonClearance,
  inch,
  leastColdRingGap,
  type MeanExpansion,
  MPa,
  mm,
  pinFit,
  ppmPerKelvin,
  ringSideClearance,
  ringTension,
  thou,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const of = (perKelvin: number): MeanExpansion => ({
  coefficient: ppmPerKelvin(perKelvin),
  from: celsius(0),
  to: celsius(200),
  source: 'as the problem sets it',
});
const at = (perKelvin: number, degrees: number) => ({
  expansion: of(perKelvin),
  temperature: celsius(degrees),
});

const RING = {
  bore: mm(80),
  closedGap: mm(0.3),
  radialThickness: mm(3.3),
  width: mm(2),
  elasticity: MPa(100_000),
};
const RING_OF_78 = { ...RING, bore: mm(78), closedGap: mm(0), radialThickness: mm(3.5) };

describe('pistons that get warm', () => {
  check({
    source: 'a set problem, read without its answer, which is worked out by hand here',
    name: 'an 80 mm piston, 0.75 mm of radial clearance at 15 °C, 19 and 10 ppm/K, both at 120 °C: 0.713 mm',
    given: {
      piston: mm(80),
      bore: mm(81.5),
      warmPiston: at(19, 120),
      warmBore: at(10, 120),
      measuredAt: celsius(15),
    },
    // 81.5 * (1 + 10e-6 * 105) - 80 * (1 + 19e-6 * 105) = 81.585575 - 80.1596 = 1.425975 mm across.
    expected: 1.425975 / 2,
    got: (given) => valueIn(hotPistonClearance(given).clearance.min, mm) / 2,
  });
  check({
    source: 'a set problem, read without its answer, which is worked out by hand here',
    name: 'a 4 in piston wants 0.003 in at 160 °F, 12.4 and 6.55 millionths per °F: 0.0051 in at 70 °F',
    // The piston warms to 4.004464 in; with 0.003 in the bore is 4.007464 in warm and 4.0051030 in cold.
    given: {
      bore: inch(4.007464 / (1 + 6.55e-6 * 90)),
      hotClearance: inch(0.003),
      warmPiston: at(12.4 * 1.8, 20 + 90 / 1.8),
      warmBore: at(6.55 * 1.8, 20 + 90 / 1.8),
    },
    expected: thou(4.007464e3 / (1 + 6.55e-6 * 90) - 4000),
    got: (given) => coldPistonClearance(given).clearance.max,
  });
});

describe('rings', () => {
  check({
    basis: 'common practice',
    name: '0.003 of the bore is the gap of an iron ring 84 to 92 K hotter than its iron bore, 0.004 that of 112 to 122 K',
    // 0.003 / (π * 11.4e-6) = 83.8 K, 0.003 / (π * 10.4e-6) = 91.8 K; 111.7 and 122.4 K.
    given: [
      [11.4, 83.8],
      [10.4, 91.8],
      [11.4, 111.7],
      [10.4, 122.4],
    ] as const,
    expected: [0.003, 0.003, 0.004, 0.004],
    tolerance: { relative: 0.002 },
    got: (given) =>
      given.map(([perKelvin, hotter]) => {
        const warm = { warmBore: at(perKelvin, 20), warmRing: at(perKelvin, 20 + hotter) };
        return leastColdRingGap({ bore: inch(3), ...warm }).gap.max / inch(3);
      }),
  });
  check({
    source: 'TM 10-3930-653-14&P, p. 61',
    name: 'top ring side clearance 0.040 to 0.073 mm new, limit 0.1 mm',
    given: [2.04, 2.073, 2.09, 2.11].map(mm),
    expected: ['as new', 'as new', 'serviceable', 'worn out'],
    got: (grooves) =>
      grooves.map((groove) => {
        const { findings } = ringSideClearance({
          grooveWidths: [groove],
          ringWidths: [mm(2)],
          limits: { min: mm(0.04), max: mm(0.073) },
          service: { limits: { max: mm(0.1) } },
        });
        return String(findings[0]?.grade);
      }),
  });
  check({
    source: "two ring makers' notes: a free gap of 12 to 15 % of the bore, 100 GPa for grey iron",
    name: 'such rings press with 0.12 to 0.25 N/mm² by the section on tangential force, here on a bore of 80 mm',
    given: [9.6, 12].map(mm),
    expected: [true, true],
    got: (gaps) =>
      gaps.map((freeGap) => {
        const { wallPressure } = ringTension({ ...RING, freeGap });
        return wallPressure.max > MPa(0.12) && wallPressure.max < MPa(0.25);
      }),
  });
  check({
    source: "a ring maker's manual, section on tangential force",
    name: 'the pressure is twice the tangential force over diameter and width',
    given: { ...RING_OF_78, freeGap: mm(10.5) },
    expected: 1,
    got: (ring) => {
      const { tangentialForce, wallPressure } = ringTension(ring);
      return (2 * tangentialForce.max) / (ring.bore * ring.width) / wallPressure.max;
    },
  });
  check({
    basis: 'from memory',
    name: 'a textbook ring of 78 mm, 3.5 mm thick, opening by three times that: 0.212 MPa with 0.152 for a ring that presses harder at its ends',
    // Ours presses evenly: 4 / (9π) = 0.1415 in the place of 0.152, 7 % less.
    given: { ...RING_OF_78, freeGap: mm(10.5) },
    expected: (0.212 * 0.1415) / 0.152,
    tolerance: { relative: 0.003 },
    got: (ring) => valueIn(ringTension(ring).wallPressure.max, MPa),
  });
});

describe('piston pins', () => {
  const pin = { min: inch(0.5618), max: inch(0.562) };
  check({
    source: 'TM 5-4210-220-12, 4-28.3 (its air compressor)',
    name: 'a pin of 0.5618 to 0.5620 in "must have a light interference fit in piston": hole 0.5615 to 0.5618 in',
    given: { joint: 'press', pin, bore: { min: inch(0.5615), max: inch(0.5618) } } as const,
    expected: { min: inch(-0.0005), max: inch(0) },
    tolerance: { absolute: 1e-12 },
    got: (given) => pinFit(given).clearance ?? { min: mm(0), max: mm(0) },
  });
  check({
    source: 'TM 5-4210-220-12, 4-28.3 (its air compressor)',
    name: 'and a "slip fit" in the rod: hole 0.5622 to 0.5624 in',
    given: { joint: 'bushing', pin, bore: { min: inch(0.5622), max: inch(0.5624) } } as const,
    expected: { min: inch(0.0002), max: inch(0.0006) },
    tolerance: { absolute: 1e-12 },
    got: (given) => pinFit(given).clearance ?? { min: mm(0), max: mm(0) },
  });
});
