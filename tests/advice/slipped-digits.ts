import { RebuildInputError } from 'crankwright';
import { FileError, readShed, type TriagedPart, triage } from 'crankwright/shed';
import { actionsFrom, type Inspection, inspect, readSheet } from 'crankwright/sheet';
import { expect } from 'vitest';
import { plainShed } from '../shed/sheds.js';
import { changed, exampleText, type Json } from '../sheet/sheets.js';

/** One digit of one reading written down wrong. */
export interface Slip {
  /** Where the reading stands. */
  readonly path: string;
  /** What was read, and what was written down. */
  readonly from: string;
  readonly to: string;
}

/** Every way to write one digit of a reading down wrong. */
function slipsOf(path: string, from: string): readonly Slip[] {
  return [...from].flatMap((was, i) =>
    /\d/.test(was)
      ? [...'0123456789']
          .filter((digit) => digit !== was)
          .map((digit) => ({ path, from, to: `${from.slice(0, i)}${digit}${from.slice(i + 1)}` }))
      : [],
  );
}

/** The paths of all readings of diameters within. */
function diametersIn(json: Json, at = ''): readonly (readonly [path: string, text: string])[] {
  if (json === null || typeof json !== 'object') return [];
  return Object.entries(json).flatMap(([key, value]) => {
    const path = Array.isArray(json) ? `${at}[${key}]` : at === '' ? key : `${at}.${key}`;
    if (typeof value !== 'string') return diametersIn(value, path);
    return key === 'diameter' && path.includes('readings') ? [[path, value] as const] : [];
  });
}

/** What a call gives, or nothing if it refuses a reading by name. */
function unlessRefused<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    expect(error instanceof FileError || error instanceof RebuildInputError).toBe(true);
    return undefined;
  }
}

/** The sheet of the pump set without its oil, which has nothing to do with sizes. */
const sheet = (changes: Readonly<Record<string, Json | undefined>> = {}): Json =>
  changed(JSON.parse(exampleText('inch')), { oil: undefined, ...changes });

export const slipsOfSheet = (): readonly Slip[] =>
  diametersIn(sheet()).flatMap(([path, text]) => slipsOf(path, text));
export const slipsOfShed = (): readonly Slip[] =>
  diametersIn(plainShed()).flatMap(([path, text]) => slipsOf(path, text));

/** What no one may do to a part with a reading that does not fit. */
const ON_JOURNALS = ['grind', 'no step serves', 'buy shells', 'fit shells'];
const ON_BORES = ['bore', 'rebore', 'wrong piston', 'ring'];

/** Checks what the sheet says to a slip. Gives whether it was refused, named or taken as it is. */
export function checkOnSheet({ path, to }: Slip): 'refused' | 'read again' | 'silent' {
  const inspection = unlessRefused(() => inspect(readSheet(sheet({ [path]: to }))));
  if (inspection === undefined) return 'refused';
  const actions = actionsFrom(inspection);
  const kinds = actions.map(({ kind }): string => kind);
  const isBore = path.startsWith('cylinders');
  if (kinds.includes('read again')) {
    const ruledOut = isBore ? ON_BORES : ON_JOURNALS;
    expect(kinds.filter((kind) => ruledOut.includes(kind))).toEqual([]);
    return 'read again';
  }
  expect(kinds).not.toContain('no step serves');
  expect(actions.filter((each) => each.kind === 'rebore' && !each.inDoubt)).toEqual([]);
  expectLittleMore(inspection);
  return 'silent';
}

/** Steps are ten thousandths of an inch apart: a small slip costs one more at most, and no sleeve. */
function expectLittleMore({ rods, mains, boring }: Inspection): void {
  const right = inspect(readSheet(sheet()));
  for (const [plan, sound] of [
    [rods?.plan, right.rods?.plan],
    [mains?.plan, right.mains?.plan],
  ] as const) {
    if (plan?.outcome === 'none' || sound?.outcome === 'none') expect.unreachable();
    expect((plan?.undersize ?? 0) - (sound?.undersize ?? 0)).toBeLessThan(0.000255);
  }
  if (boring?.outcome === 'none' || right.boring?.outcome === 'none') expect.unreachable();
  expect(boring?.outcome).not.toBe('sleeve');
  expect((boring?.oversize ?? 0) - (right.boring?.oversize ?? 0)).toBeLessThan(0.000255);
}

const triaged = (changes: Readonly<Record<string, Json>>): readonly TriagedPart[] =>
  triage(readShed(changed(plainShed(), changes))).parts;

/** Checks what the triage says to a slip. */
export function checkInShed({ path, to }: Slip): 'refused' | 'read again' | 'silent' {
  const parts = unlessRefused(() => triaged({ [path]: to }));
  if (parts === undefined) return 'refused';
  const right = triaged({});
  const scrapped = parts.filter(
    ({ disposition }, i) => disposition === 'scrap' && right[i]?.disposition !== 'scrap',
  );
  expect(scrapped.map(({ name }) => name)).toEqual([]);
  const [section, i] = path.split(/[[\].]+/);
  const part = parts.filter((each) => each.section === section)[Number(i)];
  if (!part?.because.some(({ kind }) => kind === 'read again')) {
    expect(part?.jobs.map(({ work }) => work)).not.toContain('sleeve');
    return 'silent';
  }
  expect(part.disposition).toBe('undecided');
  // Its mates are no spares: it may be as good as the others say.
  expect(parts.filter(({ disposition }) => disposition === 'spare')).toEqual(
    right.filter(({ disposition }) => disposition === 'spare'),
  );
  return 'read again';
}
