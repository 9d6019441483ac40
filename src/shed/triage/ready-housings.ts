import type { Finding, SizeOrSpan, Span } from '../../judging/index.js';
import { diameter, guardSpan, isOutside, judgeSpan, spanOf } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { type Accuracy, at20C, certaintyOf, own, type StatedLimits } from '../../reading/index.js';
import type { HousingPlace } from '../shed.js';
import { notSized } from './not-measured.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness } from './ways.js';

/** Housings that are ready for use. */
export interface ReadyHousings {
  /** Size of each, after any resizing; undefined where it was not measured [m]. */
  readonly sizes: readonly (Span<Length> | undefined)[];
  /** Resizing, if any needs it. */
  readonly repairs: readonly Job[];
}

/**
 * Works out whether housings can be used. Those outside the maker's limits, and those in which
 * shells have spun, must be resized to the limits. Without both limits nobody can say to what size,
 * and the part is kept aside; without any limits a housing is not judged.
 */
export function readyHousings(
  what: 'main housings' | 'big ends',
  places: readonly HousingPlace[],
  stated: StatedLimits<'length'> | undefined,
  spun: boolean,
  accuracy: Accuracy,
): Readiness<ReadyHousings> {
  const unread = notSized(
    what,
    places.map(({ name, housingBore }) => ({ name, size: housingBore })),
  );
  const judged = places.flatMap(({ name, housingBore: read }, i) => {
    if (read === undefined) return [];
    guardSpan(`housings[${i}].housingBore`, read, diameter);
    const housingBore = at20C(read, 'housings', accuracy);
    const finding = judgeHousing(name, housingBore, stated, accuracy);
    return [{ i, name, housingBore, finding }];
  });
  const sizesAs = (sizeOf: (one: (typeof judged)[number]) => Span<Length> | undefined) =>
    places.map((_, i) => {
      const one = judged.find((each) => each.i === i);
      return one && sizeOf(one);
    });
  const asRead = ({ housingBore }: (typeof judged)[number]) => spanOf(housingBore);
  const apart = spun
    ? []
    : judged.filter(({ housingBore, finding }) => isApart(spanOf(housingBore), finding));
  if (apart.length > 0) {
    // Nothing is decided, and no finding given, before they are read again. Till then their sizes are not known.
    const sizes = sizesAs((one) => (apart.includes(one) ? undefined : asRead(one)));
    return {
      atBest: { sizes, repairs: [] },
      aside: 'undecided',
      findings: [],
      because: [
        ...unread,
        ...apart.map(({ name: place, housingBore }) => ({
          kind: 'readings apart' as const,
          place,
          readings: spanOf(housingBore),
        })),
      ],
    };
  }
  const bad = judged.filter(({ finding }) => spun || (finding && isOutside(finding)));
  const findings = judged.flatMap(({ finding }) => finding ?? []);
  const near = spun ? [] : findings.filter(({ verdict }) => verdict === 'undecided');
  const because: readonly TriageReason[] = [
    ...unread,
    ...near.map((finding) => ({ kind: 'measure again' as const, finding })),
    ...bad.map(({ name: place, finding }) => ({
      kind: 'housing' as const,
      place,
      ...(finding && { finding }),
    })),
  ];
  const to = resizedTo(stated);
  if (bad.length > 0 && to === undefined) {
    const sizes = sizesAs(asRead);
    return { atBest: { sizes, repairs: [] }, aside: 'not as it is', findings, because };
  }
  const resized = bad.map(({ name }) => name);
  const ready: ReadyHousings = {
    sizes: sizesAs((one) => (to && resized.includes(one.name) ? to : asRead(one))),
    repairs: to && resized.length > 0 ? [{ work: 'resize housings', places: resized, to }] : [],
  };
  return unread.length > 0
    ? { atBest: ready, aside: 'undecided', findings, because }
    : { ready, findings, because };
}

/** No housing that holds together is out of round by so much of its bore (common practice of this library). */
const FAR_OUT = 0.005;

/** Whether the readings of a housing lie so far apart that one of them must be wrong. */
function isApart({ min, max }: Span<Length>, finding: Finding<'length'> | undefined): boolean {
  const { limits = {}, uncertainty = 0 } = finding ?? {};
  const allowed = (limits.max ?? 0) - (limits.min ?? limits.max ?? 0);
  return max - min > Math.max(FAR_OUT * max, allowed + uncertainty);
}

function judgeHousing(
  name: string,
  housingBore: SizeOrSpan<Length>,
  stated: StatedLimits<'length'> | undefined,
  accuracy: Accuracy,
): Finding<'length'> | undefined {
  const { limits, basis } = own(stated);
  if (limits === undefined || basis === undefined) return undefined;
  const value = spanOf(housingBore);
  const feature = `${name}: housing bore`;
  const certainty = certaintyOf('housing bore', accuracy, value.max);
  return judgeSpan({ feature, dimension: 'length', value, limits, basis, ...certainty });
}

function resizedTo(stated: StatedLimits<'length'> | undefined): Span<Length> | undefined {
  const { min, max } = stated ?? {};
  return min === undefined || max === undefined ? undefined : { min, max };
}
