import { consequenceOf, type Fault } from '../faults.js';
import type { Section } from '../sections.js';
import type { Part } from '../shed.js';
import type { Job, TriageReason } from './triage-types.js';

/** The consequences of the faults of a part. */
export interface SeenFaults {
  /** It is scrap. */
  readonly scrap: boolean;
  /** It must be straightened, so its old runout no longer counts. */
  readonly straightened: boolean;
  /** All its housings must be resized. */
  readonly spun: boolean;
  /** Faults for which every running surface must be machined. */
  readonly surface: readonly Fault[];
  /** Repairs of the whole part. */
  readonly repairs: readonly Job[];
  /** Every fault with its consequence. */
  readonly because: readonly TriageReason[];
}

/** Works out the consequences of the faults of a part and of its places. */
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
    // Resizing is counted housing by housing, and a face is skimmed once for all its faults.
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

/** The faults for which one journal or bore must be machined: its own, and those of the whole part. */
export function faultsOn(
  own: readonly Fault[] | undefined,
  { surface }: SeenFaults,
): readonly Fault[] {
  return [...new Set([...(own ?? []), ...surface])];
}
