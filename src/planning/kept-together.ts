import type { Batch, Draft } from './draft.js';
import type { Kind } from './kinds.js';
import type { Term } from './model.js';

/**
 * Parts that are not with the part, or in the engine, that they belong to: each engine that has one of the two without
 * the other counts. It adds the variables that count them to a model of one engine for each block.
 */
export function apartFromTheirs(draft: Draft): readonly Term[] {
  const kinds = [...draft.taken.keys()];
  return kinds.flatMap((kind) => {
    const theirs = kind.members[0]?.belongsTo;
    if (theirs === undefined) return [];
    const other = kinds.find(({ members }) => members.some(({ name }) => name === theirs));
    return enginesIn(draft).flatMap(({ batch, origin }) => {
      const here = termsIn(draft, kind, batch);
      if (other) {
        const there = termsIn(draft, other, batch);
        return [
          ...without(draft, here, there, kind.count),
          ...without(draft, there, here, other.count),
        ];
      }
      return origin === theirs ? [] : here;
    });
  });
}

/** The batches of a model of one engine for each block, with what is known of the blocks' engines. */
export function enginesIn({ uses }: Draft): readonly {
  readonly batch: Batch;
  readonly origin: string | undefined;
  readonly ran: boolean;
}[] {
  const blocks = new Map(
    uses.flatMap((use) => (use.use === 'block' ? [[use.batch, use.kind.members[0]] as const] : [])),
  );
  return [...blocks].map(([batch, block]) => ({
    batch,
    origin: block?.from,
    ran: block?.ran ?? false,
  }));
}

/** The terms of one kind that belong to one batch. */
export const termsIn = (draft: Draft, kind: Kind<unknown>, batch: Batch): readonly Term[] =>
  draft.termsOf(draft.taken.get(kind) ?? [], batch);

/** How many of some parts an engine has that has none of others: a new variable. */
function without(
  draft: Draft,
  some: readonly Term[],
  others: readonly Term[],
  most: number,
): readonly Term[] {
  const variable = draft.model.variable(most);
  const negative = (terms: readonly Term[], by: number) =>
    terms.map(([i, count]): Term => [i, -by * count]);
  draft.model.rows.push({
    terms: [...some, ...negative(others, most), [variable, -1]],
    min: -Infinity,
    max: 0,
  });
  return [[variable, 1]];
}
