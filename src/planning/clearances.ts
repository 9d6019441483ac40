import type { Finding, Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { chanceOutside } from '../reading/index.js';
import { type PlannedFeature, standardOf } from './guard-bands.js';
import type { Build, NearClearance } from './plan-types.js';

/** A clearance of an engine that is judged, and where it is. */
export interface Judged extends Pick<NearClearance, 'of' | 'place'> {
  readonly feature: PlannedFeature;
  readonly clearance: Span<Length>;
  readonly finding: Finding<'length'>;
}

/** Every clearance of an engine that is judged. */
export function judgedOf({ bearings, cylinders, guides, endPlay }: Build): readonly Judged[] {
  return [
    ...bearings.map(
      ({ kind: of, journal: place, clearance, finding }): Judged => ({
        feature: 'oil clearance',
        of,
        place,
        clearance,
        finding,
      }),
    ),
    ...cylinders.flatMap(({ bore: place, clearance, finding }): readonly Judged[] =>
      finding ? [{ feature: 'piston clearance', of: 'cylinder', place, clearance, finding }] : [],
    ),
    ...(guides?.finding
      ? [
          {
            feature: 'guide clearance' as const,
            of: 'guides' as const,
            clearance: guides.clearance,
            finding: guides.finding,
          },
        ]
      : []),
    ...(endPlay
      ? [
          {
            feature: 'end play by washers' as const,
            of: 'end play' as const,
            clearance: { min: endPlay.play, max: endPlay.play },
            finding: endPlay.finding,
          },
        ]
      : []),
  ];
}

/** The chance that a clearance does not hold, at one end or the other. */
export const mayFail = ({ clearance, finding }: Pick<Judged, 'clearance' | 'finding'>): number =>
  chanceOutside(clearance, finding.limits, standardOf(finding));
