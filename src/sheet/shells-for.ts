import type { ShellMatch } from '../bearings/index.js';
import { oilClearanceLimits, rankShells, wallsToSuit } from '../bearings/internal.js';
import type { GrindPlan, ServedGrindPlan } from '../crankshaft/index.js';
import { groundWithOthers, mayAllStay } from '../crankshaft/internal.js';
import type { Span } from '../judging/index.js';
import { guardBandOf, holds, spanOf } from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import { maximumMatching } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { certaintyOf, type JournalKind, own, type ShellPairs, sameStep } from '../reading/index.js';
import type { Measured } from './bearing-plan.js';
import type { FittedShells } from './inspect-fitted.js';

/** A journal that may stay at its own size. */
export interface AsItIs {
  /** That size [m]. */
  readonly undersize: Length;
  /** The shells it gets then, if the shelf has a spare pair of that size that fits. */
  readonly shells?: ShellMatch;
}

/** Hands out the pairs on the shelf. A journal that stays as it is comes first: it has no other size to go to. */
export function handOut(
  shelf: readonly ShellPairs[],
  bearings: readonly { readonly matches: readonly ShellMatch[]; readonly staysAsItIs: boolean }[],
): readonly (ShellMatch | undefined)[] {
  const inTurn = [...bearings].sort((a, b) => Number(b.staysAsItIs) - Number(a.staysAsItIs));
  const given = maximumMatching(
    inTurn.map(({ matches }) => matches),
    (match) => match.shell.name,
    new Map(shelf.map(({ name, pairs }) => [name, pairs])),
  );
  return bearings.map((bearing) => given[inTurn.indexOf(bearing)]);
}

/** The shells made for a step that fit a journal; last those found on it, where it stays and they are worn but serviceable. */
export const matchesFor = (
  step: Length,
  matches: readonly ShellMatch[],
  found: string | undefined,
): readonly ShellMatch[] => {
  const made = matches.filter(({ shell }) => sameStep(shell.undersize, step));
  const worn = made.filter(
    ({ shell, finding, fits }) => shell.name === found && !fits && holds(finding),
  );
  return [...made.filter(({ fits }) => fits), ...worn];
};

interface Bearing {
  readonly name: string;
  readonly soundAt?: Length;
  readonly fitted?: FittedShells;
}

/** How all journals may stay, each with shells of its own size, if none must be ground but to agree with the others. */
export function asAllMayStay(
  plan: GrindPlan,
  shelf: readonly ShellPairs[],
  bearings: readonly Bearing[],
  matchesNow: (place: number) => readonly ShellMatch[],
): readonly AsItIs[] {
  const sound = bearings.flatMap(({ name, soundAt: undersize }) =>
    undersize === undefined ? [] : [{ name, undersize }],
  );
  if (plan.outcome === 'none' || !mayAllStay(groundWithOthers(plan, sound))) return [];
  const sizes = bearings.map(({ soundAt }) => soundAt ?? plan.undersize);
  const given = handOut(
    shelf,
    sizes.map((undersize, i) => ({
      matches: matchesFor(undersize, matchesNow(i), bearings[i]?.fitted?.shells),
      staysAsItIs: true,
    })),
  );
  return sizes.map((undersize, i) => {
    const shells = given[i];
    return { undersize, ...(shells && { shells }) };
  });
}

/** Every kind of shell on the shelf, tried on a journal as it is; none where its housing was not measured. */
export const matchesNow = (
  measured: Measured,
  journals: JournalKind,
  shelf: readonly ShellPairs[],
): readonly ShellMatch[] =>
  ranked(sizeNow(measured.shape), measured.housingBore, shelf, clearanceLimits(measured, journals));

/** The limits of the oil clearance of a bearing, and how well it is known. */
export const clearanceLimits = ({ shape, accuracy }: Measured, journals: JournalKind) => ({
  ...own(journals.oilClearance),
  ...certaintyOf('oil clearance', accuracy, shape.largest),
});

/** Ranks every kind of shell on the shelf for one bearing. Shells that cannot fit come last; they are not an error. Without its housing bore none is told to fit. */
export function ranked(
  journal: Span<Length>,
  housingBore: Measured['housingBore'],
  shells: readonly ShellPairs[],
  limits: ReturnType<typeof own<'length'>>,
): readonly ShellMatch[] {
  if (housingBore === undefined) return [];
  const allowed = oilClearanceLimits('search', limits, journal.max);
  const plain = shells.map(({ name, undersize, wall }) => ({ name, undersize, wall }));
  return rankShells({ journal, housingBore, shells: plain }, allowed);
}

/** What the wall of shells must be that are made for a finished bearing. */
export function wallFor(
  { bearing: { name }, housingBore, shape, accuracy }: Measured,
  journals: JournalKind,
  plan: GrindPlan,
): Span<Length> | undefined {
  if (plan.outcome === 'none' || housingBore === undefined) return undefined;
  const journal = finishedJournal(plan, name, shape);
  const { limits } = oilClearanceLimits('search', own(journals.oilClearance), journal.max);
  const certainty = certaintyOf('oil clearance', accuracy, journal.max);
  const band = guardBandOf<'length'>(certainty);
  // Walls are made so that the clearance is sure to hold.
  const { min, max } = wallsToSuit(spanOf(housingBore), journal, {
    ...(limits.min !== undefined && { min: (limits.min + band) as Length }),
    ...(limits.max !== undefined && { max: (limits.max - band) as Length }),
  });
  return min !== undefined && max !== undefined && min <= max ? { min, max } : undefined;
}

export function madeFor({ shell }: ShellMatch, plan: GrindPlan): boolean {
  return plan.outcome !== 'none' && sameStep(shell.undersize, plan.undersize);
}

export const staysAsItIs = (plan: GrindPlan, name: string): boolean =>
  plan.outcome !== 'none' &&
  plan.journals.some((journal) => journal.name === name && journal.work === 'use as it is');

const sizeNow = ({ smallest, largest }: Shape): Span<Length> => ({ min: smallest, max: largest });

/** The size of the journal after the planned work. */
export const finishedJournal = (plan: ServedGrindPlan, name: string, shape: Shape): Span<Length> =>
  staysAsItIs(plan, name) ? sizeNow(shape) : plan.target;
