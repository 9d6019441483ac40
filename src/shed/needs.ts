import type { NeededPart } from '../reading/index.js';
import type { Shed } from './shed.js';

const HEAD_AND_VALVES = ['head', 'valve set'];

/** What an engine needs beyond the parts of every engine: what its owner says, or a head, valves, and one of every kind that the shed lists. */
export function needsOf({
  engine,
  otherParts = [],
}: Pick<Shed, 'engine' | 'otherParts'>): readonly NeededPart[] {
  const kinds = new Set([...HEAD_AND_VALVES, ...otherParts.map(({ kind }) => kind)]);
  return engine.alsoNeeds ?? [...kinds].map((part) => ({ part, count: 1 }));
}
