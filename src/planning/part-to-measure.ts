import type { Shed, TriagedPart } from '../shed/index.js';
import { instrumentFor, undecidedUntil } from '../shed/internal.js';
import type { PartToMeasure } from './measure-types.js';
import type { OpenPart } from './open-search.js';

/** What is to be measured of a part that is not known. */
export function partToMeasure(
  { kind: { section }, member: { name, from } }: OpenPart,
  parts: readonly TriagedPart[],
  { cores = [] }: Shed,
): PartToMeasure {
  const part = parts.find((each) => each.name === name);
  const isIn = cores.some((core) => core.name === from) && name.endsWith(` of ${from}`);
  return {
    section,
    name,
    ...(isIn && from !== undefined && { core: from }),
    measure: (part?.because ?? []).flatMap((reason) => {
      if (reason.kind !== 'not measured') return [];
      const { what, places } = reason;
      const instrument = instrumentFor(what);
      return [{ what, places, ...(instrument && { with: instrument }) }];
    }),
    until: (part && undecidedUntil(part)) ?? 'it is measured',
  };
}
