import { guardLayout } from '../../judging/internal.js';
import type { RebuildInputError } from '../../quantities/index.js';
import {
  editJson,
  FileError,
  type FileProblem,
  type Given,
  isObject,
  rawItems,
} from '../../reading/index.js';
import { printedFile } from '../as-written.js';
import { futureWork } from '../checks/dates.js';
import { nameOf, type RawPart, rawParts } from '../checks/names.js';
import { shedLayout } from '../layouts.js';
import { readShed } from '../read-shed.js';
import type { Shed } from '../shed.js';
import { guardToday } from '../today.js';
import { rawShed } from '../write-shed.js';
import { type PlacedBox, partOfBoxes } from './boxes-in-parts.js';
import { namesInShed, takenFor } from './built-in.js';
import { changePart, notThere, workInWords } from './change-part.js';
import { outsideIn } from './outside-limits.js';
import { type CamePart, readWork, type WorkFile } from './work-file.js';

/**
 * Puts what came back from the shop, or was measured at the bench, into the shed. Every part keeps a history: the
 * work, the day, who did it, and what its fields were before, as they were written. What was measured before the
 * work and no longer holds after it is taken out: a journal that was ground and is not measured yet is not known.
 *
 * A record of work lists `parts`, each with its `name` and, as in the shed file, whatever was measured of it and
 * its places; besides `what` was done in words, what was `done` (`work`, and the `step` and the `places`, by default
 * all), and the faults that are `repaired`. `on` and `by` say when and by whom. Or it holds the `boxes` of a build
 * sheet that `buildBoxes` gave, filled in; empty ones are passed over. With `builtInto` the parts that it `takes`
 * are marked as built into that engine: no plan takes them any more. Where a reading lies outside the limits in its own
 * box, which `outsideLimits` lists, the readings come into the shed and no part is marked: the engine does not fit together.
 *
 * The result is a shed as `readShed` gives it: `writeShed` gives its file, with only that changed, and with the readings
 * of a CSV in it.
 *
 * @param shed - what `readShed` gave
 * @param work - the record of work: JSON text, or the parsed value
 * @param options - `today`, as `2026-11-26`: no date in the record may be after it; by default dates are not compared with it
 * @returns the shed after it
 * @throws {RebuildInputError} when the shed is not what `readShed` gives, or `today` is not a day
 * @throws {FileError} (a {@link RebuildInputError}) when a part is not in the shed, a place is not on its part, a fault is not
 * listed, work is not done on such a part, a field is misspelt, a size is out of range, a date is after `today`, or the
 * record is not JSON
 * @example
 * ```ts
 * const shed = readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 *   heads: [{ name: 'head A', flatness: '0.006 in', faults: ['bent'] }],
 * });
 * const after = afterMachining(shed, {
 *   version: 1, on: '2026-05-01', by: 'the grinder',
 *   parts: [{ name: 'head A', done: [{ work: 'skim head' }], flatness: '0.001 in', repaired: ['bent'] }],
 * });
 * after.heads?.[0]?.faults; // undefined
 * after.heads?.[0]?.history?.[0]?.what; // "skim head"
 * ```
 */
export function afterMachining(
  shed: Shed,
  work: unknown,
  options: { readonly today?: string } = {},
): Shed {
  guardLayout('shed', shed, shedLayout, 'readShed');
  const today = guardToday(options);
  const file = readWork(work);
  const { text, value } = rawShed(shed);
  const record = new Record(value, file);
  record.addParts();
  record.build();
  record.addBoxes();
  record.addChecks();
  const came = file.parts.map(({ fields }) => fields);
  record.problems.push(...futureWork(file.on, came, today));
  if (record.problems.length > 0) throw new FileError(work, record.problems, 'work');
  const written = text === undefined ? printedFile(record.value) : editJson(text, record.value);
  try {
    return readShed(written);
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    const problems = error.problems.map((problem) => record.placed(problem));
    throw new FileError(work, problems, 'work');
  }
}

/** A shed file that a record of work is put into. */
class Record {
  value: Given;
  readonly problems: FileProblem[] = [];
  readonly #file: WorkFile;
  /** Where values of the shed came from: the longest path that a problem begins with tells. */
  readonly #moved = new Map<string, string>();

  constructor(value: Given, file: WorkFile) {
    this.value = value;
    this.#file = file;
  }

  addParts(): void {
    this.#file.parts.forEach((came, i) => {
      const at = `parts[${i}]`;
      const part = this.#partNamed(came.name, `${at}.name`);
      if (part) this.#change(part, came, at);
    });
  }

  addBoxes(): void {
    const boxes = this.#file.boxes.map((box, i): PlacedBox => ({ ...box, path: `boxes[${i}]` }));
    const filled = boxes.filter(({ reading }) => reading !== '');
    for (const name of new Set(filled.map((box) => box.part))) {
      const own = filled.filter((box) => box.part === name);
      const part = this.#partNamed(name, `${own[0]?.path}.part`);
      if (!part) continue;
      const refuse = (path: string, message: string) => this.problems.push({ path, message });
      const came = partOfBoxes(part, name, own, refuse, (inShed, inWork) =>
        this.#moved.set(`${part.path}${inShed}`, inWork),
      );
      this.#change(part, came);
    }
  }

  /** Marks what is built into the engine, unless it does not fit together. */
  build(): void {
    if (this.#file.builtInto === undefined) return;
    const refuse = (path: string, message: string) => this.problems.push({ path, message });
    const fate = outsideIn(this.#file).length === 0 ? 'in' : 'for';
    this.value = takenFor(this.value, this.#file, fate, refuse);
  }

  /** Keeps the clearances that were checked in the history of the block. */
  addChecks(): void {
    const { checks, engine, takes } = this.#file;
    const filled = checks.filter(({ reading }) => reading !== '');
    if (filled.length === 0) return;
    const names = [...(engine === undefined ? [] : [engine]), ...takes.map(({ name }) => name)];
    const block = rawParts(this.value).find(
      ({ section, part }) => section === 'blocks' && names.includes(nameOf(part) ?? ''),
    );
    if (block === undefined) {
      const message = 'does not name the block of an engine: the clearances would be lost';
      this.problems.push({ path: 'engine', message });
      return;
    }
    const what = filled.map((check) => `${check.what} ${check.reading}`).join(', ');
    this.#change(block, { name: nameOf(block.part) ?? '', what: `checked: ${what}`, fields: {} });
  }

  /** A problem of the shed file at the place in the record that it came from. */
  placed({ path, message }: FileProblem): FileProblem {
    const [inShed, inWork] = [...this.#moved]
      .filter(
        ([from]) =>
          path === from || (/^[.[]/.test(path.slice(from.length)) && path.startsWith(from)),
      )
      .reduce(
        ([best, to], [from, other]) => (from.length > best.length ? [from, other] : [best, to]),
        ['', ''],
      );
    return inShed === ''
      ? { path, message }
      : { path: inWork + path.slice(inShed.length), message };
  }

  #partNamed(name: string, path: string): RawPart | undefined {
    const all = rawParts(this.value).filter((each) => !each.path.startsWith('toBuy.'));
    // Of several alike, those that the engine takes were measured, not those on the shelf.
    const [found] = namesInShed(name, this.#file).flatMap((each) =>
      all.filter(({ part }) => nameOf(part) === each),
    );
    if (found === undefined) {
      const names = all.map(({ part }) => nameOf(part));
      this.problems.push({ path, message: notThere(name, names, 'a part of the shed') });
    }
    return found;
  }

  #change(found: RawPart, came: CamePart, at?: string): void {
    const refuse = (path: string, message: string) =>
      this.problems.push({ path: `${at ?? ''}${path}`, message });
    const { part, before } = changePart(found, came, refuse, (inShed, inWork) => {
      if (at !== undefined) this.#moved.set(`${found.path}${inShed}`, `${at}${inWork}`);
    });
    const what = workInWords(came);
    const isChanged = Object.keys(before).length > 0;
    if (what === undefined && !isChanged) {
      this.#put(found, part);
      return;
    }
    const { on, by } = this.#file;
    const entry = {
      ...(on !== undefined && { on }),
      what: what ?? 'measured again',
      ...(by !== undefined && { by }),
      ...(came.done && { done: came.done }),
      ...(isChanged && { before }),
    };
    const history = Array.isArray(part['history']) ? part['history'] : [];
    const here = `${found.path}.history[${history.length}]`;
    this.#moved.set(`${here}.on`, 'on').set(`${here}.by`, 'by');
    if (at !== undefined) this.#moved.set(`${here}.what`, `${at}.what`);
    this.#put(found, { ...part, history: [...history, entry] });
  }

  /** Puts a part in the place of what it was. */
  #put({ section, part: was }: RawPart, part: Given): void {
    const parts = rawItems(this.value[section]).map((each) => (each === was ? part : each));
    if (isObject(this.value)) this.value = { ...this.value, [section]: parts };
  }
}
