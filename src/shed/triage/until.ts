import type { Misread } from './misread-types.js';
import type { TriagedPart, TriageReason } from './triage-types.js';

/** What must be known before anything is decided on a part. */
export type Until =
  | 'it is measured'
  | 'the odd reading is taken again'
  | 'it is measured better'
  | 'it is straightened and measured'
  | 'it is looked over'
  | 'it is known which bearing seized';

const MISREAD: readonly TriageReason['kind'][] = [
  'read again',
  'readings apart',
  'at no step',
  'as large as its bore',
  'far under its bore',
  'apart from its set',
];

/** Whether a reason is a reading that can hardly be right. */
export const isMisread = (reason: TriageReason): reason is Misread => MISREAD.includes(reason.kind);

/** What must be known of a part that is undecided; undefined of any other. */
export function undecidedUntil({
  disposition,
  section,
  because,
}: Pick<TriagedPart, 'disposition' | 'section' | 'because'>): Until | undefined {
  if (disposition !== 'undecided') return undefined;
  if (because.some((why) => isMisread(why) || why.kind === 'too far off'))
    return 'the odd reading is taken again';
  if (because.some(({ kind }) => kind === 'not measured')) return 'it is measured';
  if (because.some((why) => why.kind === 'fault' && why.consequence.kind === 'look'))
    return 'it is looked over';
  const isNear = because.some(
    (why) =>
      why.kind === 'measure again' ||
      (why.kind === 'journals' && why.plan.outcome === 'none' && why.plan.nearly !== undefined),
  );
  if (isNear) return 'it is measured better';
  return section === 'rods'
    ? 'it is known which bearing seized'
    : 'it is straightened and measured';
}
