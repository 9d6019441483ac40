import { say } from '../judging/internal.js';
import type { DiameterReading } from '../measuring/index.js';
import { groupBy } from '../measuring/internal.js';
import { type Angle, tradeUnit, valueIn } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import { written } from './ink.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, legend, note, type Sample, shade } from './picture.js';
import { around, plane } from './plane.js';
import {
  drawReadings,
  guardReadBore,
  inTheList,
  type ReadBore,
  sayAngle,
  sayExtremes,
  sayReadAgain,
} from './read-parts.js';
import { element, words } from './svg.js';

/** The least that the scale of diameters spans, in inches or millimetres. */
const LEAST = { inch: 0.001, metric: 0.025 } as const;

/**
 * Draws how the diameter of a bore runs from the deck down, a line for each angle, against the travel of the rings.
 * Readings that do not fit the others are ringed.
 *
 * @param bore - its name, its readings, those that do not fit and where the rings run
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when a field is misspelt, the name is empty, a value is not finite or out of range, a
 * reading stands out against the others by more than any part wears, an odd reading is not of this bore, the ring
 * travel is reversed, the unit system is unknown, the width is out of range, or the id is not one
 * @example
 * ```ts
 * const picture = borePicture(
 *   {
 *     name: 'cylinder 2',
 *     ringTravel: { min: inch(0.4), max: inch(3.6) },
 *     readings: [
 *       { station: inch(0.15), angle: degree(0), diameter: inch(3.0001) },
 *       { station: inch(0.5), angle: degree(0), diameter: inch(3.0062) },
 *       { station: inch(2), angle: degree(0), diameter: inch(3.0030) },
 *       { station: inch(3.5), angle: degree(0), diameter: inch(3.0009) },
 *     ],
 *   },
 *   { units: 'inch' },
 * );
 * picture.includes('ring travel'); // true
 * ```
 */
export function borePicture(bore: ReadBore, options: PictureOptions): string {
  const { name, readings, odd, ringTravel } = guardReadBore(bore);
  const drawn = guardPicture(options, 'bore-picture');
  const { units, width } = drawn;
  const unit = tradeUnit('length', units);
  const value = (length: DiameterReading['diameter']) => valueIn(length, unit);
  const lines = groupBy(inTheList(readings), 'angle');
  const sizes = around(
    readings.map(({ diameter }) => value(diameter)),
    LEAST[units],
  );
  const depths = around(
    [
      0,
      ...readings.map(({ station }) => value(station)),
      ...(ringTravel ? [value(ringTravel.min), value(ringTravel.max)] : []),
    ],
    value(0.01 as DiameterReading['diameter']),
    0.03,
  );
  const down = {
    ...depths,
    from: smallestOf([0, ...readings.map(({ station }) => value(station))]),
  };
  const height = Math.min(320, Math.max(220, width * 0.5));
  const fieldWidth = width - 80;
  const times = Number(
    (fieldWidth / (sizes.to - sizes.from) / (height / (down.to - down.from))).toPrecision(2),
  );
  const again = sayReadAgain(odd, units);
  const travel =
    ringTravel === undefined
      ? 'Where the rings run was not told.'
      : `The rings run from ${say(ringTravel.min, 'length', units)} to ${say(ringTravel.max, 'length', units)}.`;
  const scale = `Diameters are drawn about ${times} times as large as depths.`;
  const samples: readonly Sample[] = [
    ...lines.map(({ at }, place) => ({
      label: sayAngle(at as Angle),
      place,
      as: 'line and mark' as const,
    })),
    ...(ringTravel ? [{ label: 'ring travel', place: 1, as: 'shade' as const }] : []),
  ];
  return drawPicture(
    {
      title: `${name}: diameter from the deck down`,
      told: [sayExtremes(readings, units), travel, ...again, scale],
      strips: [
        legend(samples, width),
        plane(
          {
            x: { label: `diameter [${unit.symbol}]`, ...sizes },
            y: { label: `depth below the deck [${unit.symbol}]`, ...down, down: true },
            height,
            width,
          },
          (field) => {
            const swept = ringTravel && {
              top: Math.max(field.top, field.y(value(ringTravel.min))),
              bottom: Math.min(field.bottom, field.y(value(ringTravel.max))),
            };
            return [
              ...(swept
                ? [
                    element('rect', {
                      class: 'ring-travel',
                      x: field.left,
                      y: swept.top,
                      width: field.right - field.left,
                      height: swept.bottom - swept.top,
                      ...shade(1),
                    }),
                    words('ring travel', field.right - 6, swept.bottom - 6, {
                      'text-anchor': 'end',
                      ...written('soft'),
                    }),
                  ]
                : []),
              drawReadings(
                lines.map(({ group }) => {
                  const sorted = [...group].sort((one, other) => one.station - other.station);
                  const marks = sorted.map((reading) => ({
                    reading,
                    x: field.x(value(reading.diameter)),
                    y: field.y(value(reading.station)),
                  }));
                  return { lines: [marks.map(({ x, y }) => [x, y] as const)], marks };
                }),
                { odd, units },
              ),
            ].join('');
          },
        ),
        ...again.map((text) => note(text, width, { ink: 'alarm', bold: true })),
        note(sayExtremes(readings, units), width),
        note(travel, width),
        note(`${scale} Lines only join readings: between them nothing was measured.`, width),
      ],
    },
    drawn,
  );
}
