import type { NeededPart } from '../reading/index.js';
import { type Assembly, partsTaken } from './assembly.js';
import type { Brief } from './brief.js';
import type { Batch, Draft } from './draft.js';
import type { Kind, Member } from './kinds.js';
import { type Row, type Term, upTo } from './model.js';
import { MOST_WASHERS } from './thrust.js';

// Parts that fit only with others.

/**
 * Rows: a batch takes no more of the parts that fit only with others than go with those it takes. For a batch of one
 * engine this is exact; several engines may still have the two apart.
 */
export function companyRows(draft: Draft, { engine, needed }: Brief, batch: Batch): readonly Row[] {
  const kinds = [...draft.taken.keys()];
  const termsOf = (kind: Kind<unknown>) => draft.termsOf(draft.taken.get(kind) ?? [], batch);
  return kinds.flatMap((kind): readonly Row[] => {
    const { onlyWith } = kind;
    if (onlyWith === undefined) return [];
    const its = termsOf(kind);
    if (its.length === 0) return [];
    const most = mostInOne(kind, engine, needed);
    const mates = kinds.filter((other) => isOneOf(other, onlyWith)).flatMap(termsOf);
    const terms = [...its, ...mates.map(([variable, count]): Term => [variable, -most * count])];
    return [upTo(terms, 0)];
  });
}

/** What a part fits only with is a kind of its own. */
const isOneOf = ({ members }: Kind<unknown>, names: readonly string[]): boolean =>
  members.some(({ name }) => names.includes(name));

/** The most parts of a kind that one engine takes. */
function mostInOne(
  { section, ready }: Kind<unknown>,
  { cylinders, mains }: Brief['engine'],
  needed: readonly NeededPart[],
): number {
  switch (section) {
    case 'rods':
      return cylinders;
    case 'shells':
      return cylinders + mains;
    case 'thrustWashers':
      return MOST_WASHERS;
    case 'otherParts':
      return countNeeded(needed, (ready as { readonly of: string }).of);
    default:
      return 1;
  }
}

/** How many of a kind of other part an engine needs. */
export const countNeeded = (needed: readonly NeededPart[], of: string): number =>
  needed.find(({ part }) => part === of)?.count ?? 0;

/** Whether every part of an engine that fits only with others has one of them there. */
export function isInCompany(assembly: Assembly): boolean {
  const parts = partsTaken(assembly);
  // A missing part has no name.
  const names = new Set(parts.map(({ member }: { readonly member?: Member }) => member?.name));
  return parts.every(({ kind }) => kind.onlyWith?.some((mate) => names.has(mate)) ?? true);
}
