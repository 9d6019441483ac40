import { basename, dirname, join } from 'node:path';
import type { Io } from './io.js';
import type { Source } from './request.js';
import { WrongCommand } from './wrong-command.js';

/** The sections of a shed whose parts are measured most. */
const MEASURED = ['blocks', 'crankshafts', 'rods'];
/** The fields that hold what was measured of them. */
const READINGS = ['readings', 'housingBore'];

/** The least share of parts that must hold readings: one or two of many may stand in the file though a CSV has the rest. */
const LEAST_SHARE = 0.2;

/**
 * Refuses a shed of which next to nothing is measured where a CSV of the obvious name lies beside it; where none does,
 * says so in one line.
 */
export async function refuseForgotten(
  { file, readings }: Source,
  shed: unknown,
  io: Pick<Io, 'readFile' | 'complain'>,
): Promise<void> {
  if (readings !== undefined) return;
  if (!lacksMost(shed)) {
    if (lacksHalf(shed)) await hintAt(file, io);
    return;
  }
  for (const csv of file === undefined || file === '-' ? [] : besides(file)) {
    if (await isThere(csv, io)) {
      throw new WrongCommand(
        `${file} has next to no readings, but ${csv} is there: add --readings ${csv}`,
      );
    }
  }
  io.complain(
    `crankwright: ${file ?? 'the shed'} has next to no readings of its blocks, crankshafts and rods; if they are in a CSV, add --readings FILE\n`,
  );
}

/** Whether there are parts to measure, and next to none of them was. */
function lacksMost(shed: unknown): boolean {
  const parts = MEASURED.flatMap((section): readonly unknown[] => {
    const list = fieldOf(shed, section);
    return Array.isArray(list) ? list : [];
  });
  return parts.length > 0 && parts.filter(holdsReadings).length < LEAST_SHARE * parts.length;
}

/** The fields that list the places of a part. */
const PLACES = ['bores', 'mainHousings', 'mainJournals', 'rodJournals', 'rods'];

/** Whether more than half of the places of its parts have no reading. A part that lists no places counts as one. */
function lacksHalf(shed: unknown): boolean {
  const listIn = (value: unknown, field: string): readonly unknown[] => {
    const list = fieldOf(value, field);
    return Array.isArray(list) ? list : [];
  };
  const places = MEASURED.flatMap((section) => listIn(shed, section)).flatMap((part) => {
    const its = PLACES.flatMap((field) => listIn(part, field));
    return its.length > 0 ? its : [part];
  });
  return places.filter(holdsReadings).length < places.length / 2;
}

/** Says that a CSV named after the shed lies beside it, if one does. */
async function hintAt(file: string | undefined, io: Pick<Io, 'readFile' | 'complain'>) {
  // A CSV of any other name may belong to another shed.
  for (const csv of file === undefined || file === '-' ? [] : besides(file).slice(0, 2)) {
    if (await isThere(csv, io)) {
      return io.complain(
        `crankwright: most places in ${file} have no reading, but ${csv} is there; if it holds them, add --readings ${csv}\n`,
      );
    }
  }
}

/** Whether readings stand anywhere in it; no shed is nested as deep as a stack bears. */
function holdsReadings(value: unknown): boolean {
  if (Array.isArray(value)) return value.some(holdsReadings);
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(
    ([field, within]) => READINGS.includes(field) || holdsReadings(within),
  );
}

const fieldOf = (value: unknown, field: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, field)
    ? (value as Readonly<Record<string, unknown>>)[field]
    : undefined;

/** The names that a CSV of readings most likely has, beside the shed. */
function besides(file: string): readonly string[] {
  const name = basename(file).replace(/\.json$/i, '');
  const names = [`${name}-readings.csv`, `${name}.csv`, 'readings.csv'];
  return names.map((each) => (basename(file) === file ? each : join(dirname(file), each)));
}

async function isThere(path: string, io: Pick<Io, 'readFile'>): Promise<boolean> {
  try {
    await io.readFile(path);
    return true;
  } catch {
    return false;
  }
}
