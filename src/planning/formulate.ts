import type { Brief } from './brief.js';
import { companyRows } from './company.js';
import { type Batch, Draft } from './draft.js';
import { bottomEnds } from './formulate-bottom.js';
import { rodsOnJournals } from './formulate-rods.js';
import { topEnds } from './formulate-top.js';
import { type Row, type Term, upTo } from './model.js';

/**
 * Puts all builds into one model of whole numbers. The model does not number the engines: it counts
 * how many parts of a kind go each way, so its size grows with the kinds of parts, not with their
 * number. Parts of an engine meet in places, where as many must come in as go out.
 */
export function formulate(brief: Brief): Draft {
  const draft = new Draft();
  for (const batch of brief.batches) {
    brief.clock?.check();
    bottomEnds(draft, brief, batch);
    rodsOnJournals(draft, brief, batch);
    topEnds(draft, brief, batch);
  }
  draft.close(brief.batches.flatMap((batch) => limits(draft, brief, batch)));
  return draft;
}

/**
 * Limits the cost of a batch: n engines together cost at most n times the limit. For a batch of one
 * engine this is exact. Of several such batches, the first is built first.
 */
function limits(draft: Draft, brief: Brief, batch: Batch): readonly Row[] {
  const { batches, mostPerEngine } = brief;
  const engines = draft.termsOf(draft.engines, batch);
  const cost = draft.termsOf(draft.cost, batch);
  const before = batches.find(
    ({ index, interchange }) => index === batch.index - 1 && interchange === batch.interchange,
  );
  return [
    ...(mostPerEngine === undefined ? [] : [upTo([...cost, ...times(engines, -mostPerEngine)], 0)]),
    ...(batch.single ? [upTo(engines, 1)] : []),
    ...(batch.single && before
      ? [upTo([...engines, ...times(draft.termsOf(draft.engines, before), -1)], 0)]
      : []),
    ...companyRows(draft, brief, batch),
  ];
}

const times = (terms: readonly Term[], factor: number): readonly Term[] =>
  terms.map(([variable, coefficient]) => [variable, coefficient * factor]);
