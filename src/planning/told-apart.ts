import type { Batch } from './draft.js';
import type { Kind, Member } from './kinds.js';
import { kindsFrom, kindsIn } from './kinds-in.js';
import type { Stock } from './stock.js';

/**
 * A stock in which parts are of one kind only if an owner would not tell them apart either: they have the same origin
 * and make, and belong to the same part. Every block is a kind of its own, and so is what another part belongs to.
 */
export function toldApart(stock: Stock): Stock {
  const named = new Set(
    kindsIn(stock).flatMap(({ members }) => members.flatMap(({ belongsTo }) => belongsTo ?? [])),
  );
  const keyOf = (section: Kind<unknown>['section'], member: Member) => {
    const { name, from, belongsTo, make, homeMade } = member;
    const isAlone = section === 'blocks' || named.has(name);
    return JSON.stringify([isAlone && name, from, belongsTo, make, homeMade]);
  };
  return kindsFrom(stock, (kind) => {
    const groups = new Map<string, Member[]>();
    for (const member of kind.members) {
      const key = keyOf(kind.section, member);
      groups.set(key, [...(groups.get(key) ?? []), member]);
    }
    return [...groups.values()].map((members) => ({
      ...kind,
      members,
      count: members.reduce((sum, { count }) => sum + count, 0),
    }));
  });
}

/** A batch of one engine for each block, and for each interchange group that it can be built in. */
export function batchesByBlock({ blocks }: Stock, together: readonly Batch[]): readonly Batch[] {
  const groups = [...new Set(together.map(({ interchange }) => interchange))];
  return blocks
    .flatMap(({ members, interchange: fits }) =>
      groups
        .filter((group) => fits === undefined || fits.includes(group ?? ''))
        .map((interchange) => ({ block: members[0]?.name ?? '', interchange })),
    )
    .map(({ block, interchange }, index) => ({
      index,
      block,
      ...(interchange !== undefined && { interchange }),
    }));
}
