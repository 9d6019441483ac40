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
import { type BasedLimits, type OwnLimits, ownLimitsOr } from '../judging/own-limits.js';
import { journalShapeRule } from '../measuring/shape-rule.js';
import type { Length } from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';
import { thou } from '../quantities/units.js';

/** What a grinder has to know of one journal; `journalShape` gives most of it. */
export interface JournalToGrind {
  /** What it is called on the bench. */
  readonly name: string;
  /** Smallest diameter read [m]. */
  readonly smallest: Length;
  /** Largest diameter read [m]. */
  readonly largest: Length;
  /** Worst out-of-round of any station [m]. */
  readonly outOfRound: Length;
  /** Worst taper [m]. */
  readonly taper: Length;
  /** Full indicator reading against the axis it will be ground about; by default none [m]. */
  readonly runout?: Length;
}

/** What `grindPlan` decides from. */
export interface GrindRequest {
  /** All journals of one kind, all mains or all rod journals: they share one step. */
  readonly journals: readonly JournalToGrind[];
  /** The maker's span for a standard journal [m]. */
  readonly standard: Span<Length>;
  /** Undersizes that may be ground to, such as `undersizeSteps('inch')` [m]. */
  readonly steps: readonly Length[];
  /** Undersizes that shells are at hand for; by default any step [m]. */
  readonly shellsAtHand?: readonly Length[];
  /** Smallest journal that the maker allows; by default none is known [m]. */
  readonly minimum?: Length;
  /** Stock left for the wheel below the smallest reading, on the diameter; by default 0.001 in [m]. */
  readonly cleanUpAllowance?: Length;
  /**
   * How the journal wore. `'one side'`, the default and the safe one: loads
   * wear a crank journal on one side, and ground about its old axis it cleans up only
   * at its smallest diameter less its out-of-round. `'all round'`: it cleans up
   * at its smallest diameter.
   */
  readonly wear?: 'one side' | 'all round';
  /** How far a journal may be worn below the target and still be used as it is; by default 0.0005 in [m]. */
  readonly wearAllowance?: Length;
  /** Out-of-round and taper that a journal may keep without being ground; by default 0.0005 in each. */
  readonly shape?: OwnLimits<'length'>;
}

/** What is to happen to one journal. */
export interface JournalWork {
  /** What it is called on the bench. */
  readonly name: string;
  /** Whether it is good as it is or must be ground to the target. */
  readonly work: 'use as it is' | 'grind';
  /** Metal that comes off its largest diameter, if it is ground [m]. */
  readonly stockRemoved?: Span<Length>;
}

/** Why a step was taken or passed over, by its `kind`. */
export type GrindReason =
  | {
      /** The journal is too far gone for the step. */
      readonly kind: 'does not clean up';
      /** The step [m]. */
      readonly undersize: Length;
      /** Which journal. */
      readonly journal: string;
      /** The largest round journal that is left in it [m]. */
      readonly available: Length;
      /** What the step asks for [m]. */
      readonly target: Span<Length>;
    }
  | {
      /** The caller has no shells for the step. */
      readonly kind: 'no shells at hand';
      /** The step [m]. */
      readonly undersize: Length;
    }
  | {
      /** The step would go below what the maker allows. */
      readonly kind: 'below the minimum';
      /** The step [m]. */
      readonly undersize: Length;
      /** What the step asks for [m]. */
      readonly target: Span<Length>;
      /** The maker's minimum [m]. */
      readonly minimum: Length;
    }
  | {
      /** The journal needs no work at the step. */
      readonly kind: 'good as it is';
      /** Which journal. */
      readonly journal: string;
      /** The step [m]. */
      readonly undersize: Length;
      /** How far it is worn below the target at its smallest, if it is [m]. */
      readonly worn?: Length;
      /** Who allows that wear. */
      readonly basis?: Basis;
    }
  | {
      /** The journal can be ground to the step. */
      readonly kind: 'cleans up';
      /** Which journal. */
      readonly journal: string;
      /** The step [m]. */
      readonly undersize: Length;
      /** The largest round journal that is left in it [m]. */
      readonly available: Length;
    }
  | {
      /** The journal is too far out of shape to be used as it is. */
      readonly kind: 'shape';
      /** Which journal. */
      readonly journal: string;
      /** Its out-of-round or taper, the worse, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** What was left for the wheel wherever something is ground. */
      readonly kind: 'allowance';
      /** Stock below the smallest reading, on the diameter [m]. */
      readonly cleanUpAllowance: Length;
      /** Who asks for it. */
      readonly basis: Basis;
    };

/** The decision for all journals of one kind, with its reasons. */
export type GrindPlan =
  | {
      /** `use as it is`: nothing is machined. `grind`: at least one journal is. */
      readonly outcome: 'use as it is' | 'grind';
      /** The common step, below standard, on the diameter; shells are named by it [m]. */
      readonly undersize: Length;
      /** What every journal must measure when it is done [m]. */
      readonly target: Span<Length>;
      /** What happens to each journal. */
      readonly journals: readonly JournalWork[];
      /** Why: steps passed over, then the journals at this one. */
      readonly because: readonly GrindReason[];
    }
  | {
      /** No step serves. */
      readonly outcome: 'none';
      /** The journals that no step with shells cleans up; empty if only shells or the minimum stand in the way. */
      readonly defeatedBy: readonly string[];
      /** Why, step by step. */
      readonly because: readonly GrindReason[];
    };

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
