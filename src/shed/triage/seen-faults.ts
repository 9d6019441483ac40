import { consequenceOf, type Fault } from '../faults.js';
import type { Section } from '../sections.js';
import type { Part } from '../shed.js';
import type { Job, TriageReason } from './triage-types.js';

/** What follows from the faults of a part. */
export interface SeenFaults {
  /** It is past use. */
  readonly scrap: boolean;
  /** It is straightened, so that what was read of its runout no longer holds. */
  readonly straightened: boolean;
  /** Its housings are resized, all of them. */
  readonly spun: boolean;
  /** Faults that no running surface of it can be used with. */
  readonly surface: readonly Fault[];
  /** Repairs of the whole part. */
  readonly repairs: readonly Job[];
  /** Every fault with what follows. */
  readonly because: readonly TriageReason[];
}

/** Works out what follows from the faults of a part, and of its places. */
export function seenFaults(
  section: Section,
  part: Part,
  places: readonly { readonly name: string; readonly faults?: readonly Fault[] }[] = [],
): SeenFaults {
  const faults = part.faults ?? [];
  const seen = faults.map((fault) => ({ fault, consequence: consequenceOf(section, fault) }));
  const works = seen.flatMap(({ consequence }) =>
    consequence.kind === 'repair' ? [consequence.work] : [],
  );
  return {
    scrap: seen.some(({ consequence }) => consequence.kind === 'scrap'),
    straightened: works.includes('straighten'),
    spun: works.includes('resize housings'),
    surface: seen.flatMap(({ fault, consequence }) =>
      consequence.kind === 'machine' ? [fault] : [],
    ),
    // Housings are resized one by one, and a face is skimmed once whatever is wrong with it.
    repairs: works.includes('straighten') ? [{ work: 'straighten', places: [] }] : [],
    because: [
      ...seen.map(({ fault, consequence }) => ({ kind: 'fault' as const, fault, consequence })),
      ...places.flatMap(({ name, faults: on = [] }) =>
        on.map((fault) => ({
          kind: 'fault' as const,
          fault,
          place: name,
          consequence: { kind: 'machine' as const },
        })),
      ),
    ],
  };
}

/** The faults that one journal or bore cannot be used with: its own, and those of the whole part. */
export function faultsOn(
  own: readonly Fault[] | undefined,
  { surface }: SeenFaults,
): readonly Fault[] {
  return [...new Set([...(own ?? []), ...surface])];
}
