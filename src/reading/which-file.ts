import { RebuildInputError } from '../quantities/index.js';
import { type Given, isObject } from './given.js';

/** The kinds of file: one engine, all the parts there are, or what was done to some of them. */
export type FileKind = 'sheet' | 'shed' | 'work';

/** What a file is called in a message. */
export const IS_FILE: Readonly<Record<FileKind, string>> = {
  sheet: 'an inspection sheet',
  shed: 'a shed',
  work: 'a record of work',
};
const READ: Readonly<Record<FileKind, string>> = {
  sheet: 'read it with readSheet, or run crankwright report on it',
  shed: 'read it with readShed, or run crankwright plan on it',
  work: 'give it to afterMachining, or run crankwright done on the shed and it',
};
const USE: Readonly<Record<FileKind, string>> = {
  sheet: 'Give it to inspect.',
  shed: 'Give it to triage or planBuilds.',
  work: 'Give it to afterMachining.',
};

/** Sections that only a shed has, in case its name is misspelt. */
const OF_A_SHED = ['shed', 'blocks', 'crankshafts', 'pistonSets', 'toBuy'];

/** Sections that only a record of work has. */
const OF_WORK = ['parts', 'boxes', 'checks', 'takes'];

/** Which kind of file a value is, whatever else may be wrong with it; undefined if that is not plain. */
export function fileKind(value: unknown): FileKind | undefined {
  if (!isObject(value)) return undefined;
  const { engine, ...sections } = value;
  const isOfWork = OF_WORK.some((section) => Object.hasOwn(sections, section));
  if (isOfWork) return isObject(engine) ? undefined : 'work';
  const isOfShed = OF_A_SHED.some((section) => Object.hasOwn(sections, section));
  if (isObject(engine) && isOfShed) return 'shed';
  return typeof engine === 'string' && !isOfShed ? 'sheet' : undefined;
}

/** The message for a file of the other kind. */
export function otherFile(given: Given, wanted: FileKind): string | undefined {
  const kind = fileKind(given);
  return kind === undefined || kind === wanted
    ? undefined
    : `is ${IS_FILE[kind]}${wanted === 'work' ? ', not a record of work' : ''}: ${READ[kind]}`;
}

/** Refuses a sheet where a shed belongs, and a shed where a sheet does. */
export function guardKind(wanted: FileKind, value: unknown): void {
  const kind = fileKind(value);
  if (kind === undefined || kind === wanted) return;
  throw new RebuildInputError({
    parameter: wanted,
    value,
    shown: `this is ${IS_FILE[kind]};`,
    problem: `${IS_FILE[wanted]} belongs here`,
    expected: IS_FILE[wanted],
    hint: USE[kind],
  });
}
