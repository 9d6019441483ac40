import { type Angle, type DiameterReading, degree, inch, type Length, mm } from 'crankwright';
import fc from 'fast-check';

/** Readings on a grid: `diameters[i][j]` at the i-th station and the j-th angle. */
export function grid(
  stations: readonly number[],
  angles: readonly number[],
  diameters: readonly (readonly number[])[],
): DiameterReading[] {
  return stations.flatMap((station, i) =>
    angles.map((angle, j) => ({
      station: inch(station),
      angle: degree(angle),
      diameter: inch(diameters[i]?.[j] as number),
    })),
  );
}

/** A part measured at two to five stations and two to four angles, to the micrometre. */
export const someReadings = fc
  .record({
    stations: fc.uniqueArray(fc.integer({ min: 0, max: 150 }), { minLength: 2, maxLength: 5 }),
    angles: fc.uniqueArray(fc.integer({ min: 0, max: 35 }), { minLength: 2, maxLength: 4 }),
    size: fc.integer({ min: 60_000, max: 200_000 }),
    wear: fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 20, maxLength: 20 }),
  })
  .map(({ stations, angles, size, wear }) =>
    stations.flatMap((station, i) =>
      angles.map(
        (angle, j): DiameterReading => ({
          station: mm(station),
          angle: degree(5 * angle),
          diameter: mm((size - (wear[4 * i + j] as number)) / 1000),
        }),
      ),
    ),
  );

/** The same part in another order, turned, turned round or grown. */
export const moved = (
  readings: readonly DiameterReading[],
  by: Partial<{
    readonly station: (at: number) => number;
    readonly angle: (at: number) => number;
    readonly diameter: (size: number) => number;
  }>,
): DiameterReading[] =>
  readings.map(({ station, angle, diameter }) => ({
    station: (by.station ?? Number)(station) as Length,
    angle: (by.angle ?? Number)(angle) as Angle,
    diameter: (by.diameter ?? Number)(diameter) as Length,
  }));
