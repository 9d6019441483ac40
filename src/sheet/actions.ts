import type { ShellMatch, UndersizeMismatch } from '../bearings/index.js';
import type { ServedGrindPlan } from '../crankshaft/index.js';
import type { Finding } from '../judging/index.js';
import { guardLayout, worstOf } from '../judging/internal.js';
import type { DilutionFinding } from '../oil/index.js';
import type { Flow, KinematicViscosity, Length } from '../quantities/index.js';
import type { Inspection } from './inspect.js';
import { type BearingGroupReport, type BearingReport, mismatchOf } from './inspect-bearings.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import type { FilmReport } from './inspect-film.js';
import { inspectionLayout } from './layouts.js';

/** Shells that do not belong to the journal they were found on. */
export interface WrongShells {
  /** Take them out: the engine is wrecked if it runs. */
  readonly kind: 'wrong shells';
  /** Where they were found. */
  readonly bearing: string;
  /** What they are called on the shelf. */
  readonly shells: string;
  /** The undersize they are made for [m]. */
  readonly undersize: Length;
  /** The undersize that the journal is ground to [m]. */
  readonly journalUndersize: Length;
  /** How that follows from the clearance. */
  readonly explanation: UndersizeMismatch;
}

/** One thing to do, by its `kind`, with what it follows from. */
export type Action =
  | WrongShells
  | {
      /** Fuel has thinned the oil: past running, or past leaving it in. */
      readonly kind: 'do not run' | 'change the oil';
      /** How the oil stands. */
      readonly dilution: DilutionFinding;
    }
  | {
      /** The oil is thicker than it was when clean: it has aged, or is another grade. */
      readonly kind: 'thick oil';
      /** What the sample measured [m²/s]. */
      readonly viscosity: KinematicViscosity;
      /** What clean oil would measure [m²/s]. */
      readonly clean: KinematicViscosity;
    }
  | {
      /** Oil, thinned or not, no longer keeps the surfaces of a bearing apart. */
      readonly kind: 'thin film';
      /** The bearing and its film. */
      readonly film: FilmReport;
    }
  | {
      /** Fuel runs into the oil. */
      readonly kind: 'stop the leak';
      /** How much of it [m³/s]. */
      readonly flow: Flow;
    }
  | {
      /**
       * A bearing that is not to be ground has a clearance that no undersize explains. Or its
       * sizes contradict what its shells are stamped and its journal measures.
       */
      readonly kind: 'wrong clearance' | 'check sizes';
      /** Which bearing. */
      readonly bearing: string;
      /** Its clearance against the limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Journals go to the grinder. */
      readonly kind: 'grind';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** To what size, and why. */
      readonly plan: ServedGrindPlan;
    }
  | {
      /** Grinding cannot save these journals. */
      readonly kind: 'no step serves';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** The journals that no step cleans up. */
      readonly defeatedBy: readonly string[];
    }
  | {
      /** Shells from the shelf go into a finished bearing. */
      readonly kind: 'fit shells';
      /** Which bearing. */
      readonly bearing: string;
      /** Which shells, and what they leave. */
      readonly match: ShellMatch;
    }
  | {
      /** The shelf lacks shells that fit. */
      readonly kind: 'buy shells';
      /** For which journals. */
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
      /** The bore, or the piston in it, is not fit to be used. */
      readonly kind: 'rebore' | 'wrong piston';
      /** Which cylinder. */
      readonly cylinder: string;
      /** What it fails by. */
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
 * What follows from an inspection, most urgent first: what wrecks the engine
 * if it is run, then crankshaft, cylinders and assembly.
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
  if (sample && !dilution) {
    const { viscosity, clean } = sample;
    actions.push({ kind: 'thick oil', viscosity, clean });
  }
  if (oil?.film && oil.film.finding.regime !== 'full') {
    actions.push({ kind: 'thin film', film: oil.film });
  }
  if (oil?.leak && oil.leak.flow > 0) actions.push({ kind: 'stop the leak', flow: oil.leak.flow });
  return [
    ...actions,
    ...groups.flatMap(asFound),
    ...groups.flatMap(grinding),
    ...groups.flatMap(({ bearings }) => bearings.flatMap(shellsToFit)),
    ...endPlayToSet(endPlay),
    ...cylinders.flatMap(cylinderWork),
  ];
}

function endPlayToSet(endPlay: Inspection['endPlay']): Action[] {
  if (!endPlay || endPlay.finding.verdict === 'within') return [];
  return [{ kind: 'set the end play', finding: endPlay.finding }];
}

/** What follows from the shells that were found in the bearings. */
function asFound({ plan, bearings }: BearingGroupReport): Action[] {
  return bearings.flatMap(({ name: bearing, fitted }): Action[] => {
    if (fitted === undefined) return [];
    const { shells, undersize, explanation, agrees } = fitted;
    const { finding } = explanation;
    if (!agrees) return [{ kind: 'check sizes', bearing, finding }];
    if ('mismatch' in explanation) {
      const journalUndersize = (undersize + mismatchOf(explanation)) as Length;
      return [{ kind: 'wrong shells', bearing, shells, undersize, journalUndersize, explanation }];
    }
    // Moot where the journals are ground and get other shells.
    if (plan.outcome !== 'use as it is' || finding.verdict === 'within') return [];
    return [{ kind: 'wrong clearance', bearing, finding }];
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
  return worstOf(findings);
}

/** What of a ring is to be acted on. A rule of thumb for new rings asks for nothing. */
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
