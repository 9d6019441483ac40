import type { Finding, Span } from '../../judging/index.js';
import { diameter, guardSpan, judgeSpan, spanOf } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import { own, type StatedLimits } from '../../reading/index.js';
import type { HousingPlace } from '../shed.js';
import type { Job, TriageReason } from './triage-types.js';
import type { Readiness } from './ways.js';

/** Housings that are ready for use. */
export interface ReadyHousings {
  /** Size of each, after any resizing [m]. */
  readonly sizes: readonly Span<Length>[];
  /** Resizing, if any needs it. */
  readonly repairs: readonly Job[];
}

/**
 * Works out whether housings can be used. Those outside the maker's limits, and those in which
 * shells have spun, must be resized to the limits. Without both limits nobody can say to what size,
 * and the part is kept aside; without any limits a housing is not judged.
 */
export function readyHousings(
  places: readonly HousingPlace[],
  stated: StatedLimits<'length'> | undefined,
  spun: boolean,
): Readiness<ReadyHousings> {
  const judged = places.map((place, i) => {
    guardSpan(`housings[${i}].housingBore`, place.housingBore, diameter);
    return { place, finding: judgeHousing(place, stated) };
  });
  const bad = judged.filter(({ finding }) => spun || (finding && finding.verdict !== 'within'));
  const findings = judged.flatMap(({ finding }) => finding ?? []);
  const because = bad.map(
    ({ place, finding }): TriageReason => ({
      kind: 'housing',
      place: place.name,
      ...(finding && { finding }),
    }),
  );
  const to = resizedTo(stated);
  if (bad.length > 0 && to === undefined) {
    const sizes = places.map(({ housingBore }) => spanOf(housingBore));
    return { atBest: { sizes, repairs: [] }, aside: 'not as it is', findings, because };
  }
  const resized = bad.map(({ place }) => place.name);
  return {
    ready: {
      sizes: places.map(({ name, housingBore }) =>
        to && resized.includes(name) ? to : spanOf(housingBore),
      ),
      repairs: to && resized.length > 0 ? [{ work: 'resize housings', places: resized, to }] : [],
    },
    findings,
    because,
  };
}

function judgeHousing(
  { name, housingBore }: HousingPlace,
  stated: StatedLimits<'length'> | undefined,
): Finding<'length'> | undefined {
  const { limits, basis } = own(stated);
  if (limits === undefined || basis === undefined) return undefined;
  const value = spanOf(housingBore);
  const feature = `${name}: housing bore`;
  return judgeSpan({ feature, dimension: 'length', value, limits, basis });
}

function resizedTo(stated: StatedLimits<'length'> | undefined): Span<Length> | undefined {
  const { min, max } = stated ?? {};
  return min === undefined || max === undefined ? undefined : { min, max };
}
