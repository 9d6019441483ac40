import { z } from 'zod';
import { parseLength, RebuildInputError } from '../../quantities/index.js';
import { complaintOf } from '../../quantities/internal.js';
import {
  count,
  FileError,
  type FileProblem,
  fields,
  type Given,
  isObject,
  list,
  name,
  readJson,
  readSections,
  word,
} from '../../reading/index.js';
import { date } from '../record-schema.js';
import { WORKS, type Work } from '../works.js';

/** Work that was done on a part. */
export interface DoneWork {
  readonly work: Work;
  /** The undersize or oversize it was done to, as the shop calls it. */
  readonly step?: string;
  /** The places it was done on; by default all. */
  readonly places?: readonly string[];
}

/** A part that came back, with its fields as they are in the shed file. */
export interface CamePart {
  readonly name: string;
  readonly what?: string;
  readonly done?: readonly DoneWork[];
  readonly repaired?: readonly string[];
  /** What was measured, as it is written in the file. */
  readonly fields: Given;
}

/** One box of a build sheet, or one row of a CSV. */
export interface Box {
  readonly part: string;
  readonly feature: string;
  readonly station?: string;
  readonly angle?: string;
  readonly reading: string;
}

/** A part that is built into an engine, and how many of it. */
export interface BuiltPart {
  readonly name: string;
  readonly count?: number;
}

/** What came back from the shop or the bench, as its file says it. */
export interface WorkFile {
  readonly on?: string;
  readonly by?: string;
  /** The engine of the build sheet, which has the name of its block. */
  readonly engine?: string;
  /** The engine that the parts it takes are built into. */
  readonly builtInto?: string;
  readonly takes: readonly BuiltPart[];
  readonly parts: readonly CamePart[];
  readonly boxes: readonly Box[];
  readonly checks: readonly CheckedClearance[];
}

/** A clearance that was checked. */
export interface CheckedClearance {
  readonly what: string;
  readonly reading: string;
}

const words = z.string('must be text, in quotes').trim();
/** A reading, or an empty box. It stays text: the history of a part is what was written. */
const measured = words.superRefine((text, context) => {
  if (text === '') return;
  try {
    parseLength(text);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    context.addIssue({ code: 'custom', message: `${complaintOf(error)}. ${error.hint}` });
  }
});
/** A date, or an empty box. */
const day = words.superRefine((text, context) => {
  const read = text === '' ? undefined : date.safeParse(text);
  for (const { message } of read?.error?.issues ?? []) {
    context.addIssue({ code: 'custom', message });
  }
});
const done = fields({
  work: word(...WORKS),
  step: name.exactOptional(),
  places: list(name).exactOptional(),
});
const part = z.looseObject({
  name,
  what: words.exactOptional(),
  done: list(done).exactOptional(),
  repaired: list(name).exactOptional(),
});
const box = fields({
  part: name,
  feature: name,
  station: words.exactOptional(),
  angle: words.exactOptional(),
  at: words.exactOptional(),
  shouldBe: words.exactOptional(),
  mayBe: words.exactOptional(),
  reading: words,
});
const check = fields({ what: words, limits: words.exactOptional(), reading: measured });

const sections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  shed: words.optional(),
  engine: words.optional(),
  builtInto: words.optional(),
  takes: list(fields({ name, count: count('pieces', 1).exactOptional() }), 0).optional(),
  on: day.optional(),
  by: words.optional(),
  parts: list(part, 0).optional(),
  boxes: list(box, 0).optional(),
  checks: list(check, 0).optional(),
};

/** Reads a file of work done. What was measured stays as it is written: the shed file is read with it in its places. */
export function readWork(input: unknown): WorkFile {
  const json = typeof input === 'string' ? readJson(input, 'work') : { value: input, problems: [] };
  const { value, problems: repeated } = json;
  if (!isObject(value)) {
    const message = 'must be an object with version, and the parts or boxes';
    const problems = 'value' in json ? [{ path: 'work', message }] : repeated;
    throw new FileError(input, problems, 'work');
  }
  const { sound, problems } = readSections(value, sections);
  const all: readonly FileProblem[] = [...repeated, ...problems];
  if (all.length > 0) throw new FileError(input, all, 'work');
  const {
    on,
    by,
    engine,
    builtInto,
    takes = [],
    parts = [],
    boxes = [],
    checks = [],
  } = sound as {
    readonly on?: string;
    readonly by?: string;
    readonly engine?: string;
    readonly builtInto?: string;
    readonly takes?: readonly BuiltPart[];
    readonly parts?: readonly z.infer<typeof part>[];
    readonly boxes?: readonly Box[];
    readonly checks?: readonly CheckedClearance[];
  };
  return {
    ...(on && { on }),
    ...(by && { by }),
    ...(engine && { engine }),
    ...(builtInto && { builtInto }),
    takes,
    parts: parts.map(({ name: its, what, done: works, repaired, ...measured }) => ({
      name: its,
      ...(what && { what }),
      ...(works && { done: works }),
      ...(repaired && { repaired }),
      fields: measured,
    })) as readonly CamePart[],
    boxes,
    checks,
  };
}
