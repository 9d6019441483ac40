import { oilClearanceSpan } from '../bearings/clearance.js';
import { type ClearanceExplanation, explainClearance } from '../bearings/explain.js';
import { matchShells, type ShellMatch } from '../bearings/match.js';
import { grindPlan } from '../crankshaft/grind-plan.js';
import type { GrindPlan } from '../crankshaft/grind-types.js';
import { undersizeSteps } from '../crankshaft/undersize.js';
import { type Finding, judge } from '../judging/judge.js';
import type { Span } from '../judging/limits.js';
import { ownLimitsOr } from '../judging/own-limits.js';
import { journalShape } from '../measuring/journal.js';
import type { Shape } from '../measuring/shape.js';
import { journalShapeRule } from '../measuring/shape-rule.js';
import type { Length } from '../quantities/dimensions.js';
import { handOutShells } from './hand-out-shells.js';
import { own } from './own.js';
import type { BearingSheet, JournalSheet, Sheet, ShellSheet } from './sheet.js';

/** What was found of the bearings of one kind, and what is to be done. */
export interface BearingGroupReport {
  /** Rods or mains. */
  readonly kind: 'rods' | 'mains';
  /** The common undersize, with its reasons. Where shells are lacking it is the one to buy shells for. */
  readonly plan: GrindPlan;
  /** Every bearing, in the order of the sheet. */
  readonly bearings: readonly BearingReport[];
  /** Pairs of shells of the plan's undersize that the shelf lacks [-]. */
  readonly pairsToBuy: number;
}

/** What was found of one bearing. */
export interface BearingReport {
  /** What it is called on the bench. */
  readonly name: string;
  /** Size and shape of the journal as it is. */
  readonly shape: Shape;
  /** Its out-of-round and taper against their limits. */
  readonly findings: readonly Finding<'length'>[];
  /** The shells that were found in it, the clearance they leave and what explains it. */
  readonly fitted?: {
    /** Name of the shells. */
    readonly shells: string;
    /** The undersize they are made for [m]. */
    readonly undersize: Length;
    /** Diametral clearance as found [m]. */
    readonly clearance: Span<Length>;
    /** What explains it, at its worse end. */
    readonly explanation: ClearanceExplanation;
  };
  /** Every shell on the shelf in the finished bearing, best first; empty where no step serves. */
  readonly matches: readonly ShellMatch[];
  /** The shells it gets, if the shelf has a pair to spare that fits. */
  readonly shells?: ShellMatch;
}

/** Inspects all bearings of one kind. */
export function inspectBearings(
  sheet: Pick<Sheet, 'units' | 'shells'>,
  kind: 'rods' | 'mains',
  journals: JournalSheet,
  bearings: readonly BearingSheet[],
): BearingGroupReport {
  const steps = journals.steps ?? undersizeSteps(sheet.units);
  const shelf = (sheet.shells ?? []).filter((shell) => shell.fits === kind);
  const measured = bearings.map((bearing) => ({
    bearing,
    shape: journalShape(bearing.journal.readings),
  }));
  const plan = planFor(journals, steps, shelf, measured);
  const reports = measured.map((each) => reportOn(each, journals, steps, shelf, plan));
  const handedOut = handOutShells(
    reports.map((report) => report.matches.filter((match) => match.fits)),
    (match) => match.shell.name,
    new Map(shelf.map((shell) => [shell.name, shell.pairs])),
  );
  return {
    kind,
    plan,
    bearings: reports.map((report, i) => {
      const shells = handedOut[i];
      return shells ? { ...report, shells } : report;
    }),
    pairsToBuy: plan.outcome === 'none' ? 0 : handedOut.filter((shells) => !shells).length,
  };
}

interface Measured {
  readonly bearing: BearingSheet;
  readonly shape: Shape;
}

/** The step to go to: one that the shelf has shells for if there is one, else one to buy shells for. */
function planFor(
  journals: JournalSheet,
  steps: readonly Length[],
  shelf: readonly ShellSheet[],
  measured: readonly Measured[],
): GrindPlan {
  const { standard, minimum, cleanUpAllowance, wearAllowance, wear, shape } = journals;
  const request = {
    standard,
    steps,
    journals: measured.map(({ bearing, shape }) => ({
      name: bearing.name,
      smallest: shape.smallest,
      largest: shape.largest,
      outOfRound: shape.outOfRound,
      taper: shape.taper,
      ...(bearing.journal.runout !== undefined && { runout: bearing.journal.runout }),
    })),
    ...(minimum !== undefined && { minimum }),
    ...(cleanUpAllowance !== undefined && { cleanUpAllowance }),
    ...(wearAllowance !== undefined && { wearAllowance }),
    ...(wear !== undefined && { wear }),
    ...(shape !== undefined && { shape: own(shape) }),
  };
  const atHand = steps.filter((step) => pairsOf(shelf, step) >= measured.length);
  const plan = grindPlan({ ...request, shellsAtHand: atHand });
  return plan.outcome === 'none' ? grindPlan(request) : plan;
}

function pairsOf(shelf: readonly ShellSheet[], undersize: Length): number {
  return shelf
    .filter((shell) => Math.abs(shell.undersize - undersize) < 1e-6)
    .reduce((sum, shell) => sum + shell.pairs, 0);
}

function reportOn(
  { bearing, shape }: Measured,
  journals: JournalSheet,
  steps: readonly Length[],
  shelf: readonly ShellSheet[],
  plan: GrindPlan,
): BearingReport {
  const { housingBore, name } = bearing;
  const limits = own(journals.oilClearance);
  const allowed = ownLimitsOr('shape', own(journals.shape), 'length', journalShapeRule());
  const findings = (['outOfRound', 'taper'] as const).map((feature) =>
    judge({
      feature: feature === 'outOfRound' ? 'out-of-round' : 'taper',
      dimension: 'length',
      value: shape[feature],
      ...allowed,
    }),
  );
  const fitted = shelf.find((shell) => shell.name === bearing.fittedShells);
  return {
    name,
    shape,
    findings,
    ...(fitted && { fitted: fittedAs(fitted, housingBore, shape, steps, limits) }),
    matches:
      plan.outcome === 'none' || shelf.length === 0
        ? []
        : matchShells({
            journal: finishedJournal(plan, name, shape),
            housingBore,
            shells: shelf,
            ...limits,
          }),
  };
}

function fittedAs(
  shell: ShellSheet,
  housingBore: BearingSheet['housingBore'],
  shape: Shape,
  steps: readonly Length[],
  limits: ReturnType<typeof own<'length'>>,
): NonNullable<BearingReport['fitted']> {
  const journal = { min: shape.smallest, max: shape.largest };
  const clearance = oilClearanceSpan({ housingBore, shellWall: shell.wall, journal });
  const [loose, tight] = [clearance.max, clearance.min].map((end) =>
    explainClearance({ clearance: end, journal: shape.largest, steps, ...limits }),
  ) as [ClearanceExplanation, ClearanceExplanation];
  const explanation = tight.finding.margin < loose.finding.margin ? tight : loose;
  return { shells: shell.name, undersize: shell.undersize, clearance, explanation };
}

/** What the journal will measure once the plan is carried out. */
function finishedJournal(
  plan: Exclude<GrindPlan, { outcome: 'none' }>,
  name: string,
  shape: Shape,
): Span<Length> {
  const asItIs = plan.journals.some(
    (journal) => journal.name === name && journal.work === 'use as it is',
  );
  return asItIs ? { min: shape.smallest, max: shape.largest } : plan.target;
}
