import type { Basis } from '../judging/basis.js';
import {
  guardDiameter,
  guardFields,
  guardFlaw,
  guardList,
  guardObject,
  guardStock,
  guardText,
  guardTolerance,
  guardUndersize,
  guardWord,
  showLength,
} from '../judging/guards.js';
import type { Finding } from '../judging/judge.js';
import { guardSpan, type Span } from '../judging/limits.js';
import { type BasedLimits, OWN_LIMITS } from '../judging/own-limits.js';
import { journalShapeLimits, judgeJournalShape } from '../measuring/shape-rule.js';
import type { Length } from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';
import { thou } from '../quantities/units.js';
import type {
  GrindPlan,
  GrindReason,
  GrindRequest,
  JournalToGrind,
  JournalWork,
} from './grind-types.js';

const SIZE_RULE: Basis = {
  kind: 'common practice',
  rule: 'a journal within 0.0005 in (0.013 mm) of its size is used if the clearance allows',
};
const ALLOWANCE_RULE: Basis = {
  kind: 'common practice',
  rule: '0.001 in (0.025 mm) is left for the wheel to clean up',
};

/**
 * The smallest common undersize at which every journal of one kind is good as
 * it is or cleans up when ground. Rods and mains of one crankshaft are planned
 * apart and may take different steps; journals of one kind share one.
 *
 * @param request - journals, the standard size, the steps, the shells at hand, the maker's minimum
 * @returns the step, target span, work and stock per journal with reasons, or which journal defeats it
 * @throws {RebuildInputError} when a size cannot belong to a journal, a list is empty, or a journal
 * is larger than standard by more than 0.1 mm
 * @see Source: geometry; steps are common practice; worked checks in tests/published/crankshaft.test.ts
 * @example
 * ```ts
 * const plan = grindPlan({
 *   journals: [{
 *     name: 'rod 1', smallest: inch(2.1189), largest: inch(2.1202),
 *     outOfRound: inch(0.0013), taper: inch(0.0004),
 *   }],
 *   standard: { min: inch(2.1245), max: inch(2.1250) },
 *   steps: undersizeSteps('inch'),
 * });
 * plan.outcome; // "grind"
 * plan.outcome !== 'none' && format(plan.undersize, thou); // "10.0 thou"
 * ```
 */
export function grindPlan(request: GrindRequest): GrindPlan {
  const job = guardRequest(request);
  const because: GrindReason[] = [];
  let defeated: readonly string[] = [];
  for (const undersize of job.steps) {
    const { journals, because: reasons } = tryStep(job, undersize);
    because.push(...reasons);
    if (journals) {
      return {
        outcome: journals.some(({ work }) => work === 'grind') ? 'grind' : 'use as it is',
        undersize,
        target: targetAt(job.standard, undersize),
        journals,
        because,
      };
    }
    defeated = reasons.flatMap((why) => (why.kind === 'does not clean up' ? [why.journal] : []));
  }
  return { outcome: 'none', defeatedBy: defeated, because };
}

type Job = ReturnType<typeof guardRequest>;

/** A step tried on every journal. */
interface Attempt {
  /** What is done to each, if the step serves. */
  readonly journals?: readonly JournalWork[];
  /** What stands in its way, or how each journal stands at it. */
  readonly because: readonly GrindReason[];
}

function tryStep(job: Job, undersize: Length): Attempt {
  const target = targetAt(job.standard, undersize);
  const tried = job.journals.map((journal) => tryJournal(journal, job, undersize, target));
  const smallest = Math.min(...tried.map((each) => each.smallest ?? Infinity));
  const { minimum } = job;
  const obstacles: GrindReason[] = [
    ...(lacksShells(job, undersize) ? [{ kind: 'no shells at hand' as const, undersize }] : []),
    ...tried.filter(({ work }) => work === undefined).flatMap(({ because }) => because),
    ...(minimum !== undefined && smallest < minimum - NANOMETRE
      ? [{ kind: 'below the minimum' as const, undersize, target, minimum }]
      : []),
  ];
  if (obstacles.length > 0) return { because: obstacles };
  const journals = tried.flatMap(({ work }) => work ?? []);
  const allowance: GrindReason = { kind: 'allowance', ...job.allowance };
  const grinds = journals.some(({ work }) => work === 'grind');
  const because = [...tried.flatMap((each) => each.because), ...(grinds ? [allowance] : [])];
  return { journals, because };
}

/** One journal at one step: good as it is, to be ground, or past saving there. */
function tryJournal(
  journal: JournalToGrind,
  job: Job,
  undersize: Length,
  target: Span<Length>,
): { work?: JournalWork; smallest?: Length; because: readonly GrindReason[] } {
  const { name, largest } = journal;
  const flaw = flawOf(journal, job.shape);
  const outside = outsideOf(journal, target);
  if (flaw === undefined && Math.abs(outside) <= job.sizeAllowance.most + NANOMETRE) {
    const exact = Math.abs(outside) <= NANOMETRE;
    const allowed = exact ? {} : { outside, basis: job.sizeAllowance.basis };
    return {
      work: { name, work: 'use as it is' },
      smallest: journal.smallest,
      because: [{ kind: 'good as it is', journal: name, undersize, ...allowed }],
    };
  }
  const available = availableIn(journal, job);
  if (available < target.max - NANOMETRE) {
    return {
      because: [{ kind: 'does not clean up', undersize, journal: name, available, target }],
    };
  }
  const stockRemoved = { min: largest - target.max, max: largest - target.min } as Span<Length>;
  return {
    work: { name, work: 'grind', stockRemoved },
    smallest: target.min,
    because: [
      ...(flaw ? [{ kind: 'shape' as const, journal: name, finding: flaw }] : []),
      { kind: 'cleans up', journal: name, undersize, available },
    ],
  };
}

const NANOMETRE = 1e-9;

function lacksShells({ shellsAtHand }: Job, undersize: Length): boolean {
  return shellsAtHand !== undefined && !shellsAtHand.some((shell) => sameSize(shell, undersize));
}

/** The largest round journal about the axis it will be ground on that the worn one still contains. */
function availableIn(journal: JournalToGrind, job: Job): Length {
  const oneSided = job.wear === 'one side' ? journal.outOfRound : 0;
  const eccentric = journal.runout ?? 0;
  return (journal.smallest - oneSided - eccentric - job.allowance.cleanUpAllowance) as Length;
}

/** How far a journal lies outside the target at its worse end: below it negative, within it zero. */
function outsideOf({ smallest, largest }: JournalToGrind, target: Span<Length>): Length {
  const above = Math.max(0, largest - target.max);
  const below = Math.max(0, target.min - smallest);
  return (above > below ? above : 0 - below) as Length;
}

/** The worse of out-of-round and taper, if either is past its limit. */
function flawOf(
  journal: JournalToGrind,
  allowed: BasedLimits<'length'>,
): Finding<'length'> | undefined {
  return judgeJournalShape(journal, allowed)
    .filter(({ verdict }) => verdict !== 'within')
    .sort((a, b) => a.margin - b.margin)[0];
}

function targetAt(standard: Span<Length>, undersize: Length): Span<Length> {
  return { min: standard.min - undersize, max: standard.max - undersize } as Span<Length>;
}

const sameSize = (a: Length, b: Length) => Math.abs(a - b) <= NANOMETRE;

const FIELDS: readonly (keyof GrindRequest)[] = [
  'journals',
  'standard',
  'steps',
  'shellsAtHand',
  'minimum',
  'cleanUpAllowance',
  'sizeAllowance',
  'wear',
  'shape',
];

function guardRequest(request: GrindRequest) {
  guardFields('request', request, FIELDS);
  guardFields('shape', request.shape ?? {}, OWN_LIMITS);
  const standard = guardSpan('standard', request.standard, guardDiameter);
  guardList('journals', request.journals, 1, 'journal');
  guardList('steps', request.steps, 1, 'undersize');
  const { cleanUpAllowance: allowance, sizeAllowance: size } = request;
  return {
    standard,
    journals: request.journals.map((journal, i) =>
      guardJournal(`journals[${i}]`, journal, standard),
    ),
    steps: request.steps
      .map((step, i) => guardUndersize(`steps[${i}]`, step))
      .sort((a, b) => a - b),
    shellsAtHand: guardShells(request.shellsAtHand),
    minimum: request.minimum === undefined ? undefined : guardDiameter('minimum', request.minimum),
    allowance: {
      cleanUpAllowance: guardStock('cleanUpAllowance', allowance ?? thou(1)),
      basis: allowance === undefined ? ALLOWANCE_RULE : ({ kind: 'specified' } as const),
    },
    sizeAllowance: {
      most: guardTolerance('sizeAllowance', size ?? thou(0.5)),
      basis: size === undefined ? SIZE_RULE : ({ kind: 'specified' } as const),
    },
    wear: guardWord('wear', request.wear ?? 'one side', ['one side', 'all round']),
    shape: journalShapeLimits('shape', request.shape ?? {}),
  };
}

function guardShells(shells: readonly Length[] | undefined): readonly Length[] | undefined {
  if (shells === undefined) return undefined;
  guardList('shellsAtHand', shells, 0, 'undersizes');
  return shells.map((shell, i) => guardUndersize(`shellsAtHand[${i}]`, shell));
}

function guardJournal(at: string, journal: JournalToGrind, standard: Span<Length>): JournalToGrind {
  guardObject(at, journal);
  guardText(`${at}.name`, journal.name);
  guardDiameter(`${at}.smallest`, journal.smallest);
  guardDiameter(`${at}.largest`, journal.largest);
  guardFlaw(`${at}.outOfRound`, journal.outOfRound);
  guardFlaw(`${at}.taper`, journal.taper);
  if (journal.runout !== undefined) guardFlaw(`${at}.runout`, journal.runout);
  guardSpan(at, { min: journal.smallest, max: journal.largest }, guardDiameter);
  const range = journal.largest - journal.smallest;
  for (const flaw of ['outOfRound', 'taper'] as const) {
    if (journal[flaw] <= range + NANOMETRE) continue;
    throw new RebuildInputError({
      parameter: `${at}.${flaw}`,
      value: journal[flaw],
      shown: showLength(journal[flaw]),
      expected: `at most largest less smallest, ${showLength(range)}`,
      hint: 'Take all four from one journalShape.',
    });
  }
  if (journal.largest - standard.max <= 1e-4) return journal;
  throw new RebuildInputError({
    parameter: `${at}.largest`,
    value: journal.largest,
    shown: `${journal.name}, ${showLength(journal.largest)} at its largest,`,
    expected: `at most 0.1 mm above the standard ${showLength(standard.max)}`,
    hint: 'Journals only wear smaller: check the standard size, the units and which journal this is.',
  });
}
