import type { Finding } from '../judging/index.js';
import { guardLayout, holds, worstOf } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { Action } from './action-types.js';
import type { Inspection } from './inspect.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import type { CylinderReport, RingReport } from './inspect-cylinder.js';
import { filmFails } from './inspect-film.js';
import { mismatchOf } from './inspect-fitted.js';
import { isThinOil } from './inspect-sample.js';
import { inspectionLayout } from './layouts.js';

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
  const { rods, mains, endPlay, oil, happened } = inspection;
  const groups = [mains, rods].filter((group) => group !== undefined);
  const grinding = groups.flatMap(grindActions);
  const isGround = grinding.some(({ kind }) => kind === 'grind');
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
  if (oil?.film && filmFails(oil.film)) actions.push({ kind: 'thin film', film: oil.film });
  if (oil?.leak && oil.leak.flow.max > 0) {
    actions.push({ kind: 'stop the leak', flow: oil.leak.flow });
  }
  return [
    ...(happened.length > 0 ? [{ kind: 'crack test' as const, happened }] : []),
    ...actions,
    ...lostThrust(endPlay),
    ...groups.flatMap(fittedShellActions),
    ...(isGround && happened.length === 0 ? [{ kind: 'crack test' as const, happened }] : []),
    ...grinding,
    ...groups.flatMap(({ bearings }) => bearings.flatMap(shellsToFit)),
    ...endPlayToSet(endPlay),
    ...boreActions(inspection),
  ];
}

function lostThrust(endPlay: Inspection['endPlay']): Action[] {
  if (endPlay?.missing === undefined) return [];
  return [{ kind: 'lost thrust face', finding: endPlay.finding, missing: endPlay.missing }];
}

function endPlayToSet(endPlay: Inspection['endPlay']): Action[] {
  if (!endPlay || endPlay.missing !== undefined || holds(endPlay.finding)) return [];
  return [{ kind: 'set the end play', finding: endPlay.finding }];
}

/** Actions for the shells that were found in the bearings. */
function fittedShellActions({ plan, bearings }: BearingGroupReport): Action[] {
  return bearings.flatMap(({ name: bearing, fitted }): Action[] => {
    if (fitted === undefined) return [];
    const { shells, undersize, explanation, agrees, housingToBlame } = fitted;
    const { finding } = explanation;
    if (housingToBlame !== undefined) {
      return [{ kind: 'check the housing', bearing, outOfRound: housingToBlame, finding }];
    }
    if (!agrees) return [{ kind: 'check sizes', bearing, finding }];
    if ('mismatch' in explanation) {
      const journalUndersize = (undersize + mismatchOf(explanation)) as Length;
      return [{ kind: 'wrong shells', bearing, shells, undersize, journalUndersize, explanation }];
    }
    // If the journals are ground, they get other shells anyway.
    if (plan.outcome !== 'use as it is' || holds(finding)) return [];
    return [{ kind: 'wrong clearance', bearing, finding }];
  });
}

function grindActions({
  kind: journals,
  plan,
  pairsToBuy: pairs,
  bearings,
}: BearingGroupReport): Action[] {
  if (plan.outcome === 'none') {
    return [{ kind: 'no step serves', journals, defeatedBy: plan.defeatedBy }];
  }
  const { undersize } = plan;
  const ifGround = plan.inDoubt !== undefined;
  const walls = bearings.flatMap(({ name: bearing, wallToSuit: wall }) =>
    wall ? [{ bearing, wall }] : [],
  );
  return [
    ...(plan.outcome === 'grind' ? [{ kind: 'grind' as const, journals, plan }] : []),
    ...(pairs > 0
      ? [{ kind: 'buy shells' as const, journals, undersize, pairs, ifGround, walls }]
      : []),
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

function boreActions({ cylinders, boring }: Inspection): Action[] {
  const isBored =
    boring !== undefined && boring.outcome !== 'none' && boring.outcome !== 'use as it is';
  const bored = isBored
    ? boring.cylinders.filter(({ work }) => work !== 'use as it is').map(({ name }) => name)
    : [];
  return [
    ...(isBored ? [{ kind: 'bore' as const, plan: boring }] : []),
    ...cylinders.filter(({ name }) => !bored.includes(name)).flatMap(cylinderWork),
  ];
}

function cylinderWork(report: CylinderReport): Action[] {
  const { name: cylinder, piston, rings, inDoubt } = report;
  const worst = worstOfBore(report);
  if (worst) return [{ kind: 'rebore', cylinder, finding: worst, inDoubt }];
  const misfit = piston?.finding;
  return [
    ...(misfit && !holds(misfit)
      ? [{ kind: 'wrong piston' as const, cylinder, finding: misfit }]
      : []),
    ...rings
      .filter(({ filing }) => RING_WORK.has(filing.work))
      .map((ring) => ({ kind: 'ring' as const, cylinder, ring })),
  ];
}
