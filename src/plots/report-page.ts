import type { Wording } from '../judging/index.js';
import { guardWording } from '../judging/internal.js';
import { asHtml } from '../pages/index.js';
import { inspect, type Sheet } from '../sheet/index.js';
import { reportSections } from '../sheet/internal.js';
import { sheetPictures } from './sheet-pictures.js';

/**
 * Prints the report on an inspection sheet as a web page with its pictures. The page is one file: it has no script, loads
 * nothing, can be printed, and is dark where the reader's pages are.
 *
 * @param sheet - the engine's sheet, as `readSheet` gives it
 * @param wording - the units to print in, by default those of the sheet, and whether to tell why steps were passed over
 * @returns HTML
 * @throws {RebuildInputError} when the sheet is not what `readSheet` gives, readings contradict each other, or the unit
 * system is unknown
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '7 thou' }] } },
 * });
 * reportPage(sheet).includes('<h2>End play</h2>'); // true
 * ```
 */
export function reportPage(sheet: Sheet, wording: Wording = { units: sheet?.units }): string {
  const inspection = inspect(sheet);
  guardWording(wording);
  return asHtml(
    reportSections(inspection, wording),
    sheetPictures(sheet, inspection, wording.units),
  );
}
