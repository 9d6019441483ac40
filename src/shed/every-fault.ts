import type { Fault } from './faults.js';
import type { Part } from './part.js';
import type { BlockPart, CrankshaftPart } from './shed.js';

/** Every fault that is listed of a part and of its journals or bores, each once. */
export function everyFault(
  part: Part & Pick<CrankshaftPart, 'mainJournals' | 'rodJournals'> & Pick<BlockPart, 'bores'>,
): readonly Fault[] {
  const { mainJournals = [], rodJournals = [], bores = [] } = part;
  const all = [part, ...mainJournals, ...rodJournals, ...bores];
  return [...new Set(all.flatMap(({ faults = [] }) => faults))];
}
