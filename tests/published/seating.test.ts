import {
  celsius,
  type EngineMaterial,
  freeSpread,
  hotOilClearance,
  inch,
  type Length,
  MPa,
  meanExpansion,
  mm,
  plus,
  ppmPerKelvin,
  psi,
  type Span,
  shellNip,
  shellWallToSuit,
  type Temperature,
  type ThermalExpansion,
  thou,
  times,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const span = (min: number, max: number): Span<Length> => ({ min: mm(min), max: mm(max) });

describe('the wall of shells to be made', () => {
  // The manual prints walls, the bore within them and the clearance of 0.05 to 0.112 mm. The housing is the bore
  // with two walls about it; the journals follow from the bore and the clearance.
  for (const [undersize, least, most] of [
    [0, 2.973, 2.985],
    [0.5, 3.223, 3.235],
    [1, 3.473, 3.485],
    [1.5, 3.723, 3.735],
  ] as const) {
    check({
      source: 'TM 5-4320-302-14, p. 6-181',
      name: `${undersize} mm under: the walls that the manual prints`,
      given: {
        housingBore: span(60.04 + 2 * 2.985, 60.083 + 2 * 2.973),
        journal: span(59.971 - undersize, 59.99 - undersize),
        limits: span(0.05, 0.112),
      },
      expected: span(least, most),
      tolerance: { absolute: 1e-9 },
      got: (bearing) => {
        const suit = shellWallToSuit(bearing);
        return suit.outcome === 'wall' ? (suit.wall as Span<Length>) : span(0, 0);
      },
    });
  }
});

const warm = (coefficient: number, degrees: number) => ({
  expansion: {
    coefficient: ppmPerKelvin(coefficient) as ThermalExpansion,
    from: celsius(0),
    to: celsius(200),
    source: 'the check',
  },
  temperature: celsius(degrees) as Temperature,
});

describe('clearance when warm', () => {
  check({
    source:
      'Swyt, J. Res. NIST 99 (1994) 31: aluminium 23.1, steel 11.5 ppm/K; the rest worked by hand',
    name: 'an aluminium rod on a steel pin opens',
    given: { journal: mm(28.575), clearance: mm(0.0381) },
    // 28.6131 * 23.1e-6 * 70 - 28.575 * 11.5e-6 * 70 = 0.0462674 - 0.0230029.
    expected: mm(0.0232645),
    tolerance: { absolute: 1e-10 },
    got: (sizes) =>
      hotOilClearance({
        ...sizes,
        shaft: warm(11.5, 90),
        bore: { kind: 'free ring', ring: warm(23.1, 90) },
      }).growth.min,
  });
  check({
    source: 'alloy data sheet of C93200: 18.0 ppm/K; the rest worked by hand',
    name: 'a bronze bush that grey iron holds closes on its pin',
    given: { journal: mm(25), clearance: mm(0.03) },
    // 31.03 * 11e-6 * 80 - 6 * 18e-6 * 80 - 25 * 11.5e-6 * 80 = 0.0273064 - 0.00864 - 0.023.
    expected: mm(-0.0043336),
    tolerance: { absolute: 1e-10 },
    got: (sizes) =>
      hotOilClearance({
        ...sizes,
        shaft: warm(11.5, 100),
        bore: { kind: 'held bush', wall: mm(3), bush: warm(18, 100), housing: warm(11, 100) },
      }).growth.min,
  });
  check({
    source:
      'NIST temperature tutorial, slide 12: AISI 1050 from 11.2 (0–100 °C) to 12.1 (0–200 °C)',
    name: 'the expansion of steel depends on the range of the mean',
    given: 'steel' as EngineMaterial,
    expected: { min: ppmPerKelvin(11.2), max: ppmPerKelvin(12.1) },
    got: (material) => meanExpansion(material).coefficient as Span<ThermalExpansion>,
  });
  check({
    source: 'alloy data sheet of C93200: 10.0e-6 per °F for 68 to 212 °F',
    name: 'the expansion of bearing bronze',
    given: 'bronze' as EngineMaterial,
    expected: (10 * 1.8) / 1e6,
    got: (material) => (meanExpansion(material).coefficient as Span<ThermalExpansion>).max,
  });
});

describe('how a shell sits', () => {
  check({
    source:
      'TM 5-3805-255-14, WP 0094: across its ends a rod bearing is about 0.025 in (0.64 mm) wider',
    name: 'free spread',
    given: inch(2.251),
    expected: mm(0.64),
    tolerance: { absolute: 1e-5 },
    got: (housingBore) => freeSpread({ acrossEnds: plus(housingBore, thou(25)), housingBore }),
  });
  check({
    basis: 'from memory',
    // A thin ring under outside pressure p has the hoop stress p * radius / wall.
    name: 'the seating pressure is what a thin ring of that stress bears',
    given: { housingBore: mm(60), crush: mm(0.03), back: mm(1.5), elasticity: MPa(207_000) },
    // Strain 2 * 0.03 / (π * 60) = 3.18310e-4, stress 65.8901 MPa, pressure 65.8901 * 1.5 / 30.
    expected: { stress: MPa(65.8901), pressure: MPa(3.294505) },
    tolerance: { relative: 1e-6 },
    got: (shell) => {
      const { hoopStress, seatingPressure } = shellNip(shell);
      return { stress: hoopStress, pressure: seatingPressure };
    },
  });
  check({
    basis: 'common practice',
    // Turned round: crush = π * bore² * pressure / (4 * elasticity * back).
    name: 'a crush of about 0.0019 in gives the 1200 psi of the rule of thumb to a 1.75 in housing',
    // π * 1.75² * 1200 / (4 * 30e6 * 0.050) = 0.0019242 in.
    given: {
      housingBore: inch(1.75),
      crush: inch(0.0019242),
      back: inch(0.05),
      elasticity: times(psi(1e6), 30),
    },
    expected: psi(1200),
    tolerance: { relative: 1e-4 },
    got: (shell) => shellNip(shell).seatingPressure,
  });
});
