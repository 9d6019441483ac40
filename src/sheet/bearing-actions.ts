import type { ShellMatch } from '../bearings/index.js';
import { holds } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { sameStep } from '../reading/index.js';
import type { Action } from './action-types.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import { isInterference, mismatchOf } from './inspect-fitted.js';
import type { NotFilledIn } from './sheet.js';
import type { WhenShells } from './shell-action-types.js';
import { hasWork, leftOutOf, misreadIn, unsettledOf, waitFor } from './waiting.js';

/** Work on the crankshaft and its shells, mains before rods. Nothing is decided on one that was misread; nothing is machined on one that is bent or past saving. */
export function bearingActions(
  all: readonly BearingGroupReport[],
  notFilledIn: NotFilledIn = {},
): readonly Action[] {
  const misread = misreadIn(all);
  if (misread.length > 0) return all.some(hasWork) ? waitFor('crankshaft', misread, true) : [];
  const [held, groups] = [all.filter(isHeld), all.filter((group) => !isHeld(group))];
  const waiting = [
    ...held.flatMap((group) => waitFor(group.kind, unsettledOf(group), true)),
    ...groups
      .filter(hasWork)
      .flatMap(({ kind }) => waitFor(kind, leftOutOf(notFilledIn, kind), false)),
  ];
  const bent = all.flatMap(({ bearings }) => bearings.flatMap(bentActions));
  const lost = all.flatMap(({ kind: journals, plan }): Action[] =>
    plan.outcome === 'none'
      ? [
          {
            kind: 'no step serves',
            journals,
            defeatedBy: plan.defeatedBy,
            ...(plan.nearly && { nearly: plan.nearly }),
          },
        ]
      : [],
  );
  // How a bent one cleans up is told by what is read once it is straight.
  const mayBeBent = all.some(({ bearings }) => bearings.some((each) => each.bent));
  if (mayBeBent) return bent;
  if (lost.length > 0) return lost;
  const buying = groups.flatMap(buyActions);
  const isOpen = (group: BearingGroupReport) => whenOf(group) === 'if ground';
  const [open, orders] = [groups.filter(isOpen), groups.filter((group) => !isOpen(group))];
  const grinding = orders.flatMap(grindActions);
  const bare = groups.flatMap(({ bearings }) =>
    bearings.filter(({ withoutHousing }) => withoutHousing).map(({ name }) => name),
  );
  return [
    ...waiting,
    ...(bare.length > 0 ? [{ kind: 'measure the housing' as const, bearings: bare }] : []),
    ...(open.length > 0 || grinding.length > 0 || buying.length > 0
      ? [{ kind: 'compare the housings' as const, journals: groups.map(({ kind }) => kind) }]
      : []),
    // Where it is open whether anything is ground, that is said before shells are bought for the ground size.
    ...open.flatMap((group) => [...grindActions(group), ...asItIsActions(group)]),
    ...buying,
    ...grinding,
    ...groups.flatMap((group) => {
      const fits = group.bearings.flatMap((bearing) =>
        shellsToFit(bearing, bearing.shells, whenOf(group)),
      );
      // Shells that stay where they are found are told only beside other work on the shaft.
      return hasWork(group) || fits.some(({ wereFound }) => !wereFound) ? fits : [];
    }),
  ];
}

/** Whether journals are not ground, and no shells are bought for them, before a reading is settled. */
const isHeld = (group: BearingGroupReport): boolean =>
  hasWork(group) && unsettledOf(group).length > 0;

/** Readings to take again, journal by journal. */
export const readAgainActions = (
  parts: readonly Pick<BearingReport, 'name' | 'readAgain'>[],
): readonly Action[] =>
  parts.flatMap(({ name: part, readAgain = [] }) =>
    readAgain.map((odd) => ({ kind: 'read again' as const, part, odd })),
  );

/** Journals that read round, but at no step. */
export const oddSizeActions = ({ bearings }: BearingGroupReport): readonly Action[] =>
  bearings.flatMap(({ name: bearing, oddSize: below, readAgain }) =>
    below === undefined || readAgain ? [] : [{ kind: 'odd size' as const, bearing, below }],
  );

function bentActions({ name: bearing, bent }: BearingReport): Action[] {
  return bent && bent.verdict !== 'undecided'
    ? [{ kind: 'bent crankshaft', bearing, finding: bent }]
    : [];
}

/** Actions for the shells that were found in the bearings. */
export function fittedShellActions({ plan, bearings }: BearingGroupReport): Action[] {
  return bearings.flatMap(({ name: bearing, fitted, readAgain }): Action[] => {
    if (fitted === undefined || readAgain) return [];
    const { shells, undersize, explanation, agrees, housingToBlame } = fitted;
    const { finding } = explanation;
    if (housingToBlame !== undefined) {
      return [{ kind: 'check the housing', bearing, outOfRound: housingToBlame, finding }];
    }
    if (isInterference(fitted)) return [{ kind: 'wrong clearance', bearing, finding }];
    if (!agrees) return [{ kind: 'check sizes', bearing, finding }];
    if ('mismatch' in explanation) {
      const journalUndersize = (undersize + mismatchOf(explanation)) as Length;
      return [{ kind: 'wrong shells', bearing, shells, undersize, journalUndersize, explanation }];
    }
    // If the journals are ground, they get other shells anyway.
    const isSettled = finding.verdict !== 'undecided';
    if (plan.outcome !== 'use as it is' || holds(finding) || !isSettled) return [];
    return [{ kind: 'wrong clearance', bearing, finding }];
  });
}

/** Whether all may stay as they are, each with shells of its own size. */
const isChoice = ({ bearings }: BearingGroupReport): boolean =>
  bearings.some(({ asItIs }) => asItIs !== undefined);

/** Whether shells for the step are needed, or only if the journals are ground to it. */
function whenOf(group: BearingGroupReport): WhenShells {
  const { plan } = group;
  const isInDoubt =
    plan.outcome === 'grind' && (plan.inDoubt !== undefined || plan.nearly !== undefined);
  return isInDoubt || isChoice(group) ? 'if ground' : 'in any case';
}

/** Shells come before the wheel: an old engine may have none of that undersize. */
function buyActions(group: BearingGroupReport): Action[] {
  const { kind: journals, plan, pairsToBuy: pairs, bearings } = group;
  if (plan.outcome === 'none' || pairs === 0) return [];
  if (bearings.some(({ mayFit }) => mayFit)) return [];
  const walls = bearings.flatMap(({ name: bearing, wallToSuit: wall }) =>
    wall ? [{ bearing, wall }] : [],
  );
  const { undersize, outcome } = plan;
  const [when, isGround] = [whenOf(group), outcome === 'grind'];
  const shells = { journals, undersize, pairs, when, isGround, walls, ...hangsOn(group) };
  return [{ kind: 'buy shells', ...shells }];
}

/** The journals that were found ground to the step, in shells of another: the step hangs on what is to be read again there. */
function hangsOn({ plan, bearings }: BearingGroupReport) {
  if (plan.outcome !== 'grind') return undefined;
  const ground = bearings.filter(
    ({ fitted, undersize }) =>
      fitted !== undefined &&
      undersize !== undefined &&
      sameStep(undersize, plan.undersize) &&
      mismatchOf(fitted.explanation) > 0,
  );
  return ground.length > 0 && { hangsOn: ground.map(({ name }) => name) };
}

/** Shells for journals that may all stay, each at its size. */
function asItIsActions({ kind: journals, bearings }: BearingGroupReport): Action[] {
  const when = 'if none is ground';
  const bare = bearings.flatMap(({ asItIs, withoutHousing }) =>
    asItIs && !asItIs.shells && !withoutHousing ? [asItIs.undersize] : [],
  );
  return [
    ...[...new Set(bare)].map((undersize): Action => {
      const pairs = bare.filter((each) => each === undersize).length;
      return { kind: 'buy shells', journals, undersize, pairs, when, isGround: false, walls: [] };
    }),
    ...bearings.flatMap((bearing) => shellsToFit(bearing, bearing.asItIs?.shells, when)),
  ];
}

function grindActions(group: BearingGroupReport): Action[] {
  const { kind: journals, plan, bearings, byRule } = group;
  if (plan.outcome !== 'grind') return [];
  const sound = bearings.flatMap(({ name, soundAt }) =>
    soundAt === undefined ? [] : [{ name, undersize: soundAt }],
  );
  return [{ kind: 'grind', journals, plan, sound, ...(byRule && { byRule }), ...hangsOn(group) }];
}

type FitShells = Extract<Action, { readonly kind: 'fit shells' }>;

function shellsToFit(
  { name, fitted }: BearingReport,
  match: ShellMatch | undefined,
  when: WhenShells,
): readonly FitShells[] {
  if (match === undefined) return [];
  const wereFound = match.shell.name === fitted?.shells;
  return [{ kind: 'fit shells', bearing: name, match, when, wereFound }];
}
