import { showValue } from '../quantities/internal.js';
import {
  didYouMean,
  type FileProblem,
  type Given,
  isObject,
  lineOf,
  type ReadingRow,
  readingRows,
  shortFor,
} from '../reading/index.js';
import { nameOf, type RawPart, rawParts } from './checks/names.js';
import { PLACES } from './checks/places.js';
import { type Feature, type Features, FILLED, featuresOf } from './features.js';
import { mayStillRead } from './half-read.js';
import { sayBefore, workAfter } from './read-before.js';
import { SECTIONS, type Section } from './sections.js';

/** A shed file with the readings of the CSV put in their places. */
export interface Joined {
  readonly given: Given;
  /** Rows that could not be used. */
  readonly problems: readonly FileProblem[];
  /** Moves a problem with a reading to the line of the CSV it came from. */
  readonly placeOf: (problem: FileProblem) => readonly FileProblem[];
}

/** Puts the readings of a CSV into a shed file, before the file is validated. */
export function joinReadings(file: Given, csv: unknown): Joined {
  const placeOf = (problem: FileProblem) => [problem];
  if (csv === undefined) return { given: file, problems: [], placeOf };
  if (typeof csv !== 'string') {
    const problem = { path: 'readings', message: 'must be CSV text' };
    return { given: file, problems: [problem], placeOf };
  }
  const { rows, problems, unread } = readingRows(csv);
  const join = new Join(file);
  for (const row of rows) join.add(row);
  return {
    given: join.given,
    problems: [...problems, ...join.problems],
    placeOf: (problem) =>
      unread && isLackingReadings(problem)
        ? []
        : [{ ...problem, path: join.placeOf(problem.path) }],
  };
}

/** The number of mistakes that the message of an error lists. */
const MOST_QUESTIONS = 50;

const TAKE_OUT =
  'take the row out and write the new readings into the shed file or a record of work, or give a column "date" whose day is later';

class Join {
  /** A copy of the file, down to the places of its parts. */
  readonly given: Given;
  readonly problems: FileProblem[] = [];
  /** The row of the CSV for each reading in the copy that came from it. */
  readonly #rows = new Map<string, ReadingRow>();
  /** The place in the CSV for each size in the copy that came from it. */
  readonly #places = new Map<string, string>();
  /** What the CSV may give of a place that it reads, beside what stood in the shed file before any row of it. */
  readonly #stillOpen = new Map<string, ReturnType<typeof mayStillRead>>();
  readonly #parts = new Map<string, RawPart>();
  readonly #features = new Map<string, Features>();
  readonly #engine: Given;

  constructor(file: Given) {
    const { toBuy, engine } = file;
    this.#engine = isObject(engine) ? engine : {};
    this.given = { ...copied(file), ...(isObject(toBuy) && { toBuy: copied(toBuy) }) };
    for (const part of rawParts(this.given)) {
      const name = nameOf(part.part);
      if (name !== undefined && !this.#parts.has(name)) this.#parts.set(name, part);
    }
  }

  add(row: ReadingRow): void {
    const part = this.#parts.get(row.part);
    if (part === undefined) {
      const question = this.#question(row.part, this.#parts);
      this.#refuse(row, 'part', `is not in the shed${question || listed([...this.#parts.keys()])}`);
      return;
    }
    const { byName, names } = this.#featuresOf(row.part, part);
    const feature = byName.get(row.feature);
    if (feature === undefined) {
      const question = this.#question(row.feature, byName);
      this.#refuse(
        row,
        'feature',
        `is not a feature of "${row.part}"${question || ';'} it has ${names}`,
      );
      return;
    }
    if (row.reading !== '') {
      const { list, field } = feature;
      const place = { ...(list !== undefined && { list, name: row.feature }), field };
      const { date = '' } = row.others;
      const work = workAfter(part.part, place, date);
      if (work !== undefined) {
        this.#refuse(row, 'reading', `${sayBefore(work, row.part, date)}; ${TAKE_OUT}`);
        return;
      }
      feature.listed?.();
    }
    if (feature.holds === 'readings') this.#addReading(row, feature);
    else this.#addSize(row, feature);
  }

  /** The place of a problem: in the CSV, if the value came from there. */
  placeOf(path: string): string {
    const place = this.#places.get(path);
    if (place !== undefined) return place;
    const end = path.lastIndexOf('.');
    const row = this.#rows.get(path) ?? this.#rows.get(path.slice(0, end));
    if (row === undefined) return path;
    const field = path.slice(end + 1);
    const { reading: diameter, angle } = row.under;
    const columns: Readonly<Record<string, string>> = { diameter, angle, station: 'station' };
    const column = columns[field];
    return column === undefined ? lineOf(row.line) : placeIn(row, column);
  }

  #addReading(row: ReadingRow, { path, holder }: Feature): void {
    const { station, angle, reading } = row;
    if (reading === '') return;
    const at = `${path}.readings`;
    if (holder['readings'] === undefined) holder['readings'] = [];
    const readings = holder['readings'];
    const mayRead = this.#stillOpen.get(at) ?? mayStillRead(readings);
    this.#stillOpen.set(at, mayRead);
    if (!mayRead(station, angle)) {
      this.#refuse(row, 'reading', `is also given in the shed file, at ${at}; keep one of the two`);
    } else if (Array.isArray(readings)) {
      this.#rows.set(`${at}[${readings.length}]`, row);
      readings.push({ station, angle, diameter: reading });
    }
  }

  #addSize(row: ReadingRow, { path, holder, field, holds }: Feature): void {
    const at = `${path}.${field}`;
    const where = placeIn(row, row.under.reading);
    const mine = this.#places.get(at);
    if (row.angle !== '' && row.under.angle === row.under.reading) {
      const what = `stands under an angle, but "${row.feature}" is one size; give it in a column "reading"`;
      this.#refuse(row, 'reading', what);
      return;
    }
    if (row.station !== '' || row.angle !== '') {
      const column = row.station === '' ? 'angle' : 'station';
      this.#refuse(row, column, `must be empty: "${row.feature}" has no stations`);
    }
    if (row.reading === '') return;
    if (holder[field] === undefined) {
      holder[field] = holds === 'span' ? [row.reading] : row.reading;
      this.#places.set(at, where);
      this.#places.set(`${at}[0]`, where);
    } else if (mine === undefined) {
      this.#refuse(row, 'reading', `is also given in the shed file, at ${at}; keep one of the two`);
    } else if (holds === 'span') {
      const sizes = holder[field] as string[];
      this.#places.set(`${at}[${sizes.length}]`, where);
      sizes.push(row.reading);
    } else {
      this.#refuse(
        row,
        'reading',
        `is a second reading of "${row.feature}", after ${mine}; give the mean of the two`,
      );
    }
  }

  #featuresOf(name: string, part: RawPart): Features {
    const seen = this.#features.get(name) ?? featuresOf(part, this.#engine);
    this.#features.set(name, seen);
    return seen;
  }

  /** Suggests a known name, for the first mistakes only, because the search is slow. */
  #question(name: string, known: ReadonlyMap<string, unknown>): string {
    if (this.problems.length >= MOST_QUESTIONS) return '';
    const names = [...known.keys()];
    const question = shortFor(name, names) ?? didYouMean(name, names);
    return question === undefined ? '' : `; ${question}`;
  }

  #refuse(
    row: ReadingRow,
    column: 'part' | 'feature' | 'station' | 'angle' | 'reading',
    what: string,
  ) {
    const { [column]: heading = column } = row.under as Readonly<Record<string, string>>;
    const message = `${showValue(row[column])} ${what}`;
    this.problems.push({ path: placeIn(row, heading), message });
  }
}

/** The most names that a message lists. */
const MOST_NAMES = 12;

/** The names of what there is, to follow what is not. */
function listed(names: readonly string[]): string {
  if (names.length === 0) return '';
  const more = names.length - MOST_NAMES;
  const shown = names.slice(0, MOST_NAMES).map((name) => `"${name}"`);
  return `; it has ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

const placeIn = ({ line }: ReadingRow, column: string) => `${lineOf(line)}: ${column}`;

/** Whether the only problem may be that the CSV of readings could not be read. */
function isLackingReadings({ path, message }: FileProblem): boolean {
  return message === 'is missing' && FILLED.has(path.slice(path.lastIndexOf('.') + 1));
}

/** Copies the sections of parts, down to the places of each part. */
function copied(from: Given): Given {
  const sections = SECTIONS.flatMap((section) => {
    const parts: unknown = from[section];
    if (!Array.isArray(parts)) return [];
    return [[section, parts.map((part: unknown) => copyOfPart(section, part))] as const];
  });
  return { ...from, ...Object.fromEntries(sections) };
}

function copyOfPart(section: Section, part: unknown): unknown {
  if (!isObject(part)) return part;
  const lists = PLACES[section].flatMap(({ list }) => {
    const places: unknown = part[list];
    return Array.isArray(places) ? [[list, places.map(copyOfPlace)] as const] : [];
  });
  return { ...part, ...Object.fromEntries(lists) };
}

function copyOfPlace(place: unknown): unknown {
  if (!isObject(place)) return place;
  const { readings } = place;
  return { ...place, ...(Array.isArray(readings) && { readings: [...readings] }) };
}
