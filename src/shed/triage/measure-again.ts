import type { Finding } from '../../judging/index.js';
import type { InDoubt } from '../../measuring/index.js';
import { isReadTooCoarsely } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import type { AgainReason, TriageReason } from './triage-types.js';

/** What is decided on the running surfaces of a part by best estimates, and by what is known of them for sure. */
interface Compared {
  readonly of: 'rods' | 'mains' | 'bores';
  /** Its journals or bores, with their findings by all that is known of them. */
  readonly places: readonly {
    readonly name: string;
    readonly findings: readonly Finding<'length'>[];
    /** Whether it is left as it is, by the best estimate. */
    readonly isLeft: boolean;
  }[];
  /** The doubts about the plan by all that is known. */
  readonly doubts: readonly InDoubt[];
  /** Those that may serve at a smaller step. */
  readonly nearly: readonly string[];
  /** The smaller step that there is doubt about. */
  readonly step?: Length | undefined;
  /** Whether the two plans order different work. */
  readonly differs: boolean;
}

/**
 * What to measure again: shapes that the readings do not decide, where the work hangs on them, and sizes that
 * are nearer to a bound than they are measured to.
 */
export function measureAgain({
  of,
  places,
  doubts,
  nearly,
  step,
  differs,
}: Compared): readonly TriageReason[] {
  const coarse = doubts.filter(isReadTooCoarsely);
  const inDoubt = coarse.map(({ name }) => name);
  const shapes = places
    .filter(({ name, isLeft }) => isLeft || inDoubt.includes(name))
    .flatMap(({ name, findings }) =>
      findings
        .filter(({ verdict }) => verdict === 'undecided')
        .map((finding) => ({ ...finding, feature: `${name}: ${finding.feature}` })),
    );
  const bySize = coarse.filter(({ band }) => band !== undefined).map(({ name }) => name);
  const named = [...new Set([...bySize, ...nearly])];
  const isExplained = named.length > 0 || shapes.length > 0 || !differs;
  const sizes = isExplained ? named : places.map(({ name }) => name);
  return [
    ...shapes.map((finding) => ({ kind: 'measure again' as const, finding })),
    ...(sizes.length > 0
      ? [
          {
            kind: 'measure sizes again' as const,
            of,
            places: sizes,
            ...(step !== undefined && { step }),
          },
        ]
      : []),
  ];
}

/** Whether a reason says that something is to be measured again. */
export const saysAgain = (reason: TriageReason): reason is AgainReason =>
  reason.kind === 'measure again' || reason.kind === 'measure sizes again';
