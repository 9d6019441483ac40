import { basename, dirname, join } from 'node:path';
import type { Io } from './io.js';
import type { Source } from './request.js';
import { WrongCommand } from './wrong-command.js';

/** The sections of a shed whose parts are measured most. */
const MEASURED = ['blocks', 'crankshafts', 'rods'];
/** The fields that hold what was measured of them. */
const READINGS = ['readings', 'housingBore'];

/**
 * Refuses a shed without any readings where a CSV of the obvious name lies beside it; where none does, says in one line
 * that there are none.
 */
export async function refuseForgotten(
  { file, readings }: Source,
  shed: unknown,
  io: Pick<Io, 'readFile' | 'complain'>,
): Promise<void> {
  if (readings !== undefined || !lacksAll(shed)) return;
  for (const csv of file === undefined || file === '-' ? [] : besides(file)) {
    if (await isThere(csv, io)) {
      throw new WrongCommand(`${file} has no readings, but ${csv} is there: add --readings ${csv}`);
    }
  }
  io.complain(
    `crankwright: ${file ?? 'the shed'} has no readings of any block, crankshaft or rod; if they are in a CSV, add --readings FILE\n`,
  );
}

/** Whether there are parts to measure, and nothing was measured of any. */
function lacksAll(shed: unknown): boolean {
  const parts = MEASURED.map((section) => fieldOf(shed, section)).filter(
    (list) => Array.isArray(list) && list.length > 0,
  );
  return parts.length > 0 && !parts.some(holdsReadings);
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
