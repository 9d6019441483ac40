import type { ShellMatch, UndersizeMismatch } from '../bearings/index.js';
import type { ServedGrindPlan } from '../crankshaft/index.js';
import type { Finding, Span } from '../judging/index.js';
import { guardLayout, worstOf } from '../judging/internal.js';
import type { DilutionFinding, ThinningFinding } from '../oil/index.js';
import type { Flow, KinematicViscosity, Length } from '../quantities/index.js';
import type { Inspection } from './inspect.js';
import { type BearingGroupReport, type BearingReport, mismatchOf } from './inspect-bearings.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import type { FilmReport } from './inspect-film.js';
import { isThinOil } from './inspect-sample.js';
import { inspectionLayout } from './layouts.js';

/** Shells found on a journal of another undersize. */
export interface WrongShells {
  /** Take them out: running the engine would wreck it. */
  readonly kind: 'wrong shells';
  /** The bearing they were found in. */
  readonly bearing: string;
  /** Their name on the shelf. */
  readonly shells: string;
  /** The undersize they are made for [m]. */
  readonly undersize: Length;
  /** The undersize that the journal is ground to [m]. */
  readonly journalUndersize: Length;
  /** How the clearance shows it. */
  readonly explanation: UndersizeMismatch;
}

/** One thing to do, by its `kind`, with the finding behind it. */
export type Action =
  | WrongShells
  | {
      /** Fuel has thinned the oil: too far to run, or far enough to change it. */
      readonly kind: 'do not run' | 'change the oil';
      /** The fuel fraction against its limit. */
      readonly dilution: DilutionFinding;
    }
  | {
      /** The oil has lost much of its viscosity, or has thinned out of its grade, more than its fuel tells. */
      readonly kind: 'thin oil';
      /** The viscosity that it has lost. */
      readonly thinning: ThinningFinding;
    }
  | {
      /** The oil is thicker than clean oil: it has aged, or is another grade. */
      readonly kind: 'thick oil';
      /** Viscosity of the sample [m²/s]. */
      readonly viscosity: KinematicViscosity;
      /** Viscosity of clean oil at the same temperature [m²/s]. */
      readonly clean: KinematicViscosity;
    }
  | {
      /** Oil, thinned or not, no longer keeps the surfaces of a bearing apart. */
      readonly kind: 'thin film';
      /** The bearing and its film. */
      readonly film: FilmReport;
    }
  | {
      /** Fuel leaks into the oil. */
      readonly kind: 'stop the leak';
      /** Size of the leak, least and most [m³/s]. */
      readonly flow: Span<Flow>;
    }
  | {
      /**
       * A bearing that needs no grinding has a wrong clearance, and no undersize explains it. Or
       * the clearance contradicts the stamp on the shells and the size of the journal.
       */
      readonly kind: 'wrong clearance' | 'check sizes';
      /** Which bearing. */
      readonly bearing: string;
      /** Its clearance against the limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Journals must be ground. */
      readonly kind: 'grind';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** To what size, and why. */
      readonly plan: ServedGrindPlan;
    }
  | {
      /** No undersize saves these journals. */
      readonly kind: 'no step serves';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** Journals that do not clean up at any step. */
      readonly defeatedBy: readonly string[];
    }
  | {
      /** Shells from the shelf fit a finished bearing. */
      readonly kind: 'fit shells';
      /** Which bearing. */
      readonly bearing: string;
      /** Which shells, and the clearance they leave. */
      readonly match: ShellMatch;
    }
  | {
      /** The shelf has too few shells that fit. */
      readonly kind: 'buy shells';
      /** Which journals they are for. */
      readonly journals: 'rods' | 'mains';
      /** The undersize to buy [m]. */
      readonly undersize: Length;
      /** How many pairs [-]. */
      readonly pairs: number;
    }
  | {
      /** The crankshaft floats too much or too little. */
      readonly kind: 'set the end play';
      /** The end play against its limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The bore, or the clearance of its piston, is outside its limits. */
      readonly kind: 'rebore' | 'wrong piston';
      /** Which cylinder. */
      readonly cylinder: string;
      /** The finding that it fails. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** A ring must be filed or replaced, or the bore is worn too far for it. */
      readonly kind: 'ring';
      /** Which cylinder. */
      readonly cylinder: string;
      /** Which ring, and what to do with it. */
      readonly ring: RingReport;
    };

/**
 * Lists what to do after an inspection, most urgent first: whatever would wreck the engine if
 * it ran, then crankshaft, assembly and cylinders. An empty list says nothing about what was not
 * measured.
 *
 * @param inspection - what `inspect` gave
 * @returns things to do, in order
 * @throws {RebuildInputError} when the inspection is not what `inspect` gives
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
  guardLayout('inspection', inspection, inspectionLayout, 'inspect');
  const { rods, mains, endPlay, cylinders, oil } = inspection;
  const groups = [rods, mains].filter((group) => group !== undefined);
  const actions: Action[] = [];
  const sample = oil?.sample;
  const dilution = sample?.dilution;
  if (dilution?.stage === 'critical') actions.push({ kind: 'do not run', dilution });
  if (dilution?.stage === 'act') actions.push({ kind: 'change the oil', dilution });
  if (sample && isThinOil(sample)) actions.push({ kind: 'thin oil', thinning: sample.thinning });
  if (sample && !dilution) {
    const { viscosity, clean } = sample;
    actions.push({ kind: 'thick oil', viscosity, clean });
  }
  if (oil?.film && oil.film.finding.regime !== 'full') {
    actions.push({ kind: 'thin film', film: oil.film });
  }
  if (oil?.leak && oil.leak.flow.max > 0)
    actions.push({ kind: 'stop the leak', flow: oil.leak.flow });
  return [
    ...actions,
    ...groups.flatMap(fittedShellActions),
    ...groups.flatMap(grindActions),
    ...groups.flatMap(({ bearings }) => bearings.flatMap(shellsToFit)),
    ...endPlayToSet(endPlay),
    ...cylinders.flatMap(cylinderWork),
  ];
}

function endPlayToSet(endPlay: Inspection['endPlay']): Action[] {
  if (!endPlay || endPlay.finding.verdict === 'within') return [];
  return [{ kind: 'set the end play', finding: endPlay.finding }];
}

/** Actions for the shells that were found in the bearings. */
function fittedShellActions({ plan, bearings }: BearingGroupReport): Action[] {
  return bearings.flatMap(({ name: bearing, fitted }): Action[] => {
    if (fitted === undefined) return [];
    const { shells, undersize, explanation, agrees } = fitted;
    const { finding } = explanation;
    if (!agrees) return [{ kind: 'check sizes', bearing, finding }];
    if ('mismatch' in explanation) {
      const journalUndersize = (undersize + mismatchOf(explanation)) as Length;
      return [{ kind: 'wrong shells', bearing, shells, undersize, journalUndersize, explanation }];
    }
    // If the journals are ground, they get other shells anyway.
    if (plan.outcome !== 'use as it is' || finding.verdict === 'within') return [];
    return [{ kind: 'wrong clearance', bearing, finding }];
  });
}

function grindActions({ kind: journals, plan, pairsToBuy: pairs }: BearingGroupReport): Action[] {
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

/** The worst finding that a bore fails, if it fails one. It is then machined and gets a piston and rings of its new size. */
export function worstOfBore({ findings }: CylinderReport): Finding<'length'> | undefined {
  return worstOf(findings);
}

/** The ring findings that need action. A used ring outside a rule of thumb for new rings does not. */
const RING_WORK: ReadonlySet<RingReport['filing']['work']> = /* @__PURE__ */ new Set([
  'file',
  'use another ring',
  'bore is worn',
] as const);

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
      .filter(({ filing }) => RING_WORK.has(filing.work))
      .map((ring) => ({ kind: 'ring' as const, cylinder, ring })),
  ];
}
