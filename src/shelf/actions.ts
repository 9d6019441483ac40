import type { ClearanceExplanation } from '../bearings/explain.js';
import type { ShellMatch } from '../bearings/match.js';
import type { GrindPlan } from '../crankshaft/grind-plan.js';
import type { Finding } from '../judging/judge.js';
import type { DilutionFinding } from '../oil/dilution.js';
import type { Flow, Length } from '../quantities/dimensions.js';
import type { Inspection } from './inspect.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';

/** One thing to do, with what it follows from. */
export type Action =
  | { readonly kind: 'do not run' | 'change the oil'; readonly dilution: DilutionFinding }
  | { readonly kind: 'stop the leak'; readonly flow: Flow }
  | {
      readonly kind: 'wrong shells';
      readonly bearing: string;
      /** Name of the shells that were found in it. */
      readonly shells: string;
      /** The undersize those shells are made for [m]. */
      readonly undersize: Length;
      /** The undersize that the journal is ground to [m]. */
      readonly journalUndersize: Length;
      readonly explanation: ClearanceExplanation;
    }
  | {
      readonly kind: 'wrong clearance';
      readonly bearing: string;
      readonly finding: Finding<'length'>;
    }
  | {
      readonly kind: 'grind';
      readonly journals: 'rods' | 'mains';
      readonly plan: Exclude<GrindPlan, { outcome: 'none' }>;
    }
  | {
      readonly kind: 'no step serves';
      readonly journals: 'rods' | 'mains';
      readonly defeatedBy: readonly string[];
    }
  | { readonly kind: 'fit shells'; readonly bearing: string; readonly match: ShellMatch }
  | {
      readonly kind: 'buy shells';
      readonly journals: 'rods' | 'mains';
      readonly undersize: Length;
      readonly pairs: number;
    }
  | { readonly kind: 'set the end play'; readonly finding: Finding<'length'> }
  | { readonly kind: 'rebore'; readonly cylinder: string; readonly finding: Finding<'length'> }
  | {
      readonly kind: 'wrong piston';
      readonly cylinder: string;
      readonly finding: Finding<'length'>;
    }
  | { readonly kind: 'ring'; readonly cylinder: string; readonly ring: RingReport };

/**
 * What follows from an inspection, most urgent first: what wrecks the engine
 * if it is run, then crankshaft, cylinders and assembly.
 *
 * @param inspection - what `inspect` gave
 * @returns things to do, in order
 * @example
 * ```ts
 * const sheet = readSheet({
 *   version: 1, engine: 'pump set', units: 'inch',
 *   crankshaft: { endPlay: { readings: [{ pushed: '0 thou', pulled: '14 thou' }] } },
 * });
 * actionsFrom(inspect(sheet)).map(({ kind }) => kind); // ["set the end play"]
 * ```
 */
export function actionsFrom(inspection: Inspection): readonly Action[] {
  const { rods, mains, endPlay, cylinders, oil } = inspection;
  const groups = [rods, mains].filter((group) => group !== undefined);
  const actions: Action[] = [];
  const dilution = oil?.sample?.dilution;
  if (dilution?.stage === 'critical') actions.push({ kind: 'do not run', dilution });
  if (dilution?.stage === 'act') actions.push({ kind: 'change the oil', dilution });
  if (oil?.leak && oil.leak.flow > 0) actions.push({ kind: 'stop the leak', flow: oil.leak.flow });
  for (const group of groups) actions.push(...group.bearings.flatMap(wrongShells));
  for (const group of groups) actions.push(...wornBearings(group));
  for (const group of groups) actions.push(...grinding(group));
  for (const group of groups) actions.push(...group.bearings.flatMap(shellsToFit));
  if (endPlay && endPlay.finding.verdict !== 'within') {
    actions.push({ kind: 'set the end play', finding: endPlay.finding });
  }
  return [...actions, ...cylinders.flatMap(cylinderWork)];
}

function wrongShells({ name, fitted }: BearingReport): Action[] {
  if (fitted === undefined || !('mismatch' in fitted.explanation)) return [];
  const { shells, undersize, explanation } = fitted;
  const ground = explanation.kind === 'journal ground, shells not' ? 1 : -1;
  const journalUndersize = (undersize + ground * explanation.mismatch) as Length;
  return [
    { kind: 'wrong shells', bearing: name, shells, undersize, journalUndersize, explanation },
  ];
}

/** Clearances that no undersize explains; moot where the journals are ground and get other shells. */
function wornBearings({ plan, bearings }: BearingGroupReport): Action[] {
  if (plan.outcome !== 'use as it is') return [];
  return bearings.flatMap(({ name, fitted }) => {
    if (fitted === undefined || 'mismatch' in fitted.explanation) return [];
    const { finding } = fitted.explanation;
    return finding.verdict === 'within'
      ? []
      : [{ kind: 'wrong clearance', bearing: name, finding }];
  });
}

function grinding({ kind: journals, plan, pairsToBuy: pairs }: BearingGroupReport): Action[] {
  if (plan.outcome === 'none') {
    return [{ kind: 'no step serves', journals, defeatedBy: plan.defeatedBy }];
  }
  const { undersize } = plan;
  return [
    ...(plan.outcome === 'grind' ? [{ kind: 'grind' as const, journals, plan }] : []),
    ...(pairs > 0 ? [{ kind: 'buy shells' as const, journals, undersize, pairs }] : []),
  ];
}

function shellsToFit({ name, shells, fitted }: BearingReport): Action[] {
  if (shells === undefined || shells.shell.name === fitted?.shells) return [];
  return [{ kind: 'fit shells', bearing: name, match: shells }];
}

/** What the bore fails by, if it fails. It is machined then, and gets a piston and rings to its new size. */
export function worstOfBore({ findings }: CylinderReport): Finding<'length'> | undefined {
  return findings
    .filter(({ verdict }) => verdict !== 'within')
    .sort((a, b) => a.margin - b.margin)[0];
}

function cylinderWork(report: CylinderReport): Action[] {
  const { name: cylinder, piston, rings } = report;
  const worst = worstOfBore(report);
  if (worst) return [{ kind: 'rebore', cylinder, finding: worst }];
  const misfit = piston?.finding;
  return [
    ...(misfit && misfit.verdict !== 'within'
      ? [{ kind: 'wrong piston' as const, cylinder, finding: misfit }]
      : []),
    ...rings
      .filter(({ filing }) => filing.work !== 'fit as it is')
      .map((ring) => ({ kind: 'ring' as const, cylinder, ring })),
  ];
}
