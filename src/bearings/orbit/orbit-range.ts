import { type Basis, judge, type Limits } from '../../judging/index.js';
import type { Ratio } from '../../quantities/index.js';
import type { BigEnd, OrbitRange } from './orbit-types.js';

interface Trust {
  readonly lengthToDiameter: Limits<Ratio>;
  readonly leastGap: Limits<Ratio>;
  readonly basis: Basis;
}

const FINITE: Trust = {
  lengthToDiameter: { min: 0.1 as Ratio, max: 2 as Ratio },
  leastGap: { min: 0.002 as Ratio },
  basis: {
    kind: 'computed',
    how: 'Reynolds equation with the film broken as by Swift and Stieber, solved for squeezed films and mapped within 2 % to a length of twice the diameter and a gap of 0.002',
  },
};
const SHORT: Trust = {
  lengthToDiameter: { max: 0.5 as Ratio },
  leastGap: { min: 0.3 as Ratio },
  basis: {
    kind: 'common practice',
    rule: 'a short bearing to a length of half the diameter and an eccentricity of 0.7; it leaves out the oil that flows around and shows too thick a film: there it gives way a quarter too little, at 0.9 less than half as much as it should',
  },
};

/** How far an orbit may be trusted, by the film it was followed with. */
export function orbitRangeOf(
  film: NonNullable<BigEnd['film']>,
  lengthToDiameter: number,
  leastGap: number,
): OrbitRange {
  const trust = film === 'finite' ? FINITE : SHORT;
  const { basis } = trust;
  const found = (feature: string, value: number, limits: Limits<Ratio>) =>
    judge({ feature, dimension: 'ratio', value: value as Ratio, limits, basis });
  return {
    lengthToDiameter: found('length over diameter', lengthToDiameter, trust.lengthToDiameter),
    leastGap: found('least film over clearance', leastGap, trust.leastGap),
  };
}
