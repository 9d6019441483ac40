import Papa from 'papaparse';
import type { UnitSystem } from '../quantities/index.js';
import { givenIn, isObject, UNIT_OF } from '../reading/index.js';
import { rawParts } from './checks/names.js';
import { featuresOf } from './features.js';
import { isHalfRead } from './half-read.js';
import { readShed } from './read-shed.js';

/** Angles that show an oval wherever it lies: two would not. */
const ANGLES = [0, 60, 120];
/** How many rows to fill along a bore, and along a journal. */
const [ALONG_BORE, ALONG_JOURNAL] = [3, 2];

/**
 * Writes a CSV with a row to fill for everything that can be measured on the parts of a shed and was not, or was read at
 * one station or one angle only: bores and journals with a column for each angle, the rest under `reading`. The units stand in the headings. A row that is left
 * empty counts as not read.
 *
 * @param file - the shed file: JSON text, or the parsed value
 * @returns CSV text, with an empty cell for each reading; of a bore and a journal also for its station
 * @throws {FileError} (a RebuildInputError) when `readShed` does not read the file
 * @example
 * ```ts
 * const file = newShed({
 *   name: 'pump set', units: 'inch', cylinders: 1, mains: 0,
 *   rodJournal: '1.6245 in to 1.6250 in', bore: '3.0000 in to 3.0005 in',
 * });
 * readingsToFill(file).split('\n')[0]; // "part,feature,station [in],0 deg [in],60 deg [in],120 deg [in],reading [in]"
 * ```
 */
export function readingsToFill(file: unknown): string {
  const { units } = readShed(file);
  const { given } = givenIn(file, 'shed', 'version, shed, units, engine and the parts');
  const rows = rawParts(given)
    .filter(({ path }) => !path.startsWith('toBuy.'))
    .flatMap((part) =>
      [...featuresOf(part, isObject(given['engine']) ? given['engine'] : {}).byName].flatMap(
        ([feature, { holder, field, holds, path }]) => {
          const isOpen =
            holder[field] === undefined || (holds === 'readings' && isHalfRead(holder[field]));
          if (!isOpen) return [];
          const along = path.includes('.bores[') ? ALONG_BORE : ALONG_JOURNAL;
          const row = [
            part.part['name'],
            feature,
            ...headingsOf(units)
              .slice(2)
              .map(() => ''),
          ];
          return Array.from({ length: holds === 'readings' ? along : 1 }, () => row);
        },
      ),
    );
  return `${Papa.unparse([headingsOf(units), ...rows], { newline: '\n' })}\n`;
}

const headingsOf = (units: UnitSystem): readonly string[] => {
  const unit = `[${UNIT_OF[units]}]`;
  const angles = ANGLES.map((angle) => `${angle} deg ${unit}`);
  return ['part', 'feature', `station ${unit}`, ...angles, `reading ${unit}`];
};
