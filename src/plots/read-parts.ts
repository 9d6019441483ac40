import type { Span } from '../judging/index.js';
import {
  guardFields,
  guardLayout,
  guardSpan,
  guardText,
  namedFrom,
  say,
  stationAlong,
} from '../judging/internal.js';
import { type DiameterReading, type OddReading, oddReadings } from '../measuring/index.js';
import { guardReadings, oddInBore } from '../measuring/internal.js';
import { oddReadingLayout } from '../measuring/layouts.js';
import { degree, type Length, RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { dashOf, inked, mark, oddMark } from './ink.js';
import { straight } from './picture.js';
import { element } from './svg.js';

/** A round part and its readings. */
export interface ReadPart {
  /** Its name on the bench. */
  readonly name: string;
  /** What was read of it, as far as it was. */
  readonly readings: readonly DiameterReading[];
  /**
   * The readings that do not fit the others, as `oddReadings` or an inspection names them. If left out they are looked
   * for; an empty list says that you looked yourself.
   */
  readonly odd?: readonly OddReading[];
}

/** A bore and its readings. */
export interface ReadBore extends ReadPart {
  /** The stations that the rings run between [m]. */
  readonly ringTravel?: Span<Length>;
}

const PART = ['name', 'readings', 'odd'] as const;
const BORE = ['name', 'readings', 'odd', 'ringTravel'] as const;

/** A part with its readings checked, and those among them that do not fit. */
export type SoundPart = Required<ReadPart>;

/** Refuses what is no journal with its readings. */
export function guardReadJournal(journal: ReadPart): SoundPart {
  guardFields('journal', journal, PART);
  const sound = guardPart('journal', journal);
  const odd = journal.odd ?? oddReadings(journal.readings);
  return { ...sound, odd };
}

/** Refuses what is no bore with its readings. */
export function guardReadBore(bore: ReadBore): SoundPart & Pick<ReadBore, 'ringTravel'> {
  guardFields('bore', bore, BORE);
  const sound = guardPart('bore', bore);
  const ringTravel =
    bore.ringTravel === undefined
      ? undefined
      : guardSpan('bore.ringTravel', bore.ringTravel, stationAlong);
  const odd = bore.odd ?? oddInBore(bore.readings, ringTravel);
  return { ...sound, odd, ...(ringTravel && { ringTravel }) };
}

function guardPart(parameter: string, { name, readings, odd }: ReadPart) {
  guardText(`${parameter}.name`, name);
  const inTheList = namedFrom(
    () => ({ readings: `${parameter}.readings` }),
    () => guardReadings(readings),
  );
  if (odd !== undefined) {
    guardLayout(`${parameter}.odd`, odd, { list: oddReadingLayout }, 'oddReadings');
    odd.forEach(({ index }, i) => {
      if (Number.isInteger(index) && index >= 0 && index < readings.length) return;
      throw new RebuildInputError({
        parameter: `${parameter}.odd[${i}].index`,
        value: index,
        expected: 'the place of one of the readings, from 0',
        hint: 'Are they the odd readings of this part?',
      });
    });
  }
  return { name, readings: inTheList };
}

/** `station 0.2500 in, 90°`. */
export const sayPlace = (
  { station, angle }: Pick<DiameterReading, 'station' | 'angle'>,
  units: UnitSystem,
): string => `station ${say(station, 'length', units)}, ${sayAngle(angle)}`;

/** `90°`. */
export const sayAngle = (angle: DiameterReading['angle']): string =>
  `${formatNumber(angle, degree, 0)}°`;

/** A reading with its place in the list. */
export interface ListedReading extends DiameterReading {
  readonly index: number;
}

/** Every reading with its place in the list. */
export const inTheList = (readings: readonly DiameterReading[]): readonly ListedReading[] =>
  readings.map((reading, index) => ({ ...reading, index }));

/** The smallest and the largest of the readings, and where. */
export function sayExtremes(readings: readonly DiameterReading[], units: UnitSystem): string {
  const sorted = [...readings].sort((a, b) => a.diameter - b.diameter);
  const one = (reading: DiameterReading | undefined) =>
    reading ? `${say(reading.diameter, 'length', units)} (${sayPlace(reading, units)})` : '';
  if (sorted.length === 1) return `One reading: ${one(sorted[0])}.`;
  return `${sorted.length} readings, from ${one(sorted[0])} to ${one(sorted.at(-1))}.`;
}

/** The readings of one line of a picture, and the lines between them. */
interface DrawnLine {
  readonly lines: readonly (readonly (readonly [x: number, y: number])[])[];
  readonly marks: readonly {
    readonly reading: ListedReading;
    readonly x: number;
    readonly y: number;
  }[];
}

/** Draws lines and readings, with a ring round those that do not fit. */
export function drawReadings(
  all: readonly DrawnLine[],
  { odd, units }: { readonly odd: readonly OddReading[]; readonly units: UnitSystem },
): string {
  const bad = new Set(
    odd.flatMap(({ index, together = [] }) => [index, ...together.map((each) => each.index)]),
  );
  const lines = all.map(({ lines: its }, place) =>
    element('path', {
      d: its.map((line) => straight(line)).join(''),
      'stroke-width': 1.5,
      'stroke-dasharray': dashOf(place),
      ...inked({ stroke: 'ink' }),
    }),
  );
  const marks = all.flatMap(({ marks: its }, place) =>
    its.map(({ reading, x, y }) => {
      const about = `${say(reading.diameter, 'length', units)}, ${sayPlace(reading, units)}`;
      return `${mark(place, x, y, about)}${bad.has(reading.index) ? oddMark(x, y) : ''}`;
    }),
  );
  return [...lines, ...marks].join('');
}

/** What to read again and why, a sentence for each. */
export const sayReadAgain = (odd: readonly OddReading[], units: UnitSystem): readonly string[] =>
  odd.map(({ reading, expected, together = [] }) => {
    const one = `${say(reading.diameter, 'length', units)} at ${sayPlace(reading, units)}`;
    const others = together.map(
      (each) =>
        `${say(each.reading.diameter, 'length', units)} at ${sayPlace(each.reading, units)}`,
    );
    return others.length === 0
      ? `Ringed, read again: ${one}. The others say ${say(expected, 'length', units)}.`
      : `Ringed, read again, as one of them does not fit: ${[one, ...others].join('; ')}.`;
  });
