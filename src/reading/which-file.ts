import { RebuildInputError } from '../quantities/index.js';
import { type Given, isObject } from './given.js';

/** The kinds of file: one engine, or all the parts there are. */
export type FileKind = 'sheet' | 'shed';

const IS: Readonly<Record<FileKind, string>> = {
  sheet: 'an inspection sheet',
  shed: 'a shed',
};
const READ: Readonly<Record<FileKind, string>> = {
  sheet: 'read it with readSheet, or run crankwright report on it',
  shed: 'read it with readShed, or run crankwright plan on it',
};
const USE: Readonly<Record<FileKind, string>> = {
  sheet: 'Give it to inspect.',
  shed: 'Give it to triage or planBuilds.',
};

/** Sections that only a shed has, in case its name is misspelt. */
const OF_A_SHED = ['shed', 'blocks', 'crankshafts', 'pistonSets', 'toBuy'];

/** Which kind of file an object is, whatever else may be wrong with it; undefined if that is not plain. */
function kindOf({ engine, ...sections }: Given): FileKind | undefined {
  const isOfShed = OF_A_SHED.some((section) => Object.hasOwn(sections, section));
  if (isObject(engine) && isOfShed) return 'shed';
  return typeof engine === 'string' && !isOfShed ? 'sheet' : undefined;
}

/** The message for a file of the other kind. */
export function otherFile(given: Given, wanted: FileKind): string | undefined {
  const kind = kindOf(given);
  return kind === undefined || kind === wanted ? undefined : `is ${IS[kind]}: ${READ[kind]}`;
}

/** Refuses a sheet where a shed belongs, and a shed where a sheet does. */
export function guardKind(wanted: FileKind, value: unknown): void {
  const kind = isObject(value) ? kindOf(value) : undefined;
  if (kind === undefined || kind === wanted) return;
  throw new RebuildInputError({
    parameter: wanted,
    value,
    shown: `this is ${IS[kind]};`,
    problem: `${IS[wanted]} belongs here`,
    expected: IS[wanted],
    hint: USE[kind],
  });
}
