import type { ShellMatch } from '../bearings/index.js';
import { type GrindPlan, undersizeSteps } from '../crankshaft/index.js';
import { judgeRunout } from '../crankshaft/internal.js';
import type { Finding, Span } from '../judging/index.js';
import { holds, namedFrom } from '../judging/internal.js';
import { type OddReading, oddReadings, type Shape } from '../measuring/index.js';
import { journalShapeLimits, judgeShape, withStandard } from '../measuring/internal.js';
import { type Length, RebuildInputError, thou } from '../quantities/index.js';
import {
  type Accuracy,
  at20C,
  belowAtNoStep,
  certaintyOf,
  grindNames,
  isByRule,
  type JournalKind,
  journalSeen,
  own,
  readWith,
  type ShellPairs,
} from '../reading/index.js';
import { bearingNames, journalOf, makerOf } from './bearing-names.js';
import {
  allowedByClearance,
  type Measured,
  planFor,
  soundStep,
  withoutIdleDoubt,
  worthKeeping,
} from './bearing-plan.js';
import { type FittedShells, fittedAs } from './inspect-fitted.js';
import type { BearingSheet, Sheet } from './sheet.js';
import {
  type AsItIs,
  asAllMayStay,
  clearanceLimits,
  finishedJournal,
  handOut,
  madeFor,
  matchesFor,
  matchesNow,
  ranked,
  staysAsItIs,
  wallFor,
} from './shells-for.js';

/** Findings on the bearings of one kind, and what to do. */
export interface BearingGroupReport {
  /** Rods or mains. */
  readonly kind: 'rods' | 'mains';
  /** The common undersize, with its reasons. If shells are missing, buy them for this undersize. */
  readonly plan: GrindPlan;
  /** Whether only rules of thumb ask for the grinding. */
  readonly byRule?: true;
  /** Every bearing, in the order of the sheet. */
  readonly bearings: readonly BearingReport[];
  /** Pairs of shells of the plan's undersize to buy, but for bearings whose housing was not measured [-]. */
  readonly pairsToBuy: number;
}

/** Findings on one bearing. */
export interface BearingReport {
  /** Its name on the bench. */
  readonly name: string;
  /** Size and shape of the journal now. */
  readonly shape: Shape;
  /** Readings of its journal that do not fit the others, if any. No verdict rests on them before they are read again. */
  readonly readAgain?: readonly OddReading[];
  /** The undersize it is ground to, if its readings are near one [m]. */
  readonly undersize?: Length;
  /** How far it is below standard, if it reads round and straight and that is no step: a turn of the thimble may have been missed. Negative above standard: no journal grows [m]. */
  readonly oddSize?: Length;
  /** Its out-of-round and taper against their limits. */
  readonly findings: readonly Finding<'length'>[];
  /** Whether its housing bore was not measured: no clearance is judged then, and no shells are chosen. */
  readonly withoutHousing?: true;
  /** The shells found in it, the clearance they leave and what explains it. */
  readonly fitted?: FittedShells;
  /** Its runout against its limit, if it was read. */
  readonly runout?: Finding<'length'>;
  /** Its runout, if it reads as bent: there is no size to grind to until it is straight. */
  readonly bent?: Finding<'length'>;
  /** The undersize at which it needs no work by itself, though it is to be ground with the others [m]. */
  readonly soundAt?: Length;
  /** Where no journal has to be ground, as each is sound at a size of its own: how this one may stay. */
  readonly asItIs?: AsItIs;
  /** Every kind of shell on the shelf, tried in the finished bearing, best first; empty if no step serves. */
  readonly matches: readonly ShellMatch[];
  /** What the wall of shells must be that are made for it, if the shelf has none and some wall does [m]. */
  readonly wallToSuit?: Span<Length>;
  /** Shells made for the step that may fit, where none surely does: its clearance is nearer to a limit than it is measured to. */
  readonly mayFit?: ShellMatch;
  /** The shells it gets, if the shelf has a spare pair that fits and is made for the step. */
  readonly shells?: ShellMatch;
}

/** Inspects all bearings of one kind. */
export function inspectBearings(
  sheet: Pick<Sheet, 'units' | 'shells' | 'rods' | 'mains'>,
  kind: 'rods' | 'mains',
  journals: JournalKind,
  bearings: readonly BearingSheet[],
  accuracy: Accuracy,
): BearingGroupReport {
  const steps = namedFrom(
    () => ({ '': makerOf(kind) }),
    () => withStandard(journals.steps ?? undersizeSteps(sheet.units)),
  );
  const shelf = (sheet.shells ?? []).filter((shell) => shell.fits === kind);
  const named = <T>(i: number, run: () => T) => namedFrom(() => bearingNames(sheet, kind, i), run);
  const measured = bearings.map((bearing, i) => ({
    bearing,
    housingBore: bearing.housingBore && at20C(bearing.housingBore, 'housings', accuracy),
    shape: named(i, () => journalSeen(bearing.journal.readings, accuracy)),
    accuracy,
  }));
  const planned = <T>(run: () => T) =>
    namedFrom(
      () =>
        grindNames(
          makerOf(kind),
          bearings.map((_, i) => journalOf(kind, i)),
        ),
      run,
    );
  const first = planned(() => planFor(journals, steps, shelf, measured));
  const reportsOn = (plan: GrindPlan) =>
    measured.map((each, i) => named(i, () => reportOn(each, journals, steps, shelf, plan)));
  const found = reportsOn(first);
  const allowance = worthKeeping(first, found, accuracy);
  const plan =
    allowance === undefined
      ? withoutIdleDoubt(first, found)
      : planned(() =>
          allowedByClearance(
            planFor({ ...journals, sizeAllowance: allowance }, steps, shelf, measured),
            first,
          ),
        );
  const reports = allowance === undefined ? found : reportsOn(plan);
  const handedOut = handOut(
    shelf,
    reports.map(({ name, matches, fitted }) => {
      const stays = staysAsItIs(plan, name);
      const found = stays ? fitted?.shells : undefined;
      return {
        matches: plan.outcome === 'none' ? [] : matchesFor(plan.undersize, matches, found),
        staysAsItIs: stays,
      };
    }),
  );
  const asTheyAre = asAllMayStay(plan, shelf, reports, (i) =>
    named(i, () => matchesNow(measured[i] as Measured, journals, shelf)),
  );
  const shapes = measured.map(({ shape }) => shape);
  return {
    kind,
    plan,
    ...(isByRule(plan, shapes, own(journals.oilClearance).limits) && { byRule: true as const }),
    bearings: reports.map((each, i) => {
      const asItIs = asTheyAre[i];
      const report = { ...each, ...(asItIs && { asItIs }) };
      const shells = handedOut[i];
      if (shells) return { ...report, shells };
      const wallToSuit = named(i, () => wallFor(measured[i] as Measured, journals, plan));
      const mayFit = report.matches.find(
        (match) => match.finding.verdict === 'undecided' && madeFor(match, plan),
      );
      return { ...report, ...(wallToSuit && { wallToSuit }), ...(mayFit && { mayFit }) };
    }),
    pairsToBuy:
      plan.outcome === 'none'
        ? 0
        : reports.filter(({ withoutHousing }, i) => !withoutHousing && !handedOut[i]).length,
  };
}

/** The maker's data on the journals of one kind; without a standard size they cannot be judged. */
export function journalsOf(sheet: Partial<Sheet>, kind: 'rods' | 'mains'): JournalKind {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const journals = sheet.crankshaft?.[field];
  if (journals) return journals;
  throw new RebuildInputError({
    parameter: `crankshaft.${field}`,
    value: undefined,
    expected: `the standard size of the journals that ${kind} run on`,
    hint: `Give it as "${field}": { "standard": { "min": "1.6245 in", "max": "1.6250 in" } } under "crankshaft", or the ${kind} cannot be judged.`,
  });
}

function reportOn(
  measured: Measured,
  journals: JournalKind,
  steps: readonly Length[],
  shelf: readonly ShellPairs[],
  plan: GrindPlan,
): BearingReport {
  const { bearing, shape, housingBore, accuracy } = measured;
  const { name } = bearing;
  const limits = clearanceLimits(measured, journals);
  const allowed = journalShapeLimits('shape', {
    ...own(journals.shape),
    ...certaintyOf('journal shape', accuracy),
  });
  const undersize = measuredUndersize(shape, journals.standard, steps);
  const shells = shelf.find((shell) => shell.name === bearing.fittedShells);
  const fitted =
    shells && housingBore && fittedAs(shells, housingBore, shape, steps, limits, undersize);
  const runout =
    bearing.journal.runout === undefined
      ? undefined
      : judgeRunout('runout', bearing.journal.runout, {
          ...own(journals.runout),
          ...certaintyOf('runout', accuracy),
        });
  const findings = judgeShape(shape, allowed);
  const oddSize = belowAtNoStep(bearing.journal.readings, shape, journals, steps);
  const soundAt = soundStep(plan, measured, journals, steps, fitted);
  const readAgain = oddReadings(bearing.journal.readings, readWith('micrometer', accuracy));
  return {
    name,
    shape,
    ...(readAgain.length > 0 && { readAgain }),
    ...(undersize !== undefined && { undersize }),
    ...(oddSize !== undefined && { oddSize }),
    findings,
    ...(runout && { runout }),
    ...(runout && !holds(runout) && { bent: runout }),
    ...(soundAt !== undefined && { soundAt }),
    ...(housingBore === undefined && { withoutHousing: true as const }),
    ...(fitted && { fitted }),
    matches:
      plan.outcome === 'none' || shelf.length === 0
        ? []
        : ranked(finishedJournal(plan, name, shape), housingBore, shelf, limits),
  };
}

/** The step nearest to the journal's size, if it is within 2.5 thou. */
function measuredUndersize(
  { smallest, largest }: Shape,
  standard: Span<Length>,
  steps: readonly Length[],
): Length | undefined {
  const below = (standard.min + standard.max - smallest - largest) / 2;
  const [nearest] = [...steps].sort((a, b) => Math.abs(a - below) - Math.abs(b - below));
  return nearest !== undefined && Math.abs(nearest - below) <= thou(2.5) ? nearest : undefined;
}
