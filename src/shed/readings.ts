import { showValue } from '../quantities/internal.js';
import {
  didYouMean,
  type FileProblem,
  type Given,
  isObject,
  lineOf,
  type ReadingRow,
  readingRows,
} from '../reading/index.js';
import { nameOf, type RawPart, rawParts } from './checks/names.js';
import { PLACES } from './checks/places.js';
import { type Feature, type Features, FILLED, featuresOf } from './features.js';
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

class Join {
  /** A copy of the file, down to the places of its parts. */
  readonly given: Given;
  readonly problems: FileProblem[] = [];
  /** The line of the CSV for each value in the copy that came from it. */
  readonly #lines = new Map<string, string>();
  readonly #parts = new Map<string, RawPart>();
  readonly #features = new Map<string, Features>();

  constructor(file: Given) {
    const { toBuy } = file;
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
      this.#refuse(row, 'part', `is not in the shed${question}`);
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
    if (feature.holds === 'readings') this.#addReading(row, feature);
    else this.#addSize(row, feature);
  }

  /** The place of a problem: in the CSV, if the value came from there. */
  placeOf(path: string): string {
    const own = this.#lines.get(path);
    if (own !== undefined) return own;
    const end = path.lastIndexOf('.');
    const line = this.#lines.get(path.slice(0, end));
    const field = path.slice(end + 1);
    return line === undefined ? path : `${line}: ${field === 'diameter' ? 'reading' : field}`;
  }

  #addReading(row: ReadingRow, { path, holder }: Feature): void {
    const { line, station, angle, reading } = row;
    if (holder['readings'] === undefined) holder['readings'] = [];
    const readings = holder['readings'];
    if (!Array.isArray(readings)) return;
    const at = `${path}.readings`;
    // Readings of before a regrind in one file and those of after it in the other are not one journal.
    if (readings.length > 0 && !this.#lines.has(`${at}[0]`)) {
      this.#refuse(row, 'reading', `is also given in the shed file, at ${at}; keep one of the two`);
      return;
    }
    this.#lines.set(`${at}[${readings.length}]`, lineOf(line));
    readings.push({ station, angle, diameter: reading });
  }

  #addSize(row: ReadingRow, { path, holder, field, holds }: Feature): void {
    const at = `${path}.${field}`;
    const where = `${lineOf(row.line)}: reading`;
    const mine = this.#lines.get(at);
    if (row.station !== '' || row.angle !== '') {
      const column = row.station === '' ? 'angle' : 'station';
      this.#refuse(row, column, `must be empty: "${row.feature}" has no stations`);
    }
    if (holder[field] === undefined) {
      holder[field] = holds === 'span' ? [row.reading] : row.reading;
      this.#lines.set(at, where);
      this.#lines.set(`${at}[0]`, where);
    } else if (mine === undefined) {
      this.#refuse(row, 'reading', `is also given in the shed file, at ${at}; keep one of the two`);
    } else if (holds === 'span') {
      const sizes = holder[field] as string[];
      this.#lines.set(`${at}[${sizes.length}]`, where);
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
    const seen = this.#features.get(name) ?? featuresOf(part);
    this.#features.set(name, seen);
    return seen;
  }

  /** Suggests a known name, for the first mistakes only, because the search is slow. */
  #question(name: string, known: ReadonlyMap<string, unknown>): string {
    if (this.problems.length >= MOST_QUESTIONS) return '';
    const question = didYouMean(name, [...known.keys()]);
    return question === undefined ? '' : `; ${question}`;
  }

  #refuse(
    row: ReadingRow,
    column: 'part' | 'feature' | 'station' | 'angle' | 'reading',
    what: string,
  ) {
    const message = `${showValue(row[column])} ${what}`;
    this.problems.push({ path: `${lineOf(row.line)}: ${column}`, message });
  }
}

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
