import { guardLayout } from '../judging/internal.js';
import { RebuildInputError } from '../quantities/index.js';
import {
  differenceIn,
  editJson,
  fields,
  type Given,
  isSameData,
  readJson,
  writeData,
} from '../reading/index.js';
import { printedFile } from './as-written.js';
import { shedLayout } from './layouts.js';
import { readShed } from './read-shed.js';
import { joinReadings } from './readings.js';
import { shedSections } from './schema.js';
import type { Shed } from './shed.js';

/**
 * Writes a shed as the text of its file. Nothing that was in the file is lost: a shed that was not
 * changed gives the text it was read from, to the byte; a changed one gives that text with only the
 * changes in it. What stays keeps its order, its spacing and its words (`2-1/8 in` stays a fraction),
 * and so do the fields that begin with `x-`. New sizes are written in the units of the shed, with as
 * many digits as they need to read back as the same number. A shed that was made in code is written whole.
 *
 * Readings from a CSV are not in the shed file. Of a shed that was not changed they stay in the CSV. Once
 * something was changed, they are written into the shed file, as they stood in the CSV, so that the record is one
 * file: read it without the CSV from then on. `readShed` refuses a reading that both files give.
 *
 * @param shed - what `readShed` gave, or the same with changes
 * @returns the text of the shed file
 * @throws {RebuildInputError} when the shed is not what `readShed` gives
 * @throws {FileError} (a {@link RebuildInputError}) when it was changed so that `readShed` would refuse it
 * @example
 * ```ts
 * const file = `{ "version": 1, "shed": "the shed", "units": "inch",
 *   "engine": {
 *     "name": "pump set", "cylinders": 2, "mains": 0,
 *     "rodJournals": { "standard": { "min": "1-5/8 in", "max": "1.6255 in" } },
 *     "bores": { "standard": { "min": "3.0000 in", "max": "3.0005 in" } }
 *   },
 *   "shells": []
 * }`;
 * const shed = readShed(file);
 * writeShed(shed) === file; // true
 * writeShed({ ...shed, shed: 'the new shed' }) === file.replace('the shed', 'the new shed'); // true
 * ```
 */
export function writeShed(shed: Shed): string {
  guardLayout('shed', shed, shedLayout, 'readShed');
  const { text, value, was } = rawShed(shed);
  if (text !== undefined && isSameData(value, was)) return text;
  const written = text === undefined ? printedFile(value) : editJson(text, value);
  return proven(written, shed);
}

/** A shed as its file holds it. */
export interface RawShed {
  /** The text it was read from, if it was. */
  readonly text?: string;
  /** What that text holds, with the readings of the CSV in their places. */
  readonly was?: Given;
  /** What a file of the shed holds now. */
  readonly value: Given;
}

/** A shed as a file holds it: what was not changed is as it was written. */
export function rawShed({ asWritten, ...data }: Shed): RawShed {
  if (asWritten === undefined) return { value: writeData(file, data, data.units) as Given };
  const { text, readings } = asWritten;
  const { value, problems } = readJson(text, 'shed');
  if (problems.length > 0) {
    throw new RebuildInputError({
      parameter: 'shed.asWritten.text',
      value: text,
      expected: 'the JSON text that `readShed` read',
      hint: 'Leave `asWritten` as `readShed` gave it, or leave it out.',
    });
  }
  const was = joinReadings(value as Given, readings).given;
  return { text, was, value: writeData(file, data, data.units, was) as Given };
}

const file = /* @__PURE__ */ fields(shedSections);

/** The text, once it is read again and gives the data: nothing may be lost on the way to a file. */
function proven(text: string, { asWritten: was, ...data }: Shed): string {
  const { asWritten, ...again } = readShed(text);
  const path = differenceIn(data, again);
  if (path === undefined) return text;
  throw new RebuildInputError({
    parameter: `shed${path}`,
    value: data,
    shown: 'what stands there',
    expected: 'as a shed file can hold it and give it back',
    hint: 'For example a name begins and ends with no space, and an empty list of readings has no file.',
  });
}
