import type { BasedLimits, Finding, OwnLimits, Span } from '../judging/index.js';
import {
  guardFields,
  guardList,
  guardOwnLimits,
  judgeSpan,
  ownLimitsOr,
} from '../judging/internal.js';
import { dialReading } from '../measuring/internal.js';
import { type Length, thou } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { endPlayLimit } from './domains.js';

/** A dial read with the shaft pushed one way, then the other. */
export interface EndPlayReading {
  /** Dial with the shaft pushed to one end [m]. */
  readonly pushed: Length;
  /** Dial with the shaft pulled to the other end [m]. */
  readonly pulled: Length;
}

/** End play, and how it stands to its limits. */
export interface EndPlay {
  /** Mean float of all readings [m]. */
  readonly mean: Length;
  /** Least and most float found as the shaft was turned [m]. */
  readonly span: Span<Length>;
  /** The worse end of the span against the limits. */
  readonly finding: Finding<'length'>;
  /**
   * The float is so far past its service limit, or past that of new parts where no other is known, that a
   * thrust face or washer is gone, or a reading is wrong: how much more it is than new parts may have [m].
   */
  readonly missing?: Length;
}

const READING = ['pushed', 'pulled'] as const;

const rule = (): BasedLimits<'length'> => ({
  limits: { min: thou(4), max: thou(10) },
  limitsOf: 'new parts',
  basis: {
    kind: 'common practice',
    rule: 'crankshaft end play of 0.004 to 0.010 in (0.10 to 0.25 mm)',
  },
});

/** Past its limit by more than this, end play is no wear: a thrust face or a washer is gone. */
const NO_WEAR = /* @__PURE__ */ thou(30);

/**
 * Axial float of a crankshaft from dial readings, judged at its worst. Read at
 * several turns of the shaft: thrust faces that are not square show as a spread. A float of
 * more than 0.030 in past its service limit, or its only one, is no wear: something is missing.
 *
 *     float = abs(pulled - pushed)   of one reading
 *
 * @param readings - dial indications at both ends of the float, one pair for each turn of the shaft
 * @param options - the maker's limits; without them a rule of thumb, marked as one
 * @returns mean, span and finding
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no reading,
 * or the limits have no bound
 * @see Source: common practice for the default limits
 * @example
 * ```ts
 * const play = endPlay([{ pushed: thou(0), pulled: thou(7) }, { pushed: thou(0), pulled: thou(8) }]);
 * format(play.mean, thou); // "7.5 thou"
 * play.finding.verdict; // "within"
 * ```
 */
export function endPlay(
  readings: readonly EndPlayReading[],
  options: OwnLimits<'length'> = {},
): EndPlay {
  guardOwnLimits('options', options);
  guardList('readings', readings, 1, 'reading');
  const floats = readings.map((reading, i) => {
    guardFields(`readings[${i}]`, reading, READING);
    const pushed = dialReading(`readings[${i}].pushed`, reading.pushed);
    const pulled = dialReading(`readings[${i}].pulled`, reading.pulled);
    return Math.abs(pulled - pushed) as Length;
  });
  const span = { min: smallestOf(floats), max: largestOf(floats) };
  const allowed = endPlayLimits('options', options);
  const { max } = allowed.limits;
  const most = allowed.service?.limits.max ?? max;
  const isNoWear = most !== undefined && span.max - most > NO_WEAR;
  return {
    mean: (floats.reduce((sum, float) => sum + float, 0) / floats.length) as Length,
    span,
    finding: judgeSpan({ feature: 'end play', dimension: 'length', value: span, ...allowed }),
    ...(isNoWear && { missing: (span.max - (max ?? most)) as Length }),
  };
}

/** The caller's limits of the end play, or the rule of thumb. */
export function endPlayLimits(parameter: string, own: OwnLimits<'length'>): BasedLimits<'length'> {
  return ownLimitsOr(parameter, own, rule(), endPlayLimit);
}
