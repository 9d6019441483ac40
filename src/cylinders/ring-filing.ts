import {
  type BasedLimits,
  type Finding,
  judge,
  type Limits,
  type OwnLimits,
  type Span,
} from '../judging/index.js';
import {
  guardBandOf,
  guardFields,
  guardLength,
  ownLimitsOr,
  type WithTarget,
} from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { ringGap } from './domains.js';
import {
  gapAt,
  guardMeasured,
  guardSameBore,
  type MeasuredRingGap,
  recommendedRingGap,
} from './ring-gap.js';

const RING_TO_FIT = [
  'gap',
  'measuredIn',
  'smallestBore',
  'largestBore',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/** What to do with a ring whose gap was measured. */
export type RingFiling =
  | {
      /**
       * Within the limits all along the bore; or too wide by the caller's where the bore is smallest
       * already, so that the ring is worn or is not for this bore, and it cannot be filed longer.
       * Or wider than the rule of thumb, which is of new rings and condemns none. Or nearer to a limit than it
       * is measured to.
       */
      readonly work: 'fit as it is' | 'measure again' | 'use another ring' | 'wider than a new fit';
      /** The gap that decides against its limits; its feature names the place. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Right where the bore is smallest, and by the caller's limits too wide where it is largest: the ring is not to blame. */
      readonly work: 'bore is worn';
      /** The gap where the bore is largest against its limits. */
      readonly finding: Finding<'length'>;
      /** Gaps where the bore is smallest that keep within the limits all along it; absent if none is known to [m]. */
      readonly serves?: Span<Length>;
    }
  | {
      /** The ends must be filed, or they butt. */
      readonly work: 'file';
      /** The gap where the bore is smallest against its limits. */
      readonly finding: Finding<'length'>;
      /** Metal to take off the ends, both together: at least, and if the limits say so at most [m]. */
      readonly remove: Limits<Length> & Pick<Span<Length>, 'min'>;
      /** The gap where the bore is largest once the least is off, if it is too wide then: the bore is worn. */
      readonly worn?: Finding<'length'>;
    };

/**
 * Whether the ends of a ring must be filed, and by how much. The gap is judged at both ends
 * of the travel: where the bore is smallest it must not be too tight, or the ends butt; where
 * it is largest not too wide. A gap that is too wide only there comes from wear of the bore.
 *
 *     g = gap + π * (smallestBore - measuredIn)
 *     remove.min = limits.min - g
 *
 * @param ring - the gap, the bore it was measured in, the smallest and the largest bore it will travel, and the
 * maker's limits if they are known [m]
 * @returns what to do, with the gap that decides against its limits
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bores are not
 * of one cylinder, the largest is below the smallest, or the limits have no bound
 * @see Source: the default limits are common practice
 * @example
 * ```ts
 * const filing = ringFilingNeeded({ gap: thou(5), measuredIn: inch(3) });
 * filing.work; // "file"
 * filing.work === 'file' && format(filing.remove.min, thou); // "4.0 thou"
 * const limits = { min: thou(9), max: thou(20) };
 * ringFilingNeeded({ gap: thou(12), measuredIn: inch(3), largestBore: inch(3.004), limits }).work; // "bore is worn"
 * ```
 */
export function ringFilingNeeded(
  ring: MeasuredRingGap &
    OwnLimits<'length'> & {
      /** Smallest diameter of the ring's travel; by default where the gap was measured [m]. */
      readonly smallestBore?: Length;
      /** Largest diameter of the ring's travel; by default the smallest [m]. */
      readonly largestBore?: Length;
    },
): RingFiling {
  guardFields('ring', ring as WithTarget<typeof ring>, RING_TO_FIT);
  const { gap, measuredIn } = guardMeasured(ring);
  const { smallestBore = measuredIn } = ring;
  const smallest = guardSameBore('smallestBore', smallestBore, measuredIn);
  const { largestBore = smallest } = ring;
  const largest = guardSameBore('largestBore', largestBore, measuredIn);
  if (largest < smallest) throw belowSmallest(largest);
  const allowed = ringGapLimits('ring', ring, smallest);
  const { limits } = allowed;
  const judgeAt = (end: 'smallest' | 'largest', value: number) => {
    const feature = largest > smallest ? `ring gap at the ${end} bore` : 'ring gap';
    return judge({ feature, dimension: 'length', value: value as Length, ...allowed });
  };
  const [tight, wide] = [gapAt(gap, measuredIn, smallest), gapAt(gap, measuredIn, largest)];
  const [atSmallest, atLargest] = [judgeAt('smallest', tight), judgeAt('largest', wide)];
  const { min, max } = limits;
  const tooWide = ring.limits ? 'use another ring' : 'wider than a new fit';

  if (atSmallest.verdict === 'above') return { work: tooWide, finding: atSmallest };
  if (atSmallest.verdict === 'below' && min !== undefined) {
    // Metal that is off does not come back, and butting ends break: what is not known of the gap is allowed for.
    const band = guardBandOf<'length'>(allowed);
    const least = (min + band - tight) as Length;
    const filed = judgeAt('largest', wide + least);
    const isWorn = filed.verdict === 'above';
    // Where the worn end allows nothing, what the smallest place allows is all that can be said.
    const most = max && (isWorn ? max - tight : Math.max(least, max - band - wide));
    const remove = { min: least, ...(most !== undefined && { max: most as Length }) };
    return { work: 'file', finding: atSmallest, remove, ...(isWorn && { worn: filed }) };
  }
  if (atLargest.verdict === 'above') {
    if (!ring.limits) return { work: tooWide, finding: atLargest };
    // The bore is not to blame for a gap that may be too wide already where the bore is smallest.
    if (atSmallest.verdict === 'undecided') return { work: 'measure again', finding: atSmallest };
    const most = max === undefined ? undefined : max - (wide - tight);
    const some = min !== undefined && most !== undefined && most >= min;
    const serves = some ? { serves: { min, max: most as Length } } : {};
    return { work: 'bore is worn', finding: atLargest, ...serves };
  }
  const finding = atLargest.margin < atSmallest.margin ? atLargest : atSmallest;
  const isTold = [atSmallest, atLargest].every(({ verdict }) => verdict !== 'undecided');
  return { work: isTold ? 'fit as it is' : 'measure again', finding };
}

/** The caller's limits of the ring gap, at most three hundredths of the bore, or the rule of thumb. */
export function ringGapLimits(
  parameter: string,
  own: OwnLimits<'length'>,
  bore: Length,
): BasedLimits<'length'> {
  return ownLimitsOr(parameter, own, recommendedRingGap(bore), (name, bound) =>
    guardLength(name, bound, [0, 0.03 * bore], ringGap.example),
  );
}

function belowSmallest(largest: Length): RebuildInputError {
  return new RebuildInputError({
    parameter: 'largestBore',
    value: largest,
    expected: 'a diameter that is not below the smallest bore',
    hint: 'Give the largest and the smallest diameter of the travel the right way round.',
  });
}
