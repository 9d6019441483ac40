import type { Part, TriagedPart } from '../shed/index.js';
import { instrumentFor, isMisread, type TakenApart, undecidedUntil } from '../shed/internal.js';
import { stepMarked } from './marked-step.js';
import type { PartToMeasure } from './measure-types.js';
import type { OpenPart } from './open-search.js';
import { stepsOfSection } from './steps-for.js';

/** What is to be measured of a part that is not known. */
export function partToMeasure(
  { kind: { section }, member: { name } }: OpenPart,
  parts: readonly TriagedPart[],
  { shed, inCore }: TakenApart,
): PartToMeasure {
  const part = parts.find((each) => each.name === name);
  const core = inCore.get(name);
  const own: Part | undefined = shed[section]?.find((each) => each.name === name);
  const steps = stepsOfSection(shed, section);
  const marks = (own?.marks ?? []).filter((mark) => stepMarked(mark, steps) !== undefined);
  return {
    section,
    name,
    ...(core && { core: core.name }),
    ...(marks.length > 0 && { marks }),
    tests: part?.tests ?? [],
    measure: (part?.because ?? []).flatMap((reason) => {
      if (reason.kind !== 'not measured') return [];
      const { what, places } = reason;
      const instrument = instrumentFor(what);
      return [{ what, places, ...(instrument && { with: instrument }) }];
    }),
    again: (part?.because ?? []).filter(isMisread),
    until: (part && undecidedUntil(part)) ?? 'it is measured',
  };
}
