import type { Shed } from '../shed/index.js';
import { needsOf } from '../shed/internal.js';
import type { Complete } from './order-types.js';

/** What an engine of a shed is complete with, and the kinds of other parts that are not counted. */
export function completeOf(shed: Shed): Complete {
  const needs = needsOf(shed);
  const kinds = [...new Set((shed.otherParts ?? []).map(({ kind }) => kind))];
  return {
    needs,
    notNeeded: kinds.filter((kind) => needs.every(({ part }) => part !== kind)),
  };
}

/** What goes without saying. */
const PLAIN = ['head', 'valve set'];

/** `Complete means: block, …, shells, head, valve set, magneto.` and what is not counted. Empty if that goes without saying. */
export function sayComplete({ needs, notNeeded }: Complete): readonly string[] {
  const also = needs.map(({ part, count }) => (count === 1 ? part : `${count} × ${part}`));
  if (needs.every(({ part }) => PLAIN.includes(part)) && notNeeded.length === 0) return [];
  const all = ['block', 'crankshaft', 'rods', 'pistons', 'rings', 'shells', ...also];
  const left =
    notNeeded.length === 0
      ? ''
      : ` Not counted, as the engine is not said to need it: ${notNeeded.join(', ')}; add it to engine.alsoNeeds if it does.`;
  return [`Complete means: ${all.join(', ')}.${left}`];
}
