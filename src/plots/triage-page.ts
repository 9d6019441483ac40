import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording } from '../judging/internal.js';
import { asHtml } from '../pages/index.js';
import type { Triage } from '../shed/index.js';
import { triageSections } from '../shed/internal.js';
import { triageLayout } from '../shed/layouts.js';

/**
 * Prints the triage of a shed as a web page, with real headings, tables and lists. The page is one file without script, and
 * can be printed. It has no pictures: a triage carries verdicts, and no readings to draw round a journal or down a bore; and
 * of single parts there is no clearance yet to draw against its limits. The page of a plan shows both parts and clearances.
 *
 * @param triage - what `triage` gave for a shed
 * @param wording - the units to print in, by default those of the shed, and whether to tell why steps were passed over
 * @returns HTML
 * @throws {RebuildInputError} when the triage is not what `triage` gives, or the unit system is unknown
 * @example
 * ```ts
 * const page = triagePage({
 *   shed: 'the shed', units: 'inch', parts: [], cores: [],
 *   howRead: { within: [], undescribed: [], notAt20C: [], ovalHidden: [] },
 * });
 * page.includes('This shed has no parts.'); // true
 * ```
 */
export function triagePage(triage: Triage, wording: Wording = { units: triage?.units }): string {
  guardLayout('triage', triage, triageLayout, 'triage');
  guardWording(wording);
  return asHtml(triageSections(triage, wording));
}
