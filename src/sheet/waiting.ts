import type { Inspection } from './inspect.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import { isInterference } from './inspect-fitted.js';
import type { NotFilledIn } from './sheet.js';

/** Work that waits for readings, so that no metal is cut and no money spent on a wrong one. */
export interface Wait {
  /** Nothing is machined or bought for these yet. */
  readonly kind: 'wait';
  /** For what. */
  readonly work: 'crankshaft' | 'rods' | 'mains' | 'cylinders';
  /** What was misread, or is not measured yet. */
  readonly until: readonly string[];
  /** Whether these are to be read again; otherwise they were not measured at all. */
  readonly again: boolean;
}

/** Whether readings must be settled before metal is cut or shells are bought for a bearing. */
export const isUnsettled = ({ fitted }: BearingReport): boolean =>
  fitted !== undefined &&
  (fitted.housingToBlame !== undefined || !fitted.agrees || isInterference(fitted));

const misreadOf = (parts: readonly Misreadable[]): readonly string[] =>
  parts
    .filter(({ readAgain, oddSize }) => readAgain || oddSize !== undefined)
    .map(({ name }) => name);

type Misreadable = Pick<BearingReport, 'name' | 'readAgain' | 'oddSize'>;

/** The journals of a crankshaft that were misread: nothing on it is decided before they are read again. */
export const misreadIn = (groups: readonly BearingGroupReport[]): readonly string[] =>
  groups.flatMap(({ bearings }) => misreadOf(bearings));

/** What must be read again before journals of one kind are ground, and shells are bought for them. */
export const unsettledOf = ({ bearings }: BearingGroupReport): readonly string[] =>
  bearings.filter(isUnsettled).map(({ name }) => name);

/** Whether there is work that could wait. */
export const hasWork = ({ plan, pairsToBuy }: BearingGroupReport): boolean =>
  plan.outcome === 'grind' || (plan.outcome !== 'none' && pairsToBuy > 0);

/** Bores that were misread. */
export const misreadBores = ({ cylinders }: Pick<Inspection, 'cylinders'>): readonly string[] =>
  misreadOf(cylinders);

/** The pistons that read as none of their bores does. */
export const oddPistons = (cylinders: Inspection['cylinders']): readonly string[] =>
  cylinders.flatMap(({ name, piston }) => (piston?.readAgain ? [`the piston of ${name}`] : []));

/** The names of what a sheet leaves out. */
export const leftOutOf = (
  notFilledIn: NotFilledIn | undefined,
  list: keyof NotFilledIn,
): readonly string[] => (notFilledIn?.[list] ?? []).map(({ name }) => name);

/** That work waits until something is read again, or measured at all; nothing if there is nothing to wait for. */
export const waitFor = (
  work: Wait['work'],
  until: readonly string[],
  again: boolean,
): readonly Wait[] => (until.length === 0 ? [] : [{ kind: 'wait', work, until, again }]);
