import { describe, type Wording } from '../../judging/index.js';
import { guardLayout, guardWording } from '../../judging/internal.js';
import { columns, numberedNotes, section, whoSetTheLimits, wrap } from '../../pages/index.js';
import type { UnitSystem } from '../../quantities/index.js';
import { triagedPartLayout, triageLayout } from '../layouts.js';
import { named, wordFor } from '../section-words.js';
import { SECTIONS, type Section } from '../sections.js';
import { cautionsFor } from './cautions.js';
import { describeDoing, describeJob } from './describe-job.js';
import { describeReason, obstacle } from './describe-reason.js';
import type { Disposition, Triage, TriagedPart } from './triage-types.js';

/**
 * Says what is to become of a part in sentences: the disposition first, then
 * what was seen and judged, and what is to be heeded.
 *
 * @param part - one of the parts that `triage` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when the part is not what `triage` gives, or the unit system is unknown
 * @example
 * ```ts
 * const part = {
 *   section: 'blocks', name: 'block C', count: 1, disposition: 'scrap', jobs: [], findings: [],
 *   because: [{ kind: 'fault', fault: 'cracked', consequence: { kind: 'scrap' } }],
 * } as const;
 * describePart(part, { units: 'inch' });
 * // ["block C: scrap: cracked", "seen: cracked; it is past use"]
 * ```
 */
export function describePart(part: TriagedPart, wording: Wording): readonly string[] {
  guardLayout('part', part, triagedPartLayout, 'triage');
  guardWording(wording);
  return [
    headline(part, wording),
    ...part.because.flatMap((reason) => describeReason(reason, part, wording)),
    ...otherFindings(part, wording),
    ...cautionsFor(part.section, part.name, part.jobs),
  ];
}

function headline(part: TriagedPart, wording: Wording): string {
  const { name, from, count, disposition, jobs, because } = part;
  const who = `${named(name, count)}${from === undefined ? '' : `, from ${from}`}`;
  switch (disposition) {
    case 'use as it is':
      return `${who}: use as it is`;
    case 'machine':
      return `${who}: machine: ${jobs.map((job) => describeJob(job, wording)).join('; ')}`;
    case 'use after':
      return `${who}: use after ${jobs.map((job) => describeDoing(job, wording)).join('; then ')}`;
    case 'spare':
    case 'scrap': {
      const why = because.flatMap((reason) => obstacle(reason, part) ?? []);
      return [`${who}: ${disposition}`, ...(why.length > 0 ? [why.join('; ')] : [])].join(': ');
    }
  }
}

/** What was judged and no reason says. A grind plan says it of the journals, each by its name. */
function otherFindings(part: TriagedPart, wording: Wording): readonly string[] {
  if (part.section === 'crankshafts') return [];
  const told = part.because.flatMap((reason) => ('finding' in reason ? [reason.finding] : []));
  const sentences = part.findings
    .filter((finding) => !told.some((other) => JSON.stringify(other) === JSON.stringify(finding)))
    .map((finding) => describe(finding, wording));
  return [...new Set(sentences)];
}

/**
 * The triage of a shed as plain text for the bench: how many parts are good for
 * what, then part by part what is to become of it and why, with who set each limit.
 *
 * @param triage - what `triage` gave for a shed
 * @param wording - the units to print in; by default those of the shed
 * @returns lines of at most 96 characters, the last one ended
 * @throws {RebuildInputError} when the triage is not what `triage` gives, or the unit system is unknown
 * @example
 * ```ts
 * const text = triageReport({ shed: 'the shed', units: 'inch', parts: [] });
 * text.includes('There are no parts in this shed.'); // true
 * ```
 */
export function triageReport(triage: Triage, wording: Wording = { units: triage?.units }): string {
  guardLayout('triage', triage, triageLayout, 'triage');
  guardWording(wording);
  return page(triage, wording.units);
}

function page({ shed, parts }: Triage, units: UnitSystem): string {
  const notes = numberedNotes(units);
  const sections = SECTIONS.flatMap((each) => {
    const its = parts.filter((part) => part.section === each);
    return its.length === 0 ? [] : [partsSection(each, its, notes.wording)];
  });
  const texts = [
    section(`WHAT LIES IN THE SHED: ${shed}`, [
      `Sizes are diameters in ${units === 'inch' ? 'inches' : 'millimetres'}.`,
      ...(parts.length === 0 ? ['There are no parts in this shed.'] : tally(parts)),
    ]),
    ...sections,
    ...whoSetTheLimits(notes),
    section('BEFORE YOU ACT', wrap(BEFORE_YOU_ACT, 0)),
  ];
  return `${texts.join('\n\n')}\n`;
}

const BEFORE_YOU_ACT =
  'A limit marked "common practice" is a rule of thumb; the maker\'s manual always wins. What can be done to one part may not pay, or may not go with the others: the plan of the shed decides that. Have parts crack-tested before they are machined, and keep what is scrap until the engine runs.';

const DISPOSITIONS: readonly Disposition[] = [
  'use as it is',
  'machine',
  'use after',
  'spare',
  'scrap',
];

/** How many parts of every section are good for what. */
function tally(parts: readonly TriagedPart[]): readonly string[] {
  const sections = SECTIONS.filter((each) => parts.some((part) => part.section === each));
  return columns(
    ['', ...DISPOSITIONS],
    sections.map((each) => [
      wordFor(each, 2),
      ...DISPOSITIONS.map((disposition) =>
        String(
          parts
            .filter((part) => part.section === each && part.disposition === disposition)
            .reduce((sum, { count }) => sum + count, 0),
        ),
      ),
    ]),
  );
}

function partsSection(each: Section, parts: readonly TriagedPart[], wording: Wording): string {
  return section(
    wordFor(each, 2).toUpperCase(),
    parts.flatMap((part) => {
      const [first = '', ...others] = describePart(part, wording);
      return [...wrap(first, 4), ...others.flatMap((sentence) => wrap(`  ${sentence}`, 4))];
    }),
  );
}
