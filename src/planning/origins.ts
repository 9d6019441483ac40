import type { Draft } from './draft.js';
import type { Term } from './model.js';

/** The parts whose origin is not that of the block they go with: terms of a model of one engine for each block. */
export function strangers(draft: Draft): readonly Term[] {
  const fromOf = new Map<string, string | undefined>();
  for (const kind of draft.taken.keys()) {
    if (kind.section !== 'blocks') continue;
    for (const { name, from } of kind.members) fromOf.set(name, from);
  }
  return [...draft.taken].flatMap(([kind, terms]) =>
    kind.section === 'blocks'
      ? []
      : terms.filter(([variable]) => {
          const { block = '' } = draft.uses[variable]?.batch ?? {};
          return kind.members[0]?.from !== fromOf.get(block);
        }),
  );
}

/** How far parts are from the order of the file: later parts, and parts in an order other than that of their blocks. */
export function outOfOrder(draft: Draft): readonly Term[] {
  const seen = new Map<string, number>();
  return [...draft.taken].flatMap(([kind, terms]) => {
    const place = (seen.get(kind.section) ?? 0) + 1;
    seen.set(kind.section, place);
    return terms.map(([variable, count]): Term => {
      const after = draft.uses[variable]?.batch.index ?? 0;
      return [variable, count * place * (100 - after)];
    });
  });
}
