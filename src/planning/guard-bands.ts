import { normalQuantileOfTail } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { type Accuracy, certaintyOf, type GuardBand } from '../reading/index.js';

/** What a plan judges, by what it is read with. */
export type PlannedFeature =
  | 'oil clearance'
  | 'piston clearance'
  | 'guide clearance'
  | 'end play by washers';

/** The guard band of a clearance on a part of a size; none if no chance was asked for. */
export type BandOf = (feature: PlannedFeature, ofSize: number) => GuardBand | undefined;

/** No guard bands: clearances count as read. */
export const noBand: BandOf = () => undefined;

/** The guard bands for clearances that hold with a chance of `holdsWith` or more. */
export function bandsFor(accuracy: Accuracy, holdsWith: number): BandOf {
  const mayFail = 1 - holdsWith;
  const factor = bandFactor(holdsWith);
  return (feature, ofSize) => {
    const uncertainty = standardOf(certaintyOf(feature, accuracy, ofSize));
    return { band: (factor * uncertainty) as Length, uncertainty, mayFail };
  };
}

/** The guard band of a chance, in standard uncertainties. */
export const bandFactor = (holdsWith: number): number => normalQuantileOfTail(1 - holdsWith);

/** The standard uncertainty of a clearance: half of the expanded one. */
export const standardOf = ({ uncertainty = 0 as Length }: { readonly uncertainty?: Length }) =>
  (uncertainty / 2) as Length;
