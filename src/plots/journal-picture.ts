import { say, sayDistance } from '../judging/internal.js';
import type { DiameterReading } from '../measuring/index.js';
import { groupBy } from '../measuring/internal.js';
import { degree, type Length, tradeUnit, valueIn } from '../quantities/index.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, legend, note } from './picture.js';
import { around, marksAt, type Plane, plane } from './plane.js';
import {
  drawReadings,
  guardReadJournal,
  inTheList,
  type ListedReading,
  type ReadPart,
  sayExtremes,
  sayReadAgain,
} from './read-parts.js';

/** The least that the scale of diameters spans, in inches or millimetres: a few tenths of a thou. */
const LEAST = { inch: 0.0006, metric: 0.015 } as const;
/** Readings further apart than this are not joined: a little more than a quarter turn, in degrees. */
const FAR = 95;

/**
 * Draws what was read round a journal: the diameter against the angle, a line for each station. Readings that do not fit
 * the others are ringed. After half a turn the diameters come again. Readings more than a quarter turn apart are not joined.
 *
 * @param journal - its name, its readings and those that do not fit
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when a field is misspelt, the name is empty, a value is not finite or out of range, a
 * reading stands out against the others by more than any part wears, an odd reading is not of this journal, the unit
 * system is unknown, the width is out of range, or the id is not one
 * @example
 * ```ts
 * const picture = journalPicture(
 *   {
 *     name: 'rod 2',
 *     readings: [
 *       { station: inch(0.25), angle: degree(0), diameter: inch(1.6046) },
 *       { station: inch(0.25), angle: degree(90), diameter: inch(1.6034) },
 *       { station: inch(1.25), angle: degree(0), diameter: inch(1.6044) },
 *       { station: inch(1.25), angle: degree(90), diameter: inch(1.6033) },
 *     ],
 *   },
 *   { units: 'inch', width: 320 },
 * );
 * picture.includes('role="img"'); // true
 * ```
 */
export function journalPicture(journal: ReadPart, options: PictureOptions): string {
  const { name, readings, odd } = guardReadJournal(journal);
  const drawn = guardPicture(options, 'journal-picture');
  const { units, width } = drawn;
  const unit = tradeUnit('length', units);
  const size = ({ diameter }: DiameterReading) => valueIn(diameter, unit);
  const stations = groupBy(inTheList(readings), 'station');
  const hasRepeats = stations.some(({ group }) => groupBy(group, 'angle').length < group.length);
  const scale = around(readings.map(size), LEAST[units], 0.12);
  const high = sayDistance(unit(scale.to - scale.from), 'length', units);
  const again = sayReadAgain(odd, units);
  const extremes = sayExtremes(readings, units);
  const shown = `The scale of diameters does not begin at zero: all its height is ${high}.`;
  return drawPicture(
    {
      title: `${name}: diameters round the journal`,
      told: [extremes, ...again, shown],
      strips: [
        legend(
          stations.map(({ at }, place) => ({
            label: `station ${say(at as Length, 'length', units)}`,
            place,
            as: 'line and mark',
          })),
          width,
        ),
        plane(
          {
            x: { label: 'angle round the journal [°]', from: -6, to: 186, marked: marksAt(MARKED) },
            y: { label: `diameter [${unit.symbol}]`, ...scale },
            height: Math.min(300, Math.max(200, width * 0.4)),
            width,
          },
          (field) =>
            drawReadings(
              stations.map(({ group }) => pathsOf(group, field, size)),
              { odd, units },
            ),
        ),
        ...again.map((text) => note(text, width, { ink: 'alarm', bold: true })),
        note(extremes, width),
        note(shown, width),
        note(
          `At 180° the diameter of 0° comes again. Lines only join readings${hasRepeats ? ', of repeats their mean' : ''}: between them nothing was measured.`,
          width,
        ),
      ],
    },
    drawn,
  );
}

const MARKED = [0, 30, 60, 90, 120, 150, 180] as const;

/** One station: its readings at their places, those at 0° also at 180°, and lines between neighbours. */
function pathsOf(
  group: readonly ListedReading[],
  field: Plane,
  size: (reading: DiameterReading) => number,
) {
  const angleOf = ({ angle }: DiameterReading) => valueIn(angle, degree);
  const marks = group.flatMap((reading) => {
    const angles =
      angleOf(reading) < 1 ? [angleOf(reading), angleOf(reading) + 180] : [angleOf(reading)];
    return angles.map((angle) => ({ reading, x: field.x(angle), y: field.y(size(reading)) }));
  });
  const means = groupBy(group, 'angle').map(({ group: its }) => ({
    angle: angleOf(its[0] as ListedReading),
    size: its.reduce((sum, each) => sum + size(each), 0) / its.length,
  }));
  const [first] = means;
  const all = first && first.angle < 1 ? [...means, { ...first, angle: first.angle + 180 }] : means;
  const lines = all.flatMap((to, i) => {
    const from = all[i - 1];
    if (from === undefined || to.angle - from.angle > FAR) return [];
    return [[from, to].map((each) => [field.x(each.angle), field.y(each.size)] as const)];
  });
  return { lines, marks };
}
