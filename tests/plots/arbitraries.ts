import { type DiameterReading, degree, inch } from 'crankwright';
import fc from 'fast-check';

/** The widths that pictures are drawn at. */
export const anyWidth = fc.integer({ min: 280, max: 1400 });
export const anyUnits = fc.constantFrom('inch' as const, 'metric' as const);

/** Readings of one part that may stand together, at any places. */
export const anyReadings = fc
  .tuple(
    fc.double({ min: 0.5, max: 6, noNaN: true }),
    fc.array(
      fc.record({
        station: fc.double({ min: 0, max: 5, noNaN: true }),
        angle: fc.double({ min: -360, max: 360, noNaN: true }),
        off: fc.double({ min: -0.009, max: 0.009, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    ),
  )
  .map(([size, all]) =>
    all.map(
      ({ station, angle, off }): DiameterReading => ({
        station: inch(station),
        angle: degree(angle),
        diameter: inch(size * (1 + off)),
      }),
    ),
  );
