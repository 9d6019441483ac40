import type { Basis } from '../judging/basis.js';
import {
  guardDiameter,
  guardList,
  guardObject,
  guardSmall,
  guardText,
  guardWord,
} from '../judging/guards.js';
import { type Finding, judge } from '../judging/judge.js';
import { guardSpan, type Span } from '../judging/limits.js';
import { type BasedLimits, ownLimitsOr } from '../judging/own-limits.js';
import { journalShapeRule } from '../measuring/shape-rule.js';
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

const WEAR_RULE: Basis = {
  kind: 'common practice',
  rule: 'a journal worn up to 0.0005 in below its new size is used if the clearance allows',
};
const ALLOWANCE_RULE: Basis = {
  kind: 'common practice',
  rule: '0.001 in is left for the wheel to clean up',
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
  const defeated = new Set<string>();
  for (const undersize of job.steps) {
    const attempt = tryStep(job, undersize);
    if (attempt.serves) {
      return {
        outcome: attempt.journals.some(({ work }) => work === 'grind') ? 'grind' : 'use as it is',
        undersize,
        target: targetAt(job.standard, undersize),
        journals: attempt.journals,
        because: [...because, ...attempt.because],
      };
    }
    because.push(...attempt.because);
    defeated.clear();
    for (const reason of attempt.because) {
      if (reason.kind === 'does not clean up') defeated.add(reason.journal);
    }
  }
  return { outcome: 'none', defeatedBy: [...defeated], because };
}

type Job = ReturnType<typeof guardRequest>;

interface Attempt {
  readonly serves: boolean;
  readonly journals: readonly JournalWork[];
  readonly because: readonly GrindReason[];
}

function tryStep(job: Job, undersize: Length): Attempt {
  const target = targetAt(job.standard, undersize);
  const because: GrindReason[] = [];
  const journals: JournalWork[] = [];
  let serves = true;
  let grinds = false;
  if (job.shellsAtHand && !job.shellsAtHand.some((shell) => sameSize(shell, undersize))) {
    because.push({ kind: 'no shells at hand', undersize });
    serves = false;
  }
  for (const journal of job.journals) {
    const { name, largest } = journal;
    const flaw = flawOf(journal, job.shape);
    const worn = wornBelow(journal, target);
    if (flaw === undefined && worn !== undefined && worn <= job.wearAllowance.most + NANOMETRE) {
      const allowed = worn > NANOMETRE ? { worn, basis: job.wearAllowance.basis } : {};
      because.push({ kind: 'good as it is', journal: name, undersize, ...allowed });
      journals.push({ name, work: 'use as it is' });
      continue;
    }
    if (flaw) because.push({ kind: 'shape', journal: name, finding: flaw });
    const available = availableIn(journal, job);
    if (available < target.max - NANOMETRE) {
      because.push({ kind: 'does not clean up', undersize, journal: name, available, target });
      serves = false;
      continue;
    }
    grinds = true;
    because.push({ kind: 'cleans up', journal: name, undersize, available });
    const stockRemoved = { min: largest - target.max, max: largest - target.min } as Span<Length>;
    journals.push({ name, work: 'grind', stockRemoved });
  }
  if (grinds && job.minimum !== undefined && target.min < job.minimum - NANOMETRE) {
    because.push({ kind: 'below the minimum', undersize, target, minimum: job.minimum });
    serves = false;
  }
  if (grinds && serves) because.push({ kind: 'allowance', ...job.allowance });
  if (serves) return { serves, journals, because };
  return { serves, journals, because: because.filter(({ kind }) => OBSTACLES.has(kind)) };
}

const NANOMETRE = 1e-9;
const OBSTACLES: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'does not clean up',
  'no shells at hand',
  'below the minimum',
]);

/** The largest round journal about the axis it will be ground on that the worn one still contains. */
function availableIn(journal: JournalToGrind, job: Job): Length {
  const oneSided = job.wear === 'one side' ? journal.outOfRound : 0;
  const eccentric = journal.runout ?? 0;
  return (journal.smallest - oneSided - eccentric - job.allowance.cleanUpAllowance) as Length;
}

/** How far a journal is worn below the target; nothing if it is still too large for it. */
function wornBelow(
  { smallest, largest }: JournalToGrind,
  target: Span<Length>,
): Length | undefined {
  if (largest > target.max + NANOMETRE) return undefined;
  return Math.max(0, target.min - smallest) as Length;
}

/** The worse of out-of-round and taper, if either is past its limit. */
function flawOf(
  journal: JournalToGrind,
  { limits, basis }: BasedLimits<'length'>,
): Finding<'length'> | undefined {
  const findings = [
    judge({
      feature: 'out-of-round',
      dimension: 'length',
      value: journal.outOfRound,
      limits,
      basis,
    }),
    judge({ feature: 'taper', dimension: 'length', value: journal.taper, limits, basis }),
  ];
  return findings
    .filter(({ verdict }) => verdict !== 'within')
    .sort((a, b) => a.margin - b.margin)[0];
}

function targetAt(standard: Span<Length>, undersize: Length): Span<Length> {
  return { min: standard.min - undersize, max: standard.max - undersize } as Span<Length>;
}

const sameSize = (a: Length, b: Length) => Math.abs(a - b) <= NANOMETRE;

function guardRequest(request: GrindRequest) {
  guardObject('request', request);
  const standard = guardSpan('standard', request.standard, guardDiameter);
  guardList('journals', request.journals, 1, 'journal');
  guardList('steps', request.steps, 1, 'undersize');
  const { cleanUpAllowance: allowance, wearAllowance: worn } = request;
  return {
    standard,
    journals: request.journals.map((journal, i) =>
      guardJournal(`journals[${i}]`, journal, standard),
    ),
    steps: request.steps.map((step, i) => guardSmall(`steps[${i}]`, step)).sort((a, b) => a - b),
    shellsAtHand: guardShells(request.shellsAtHand),
    minimum: request.minimum === undefined ? undefined : guardDiameter('minimum', request.minimum),
    allowance: {
      cleanUpAllowance: guardSmall('cleanUpAllowance', allowance ?? thou(1)),
      basis: allowance === undefined ? ALLOWANCE_RULE : ({ kind: 'specified' } as const),
    },
    wearAllowance: {
      most: guardSmall('wearAllowance', worn ?? thou(0.5)),
      basis: worn === undefined ? WEAR_RULE : ({ kind: 'specified' } as const),
    },
    wear: guardWord('wear', request.wear ?? 'one side', ['one side', 'all round']),
    shape: ownLimitsOr('shape', request.shape ?? {}, 'length', journalShapeRule()),
  };
}

function guardShells(shells: readonly Length[] | undefined): readonly Length[] | undefined {
  if (shells === undefined) return undefined;
  guardList('shellsAtHand', shells, 0, 'undersizes');
  return shells.map((shell, i) => guardSmall(`shellsAtHand[${i}]`, shell));
}

function guardJournal(at: string, journal: JournalToGrind, standard: Span<Length>): JournalToGrind {
  guardObject(at, journal);
  guardText(`${at}.name`, journal.name);
  guardDiameter(`${at}.smallest`, journal.smallest);
  guardDiameter(`${at}.largest`, journal.largest);
  guardSmall(`${at}.outOfRound`, journal.outOfRound);
  guardSmall(`${at}.taper`, journal.taper);
  if (journal.runout !== undefined) guardSmall(`${at}.runout`, journal.runout);
  guardSpan(at, { min: journal.smallest, max: journal.largest }, guardDiameter);
  if (journal.largest - standard.max <= 1e-4) return journal;
  throw new RebuildInputError({
    parameter: `${at}.largest`,
    value: journal.largest,
    shown: `${journal.largest} m`,
    expected: `at most 0.1 mm above the standard ${standard.max} m`,
    hint: 'Journals only wear smaller: check the standard size, the units and which journal this is.',
  });
}
