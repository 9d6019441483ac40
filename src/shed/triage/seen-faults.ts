import { type Consequence, consequenceOf, type Fault, seizedBearing } from '../faults.js';
import { isFound, type Testable } from '../history.js';
import type { Part } from '../part.js';
import type { Section } from '../sections.js';
import type { Work } from '../works.js';
import type { Job, TriageReason } from './triage-types.js';

/** The consequences of the faults of a part. */
export interface SeenFaults {
  /** It is scrap. */
  readonly scrap: boolean;
  /** It is a cracked casting. */
  readonly mend: boolean;
  /** Somebody has to look how bad a fault is. */
  readonly look: boolean;
  /** The repairs that its faults ask for. */
  readonly works: readonly Work[];
  /** Faults for which every running surface must be machined. */
  readonly surface: readonly Fault[];
  /** Repairs of the whole part. */
  readonly repairs: readonly Job[];
  /** Every fault with its consequence. */
  readonly because: readonly TriageReason[];
}

/** Repairs that are one job on the whole part. Housings are counted one by one, and a face is skimmed once. */
const ONE_JOB: readonly Work[] = ['straighten', 'recut seats', 'reface valves'];

/** Works out the consequences of the faults of a part and of its places. */
export function seenFaults(
  section: Section,
  part: Part & Testable,
  places: readonly { readonly name: string; readonly faults?: readonly Fault[] }[] = [],
): SeenFaults {
  const because = [...ofWhole(section, part), ...places.flatMap(faultsOfPlace)];
  const consequences = because.map(({ consequence }) => consequence);
  const works = consequences.flatMap((each) => ('work' in each && each.work ? [each.work] : []));
  return {
    scrap: consequences.some(({ kind }) => kind === 'scrap'),
    mend: consequences.some(({ kind }) => kind === 'mend'),
    look: consequences.some(({ kind }) => kind === 'look'),
    works,
    surface: because.flatMap((reason) =>
      reason.kind === 'fault' && reason.place === undefined && reason.consequence.kind === 'machine'
        ? [reason.fault]
        : [],
    ),
    repairs: ONE_JOB.filter((work) => works.includes(work)).map((work) => ({ work, places: [] })),
    because,
  };
}

type Seen = Extract<TriageReason, { readonly consequence: Consequence }>;

/** The faults of the whole part: those that were seen, and those that a test has found. */
function ofWhole(
  section: Section,
  { faults = [], happened = [], tested = [] }: Part & Testable,
): readonly Seen[] {
  const of = (fault: Fault) => consequenceOf(section, fault, tested);
  const found = (fault: Fault, what: 'cracks' | 'softening'): readonly Seen[] => {
    if (!isFound(tested, what) || faults.includes(fault)) return [];
    return [{ kind: 'fault', fault, found: 'by a test', consequence: of(fault) }];
  };
  const seized = happened.includes('seized bearing') ? seizedBearing(section, tested) : undefined;
  return [
    ...faults.map((fault) => ({ kind: 'fault' as const, fault, consequence: of(fault) })),
    ...found('cracked', 'cracks'),
    ...found('overheated', 'softening'),
    ...(seized
      ? [{ kind: 'happened' as const, what: 'seized bearing' as const, consequence: seized }]
      : []),
  ];
}

/** The faults of one journal or bore: it must be machined. */
export function faultsOfPlace({
  name,
  faults = [],
}: {
  readonly name: string;
  readonly faults?: readonly Fault[];
}): readonly Seen[] {
  const consequence = { kind: 'machine' } as const;
  return faults.map((fault) => ({ kind: 'fault', fault, place: name, consequence }));
}

/** The faults for which one journal or bore must be machined: its own, and those of the whole part. */
export function faultsOn(
  own: readonly Fault[] | undefined,
  { surface }: SeenFaults,
): readonly Fault[] {
  return [...new Set([...(own ?? []), ...surface])];
}
