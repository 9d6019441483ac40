import type { Wording } from '../../judging/index.js';
import { guardLayout, guardWording } from '../../judging/internal.js';
import {
  asText,
  columns,
  numberedNotes,
  type PageLine,
  type PageSection,
  section,
  whoSetTheLimits,
  wrap,
} from '../../pages/index.js';
import { howWell } from '../../reading/index.js';
import { triagedPartLayout, triageLayout } from '../layouts.js';
import { named, wordFor } from '../section-words.js';
import { SECTIONS, type Section } from '../sections.js';
import { cautionsFor } from './cautions.js';
import { asItIs, otherFindings, reasonsOf, saidBesides } from './describe-as-it-is.js';
import { notTakenApart, testedOnceApart } from './describe-core.js';
import { describeDoing, describeJob } from './describe-job.js';
import { isOnlyFaultFree, UNTESTED } from './describe-not-judged.js';
import { describeReason, obstacle } from './describe-reason.js';
import { condition, describeTest, isTestedFirst } from './describe-tests.js';
import { saysAgain } from './measure-again.js';
import { sayOwner } from './say-owner.js';
import { type TestedPart, testFirst } from './test-first.js';
import type { Disposition, Triage, TriagedPart } from './triage-types.js';
import { undecidedUntil } from './until.js';

/**
 * Describes in sentences what to do with a part: the disposition, then what was seen and judged,
 * then cautions. Of a part that is scrap for a visible fault, only its faults are told. With `why: false` what fits
 * as it is takes one sentence, and no step that was passed over is told.
 *
 * @param part - one of the parts that `triage` gave
 * @param wording - the units to print in, and whether to tell why
 * @returns sentences without full stops
 * @throws {RebuildInputError} when the part is not what `triage` gives, or the unit system is unknown
 * @example
 * ```ts
 * const part = {
 *   section: 'crankshafts', name: 'crankshaft C', count: 1, disposition: 'scrap', jobs: [], tests: [],
 *   findings: [], because: [{ kind: 'fault', fault: 'cracked', consequence: { kind: 'scrap' } }],
 *   notJudged: [],
 * } as const;
 * describePart(part, { units: 'inch' });
 * // ["crankshaft C: scrap: cracked", "seen: cracked; scrap it"]
 * ```
 */
export function describePart(part: TriagedPart, wording: Wording): readonly string[] {
  guardLayout('part', part, triagedPartLayout, 'triage');
  guardWording(wording);
  // What else was measured of a cracked part would only read as praise.
  if (part.disposition === 'scrap' && part.because.some(isCondemning)) {
    return [
      headline(part, wording),
      ...part.because
        .filter((reason) => 'consequence' in reason)
        .flatMap((reason) => describeReason(reason, part, wording)),
      ...sayOwner(part),
    ];
  }
  const isToldFirst = wording.why === false && IN_USE.includes(part.disposition);
  return [
    headline(part, wording),
    ...reasonsOf(part, wording),
    ...otherFindings(part, wording),
    ...part.tests
      .filter(({ when }) => !(isToldFirst && when === 'first'))
      .map((test) => describeTest(test, part, wording)),
    ...saidBesides(part, wording),
    ...cautionsFor(part.section, part.name, part.jobs, part.tests),
  ];
}

const isCondemning = (reason: TriagedPart['because'][number]): boolean =>
  'consequence' in reason && reason.consequence.kind === 'scrap';

function headline(part: TriagedPart, wording: Wording): string {
  const { name, kind, from, count, homeMade, disposition, jobs, tests, because } = part;
  const who = `${named(name, count)}${kind === undefined ? '' : ` (${kind})`}${from === undefined ? '' : `, from ${from}`}${homeMade ? ', home-made' : ''}`;
  const first = isTestedFirst(tests);
  const isFirm = !because.some(saysAgain);
  const once = first ? ', once it is crack-tested' : '';
  switch (disposition) {
    case 'use as it is':
      if (isOnlyFaultFree(part)) {
        return `${who}: ${first ? 'crack-test it first; ' : ''}${knownOf(part)}${asItIs(part, wording)}`;
      }
      return `${who}: use as it is${once}${isFirm ? '' : ', if it measures up again'}${asItIs(part, wording)}`;
    case 'machine':
      return `${who}: machine${once}${isFirm ? '' : ', if it measures so again'}: ${jobs.map((job) => describeJob(job, wording)).join('; ')}`;
    case 'use after': {
      const repairs = jobs.map((job) => describeDoing(job, wording));
      const all = first ? ['crack-testing it', ...repairs] : repairs;
      return `${who}: use after ${all.join('; then ')}${condition(tests)}${isFirm ? '' : ', if it measures so again'}`;
    }
    case 'undecided':
      return `${who}: undecided until ${undecidedUntil(part)}`;
    case 'not as it is':
    case 'spare':
    case 'scrap': {
      const why = because.flatMap((reason) => obstacle(reason, part) ?? []);
      return [`${who}: ${disposition}`, ...(why.length > 0 ? [why.join('; ')] : [])].join(': ');
    }
  }
}

/** All that is known of a part of which nothing was judged. */
const knownOf = ({ notJudged }: TriagedPart): string =>
  notJudged.some(({ why }) => why === 'not tested') ? UNTESTED : 'no fault is listed';

/**
 * Prints the triage of a shed as plain text for the bench: how many parts have each disposition,
 * then what to do with each part and why, and who set each limit.
 *
 * @param triage - what `triage` gave for a shed
 * @param wording - the units to print in, by default those of the shed, and whether to tell why steps were passed over
 * @returns lines of at most 96 characters; the last one ends with a line break
 * @throws {RebuildInputError} when the triage is not what `triage` gives, or the unit system is unknown
 * @example
 * ```ts
 * const text = triageReport({
 *   shed: 'the shed', units: 'inch', parts: [], cores: [],
 *   howRead: { within: [], undescribed: [], notAt20C: [], ovalHidden: [] },
 * });
 * text.includes('This shed has no parts.'); // true
 * ```
 */
export function triageReport(triage: Triage, wording: Wording = { units: triage?.units }): string {
  guardLayout('triage', triage, triageLayout, 'triage');
  guardWording(wording);
  return asText(triageSections(triage, wording));
}

/** The sections of the report on a shed, to be printed. */
export function triageSections(
  { shed, parts, cores, howRead }: Triage,
  wording: Wording,
): readonly PageSection[] {
  const { units } = wording;
  const notes = numberedNotes(wording);
  const sections = SECTIONS.flatMap((each) => {
    const its = parts.filter((part) => part.section === each);
    return its.length === 0 ? [] : [partsSection(each, its, notes.wording)];
  });
  return [
    section(`PARTS IN THE SHED: ${shed}`, [
      `Sizes are diameters in ${units === 'inch' ? 'inches' : 'millimetres'}.`,
      ...(parts.length === 0 ? ['This shed has no parts.'] : tally(parts)),
    ]),
    ...howWell(howRead, notes.wording),
    ...testFirst(
      [...testsOf(parts), ...testedOnceApart(cores)],
      'sort the shed again.',
      notes.wording,
    ),
    ...sections,
    ...notTakenApart(cores),
    ...whoSetTheLimits(notes),
    section('BEFORE YOU ACT', wrap(BEFORE_YOU_ACT, 0)),
  ];
}

const BEFORE_YOU_ACT =
  '"Use as it is" means that no fault is listed and no reading is outside its limits; what was not measured was not judged. A limit marked "common practice" is a rule of thumb; the maker\'s manual always wins. Work on one part may not pay, or may not suit the others: the plan of the shed decides that. Keep the scrap until the engine runs.';

const DISPOSITIONS: readonly Disposition[] = [
  'use as it is',
  'machine',
  'use after',
  'undecided',
  'not as it is',
  'spare',
  'scrap',
];

/** How many parts of every section have each disposition, and how many to use or to work on are to be measured again. */
function tally(parts: readonly TriagedPart[]): readonly PageLine[] {
  const sections = SECTIONS.filter((each) => parts.some((part) => part.section === each));
  const counts = (test: (part: TriagedPart) => boolean) => (each: Section) =>
    String(
      parts
        .filter((part) => part.section === each && test(part))
        .reduce((sum, { count }) => sum + count, 0),
    );
  const again = parts.some(isToMeasureAgain);
  const unjudged = parts.some(isOnlyFaultFree);
  const all: readonly (readonly [heading: string, test: (part: TriagedPart) => boolean])[] = [
    ...DISPOSITIONS.map(
      (each) =>
        [each, (part: TriagedPart) => part.disposition === each && !isOnlyFaultFree(part)] as const,
    ),
    ['nothing judged', isOnlyFaultFree],
    ['again', isToMeasureAgain],
  ];
  // A column in which nothing stands would only make the others narrow.
  const told = all.filter(([, test]) => parts.some(test));
  return [
    ...columns(
      ['', ...told.map(([heading]) => heading)],
      sections.map((each) => [wordFor(each, 2), ...told.map(([, test]) => counts(test)(each))]),
    ),
    ...(again ? wrap(AGAIN, 0) : []),
    ...(unjudged ? wrap(UNJUDGED, 0) : []),
  ];
}

const UNJUDGED =
  '"nothing judged" counts those that have no fault on the list, and of which nothing else is known: look them over before you count on them.';

const AGAIN =
  '"again" counts those to use, to machine or to repair that are to be measured again first.';

const isToMeasureAgain = ({ disposition, because }: TriagedPart): boolean =>
  IN_USE.includes(disposition) && because.some(saysAgain);

const IN_USE: readonly Disposition[] = ['use as it is', 'machine', 'use after'];

/** The tests of all parts but spares. */
const testsOf = (parts: readonly TriagedPart[]): readonly TestedPart[] =>
  parts
    .filter(({ disposition }) => disposition !== 'spare')
    .flatMap(({ section: of, name, tests }) => tests.map((test) => ({ section: of, name, test })));

function partsSection(each: Section, parts: readonly TriagedPart[], wording: Wording): PageSection {
  return section(
    wordFor(each, 2).toUpperCase(),
    parts.flatMap((part) => {
      const [first = '', ...others] = describePart(part, wording);
      return [...wrap(first, 4), ...others.flatMap((sentence) => wrap(`  ${sentence}`, 4))];
    }),
  );
}
