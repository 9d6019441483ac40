import type { Brief } from './brief.js';
import { Draft } from './draft.js';
import { bottomEnds } from './formulate-bottom.js';
import { rodsOnJournals } from './formulate-rods.js';
import { topEnds } from './formulate-top.js';
import type { Row, Term } from './model.js';

export { type Brief, needsOf } from './brief.js';

/**
 * Puts all builds into one model of whole numbers. It does not tell one engine
 * from the next: it counts how many parts of a kind go each way, so that it
 * grows with the kinds of parts and not with how many there are. Parts that an
 * engine needs meet in places where as many must come in as go out.
 */
export function formulate(brief: Brief): Draft {
  const draft = new Draft();
  for (const batch of brief.batches) {
    bottomEnds(draft, brief, batch);
    rodsOnJournals(draft, brief, batch);
    topEnds(draft, brief, batch);
  }
  draft.close(brief.mostPerEngine === undefined ? [] : oneByOne(draft, brief, brief.mostPerEngine));
  return draft;
}

/** Every batch is one engine at the most, and its cost is held; of batches alike the first is built first. */
function oneByOne(draft: Draft, { batches }: Brief, mostPerEngine: number): readonly Row[] {
  return batches.flatMap((batch): readonly Row[] => {
    const engines = draft.termsOf(draft.engines, batch);
    const cost = draft.termsOf(draft.cost, batch);
    const before = batches.find(
      ({ index, interchange }) => index === batch.index - 1 && interchange === batch.interchange,
    );
    return [
      { terms: engines, min: 0, max: 1 },
      { terms: [...cost, ...times(engines, -mostPerEngine)], min: -Infinity, max: 0 },
      ...(before
        ? [
            {
              terms: [...engines, ...times(draft.termsOf(draft.engines, before), -1)],
              min: -Infinity,
              max: 0,
            },
          ]
        : []),
    ];
  });
}

const times = (terms: readonly Term[], factor: number): readonly Term[] =>
  terms.map(([variable, coefficient]) => [variable, coefficient * factor]);
