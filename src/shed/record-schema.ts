import { z } from 'zod';
import { domain } from '../judging/internal.js';
import { percent, RebuildInputError } from '../quantities/index.js';
import {
  chosen,
  fields,
  isObject,
  list,
  listOfDifferent,
  marked,
  name,
  quantity,
  textAs,
  word,
} from '../reading/index.js';
import type { Condition, HistoryEntry } from './part.js';
import { type DoneWork, WORKS } from './works.js';

/** One entry, or a list of them. */
function oneOrMore<T extends z.ZodType<string>>(item: T) {
  const one = marked(
    item.transform((each): readonly string[] => [each]),
    { write: ([each]: readonly string[]) => each },
  );
  const several: z.ZodType<readonly string[]> = listOfDifferent(item, 1);
  return chosen<readonly string[]>([one, several], (value) =>
    Array.isArray(value) ? several : one,
  );
}

/** One name, or several. */
const names = oneOrMore(name);

/** The most characters of a remark. */
const MOST = 2000;

const remark = z
  .string({ error: 'must be text, in quotes' })
  .min(1, 'must not be empty')
  .max(MOST, `must have at most ${MOST} characters; write it as a list of several`);

/** One remark, or several. */
export const remarks = oneOrMore(remark);

const DATE = /^\d{4}(?:-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?)?$/;

/** A date as an owner knows it: a year, a year and month, or a day. */
export const date = marked(
  textAs('a date in quotes, e.g. "2024-03"', (text) => {
    const written = text.trim();
    const day = DATE.test(written) ? new Date(written) : undefined;
    const isReal =
      day !== undefined && (written.length < 10 || day.toISOString().startsWith(written));
    if (isReal) return written;
    throw new RebuildInputError({
      parameter: 'text',
      value: text,
      expected: 'a year, a year and month, or a day',
      hint: 'Write it as "2024", "2024-03" or "2024-03-17".',
    });
  }),
  { write: (written: string) => written },
);

const STATES = ['ran', 'turns', 'seized', 'not seen'] as const;
const state = marked(
  word(...STATES).transform((is): Condition => ({ is })),
  { write: ({ is }: Condition) => is },
);
const stateOn: z.ZodType<Condition> = fields({ is: word(...STATES), on: date.exactOptional() });
const condition = chosen<Condition>([state, stateOn], (value) =>
  isObject(value) ? stateOn : state,
);

/** Work that was done on a part. */
export const workDone: z.ZodType<DoneWork> = fields({
  work: word(...WORKS),
  step: name.exactOptional(),
  places: list(name).exactOptional(),
});

const history: z.ZodType<HistoryEntry> = fields({
  on: date.exactOptional(),
  what: remark,
  by: name.exactOptional(),
  done: list(workDone).exactOptional(),
  before: z.record(z.string(), z.json()).exactOptional(),
});

/** How likely something is good. */
const chance = /* @__PURE__ */ domain(percent, { least: 0, most: 1, example: 'percent(70)' });

const owned = {
  condition: condition.exactOptional(),
  notes: remarks.exactOptional(),
  dates: z.record(name, date).exactOptional(),
  marks: names.exactOptional(),
  photos: names.exactOptional(),
  reserved: remark.exactOptional(),
  builtInto: name.exactOptional(),
  odds: quantity('ratio', chance).exactOptional(),
  history: list(history, 0).exactOptional(),
};

/** What an owner records of an engine that is not taken apart. */
export const coreRecord = {
  ...owned,
  interchange: names.exactOptional(),
  lacks: names.exactOptional(),
};

/** What an owner records of any part. */
export const partRecord = {
  ...owned,
  interchange: names.exactOptional(),
  supersedes: names.exactOptional(),
  supersededBy: names.exactOptional(),
  onlyWith: names.exactOptional(),
  belongsTo: name.exactOptional(),
  make: name.exactOptional(),
  homeMade: z.literal(true, { error: 'must be true, without quotes, or left out' }).exactOptional(),
};
