import type { Core, TriagedPart } from '../shed/index.js';
import { instrumentFor, undecidedUntil } from '../shed/internal.js';
import type { PartToMeasure } from './measure-types.js';
import type { OpenPart } from './open-search.js';

/** What is to be measured of a part that is not known. */
export function partToMeasure(
  { kind: { section }, member: { name } }: OpenPart,
  parts: readonly TriagedPart[],
  inCore: ReadonlyMap<string, Core>,
): PartToMeasure {
  const part = parts.find((each) => each.name === name);
  const core = inCore.get(name);
  return {
    section,
    name,
    ...(core && { core: core.name }),
    measure: (part?.because ?? []).flatMap((reason) => {
      if (reason.kind !== 'not measured') return [];
      const { what, places } = reason;
      const instrument = instrumentFor(what);
      return [{ what, places, ...(instrument && { with: instrument }) }];
    }),
    until: (part && undecidedUntil(part)) ?? 'it is measured',
  };
}
