import type { z } from 'zod';
import {
  FileError,
  type FileProblem,
  type Given,
  isObject,
  otherFile,
  readJson,
  readSections,
  withoutOwnFields,
} from '../../reading/index.js';
import type { DoneWork } from '../works.js';
import { type partOfWork, workSections } from './work-sections.js';

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
  /** What a box of a build sheet says that it may measure. */
  readonly mayBe?: string;
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

/** Reads a file of work done. What was measured stays as it is written: the shed file is read with it in its places. */
export function readWork(input: unknown): WorkFile {
  const json = typeof input === 'string' ? readJson(input, 'work') : { value: input, problems: [] };
  const { value, problems: repeated } = json;
  if (!isObject(value)) {
    const message = 'must be an object with version, and the parts or boxes';
    const problems = 'value' in json ? [{ path: 'work', message }] : repeated;
    throw new FileError(input, problems, 'work');
  }
  const other = otherFile(value, 'work');
  if (other !== undefined) throw new FileError(input, [{ path: 'work', message: other }], 'work');
  const { $schema = '', ...given } = withoutOthers(value);
  const { sound, problems } = readSections(given, workSections);
  const all: readonly FileProblem[] = [
    ...repeated,
    ...(typeof $schema === 'string' ? [] : [NO_TEXT]),
    ...problems,
  ];
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
    readonly parts?: readonly z.infer<typeof partOfWork>[];
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

const NO_TEXT: FileProblem = { path: '$schema', message: 'must be text, in quotes' };

/** The record without the fields of its owner. Those of a part come into the shed with it. */
function withoutOthers(value: Given): Given {
  const { parts } = value;
  return { ...(withoutOwnFields(value) as Given), ...(parts !== undefined && { parts }) };
}
