import {
  pistonClearanceSpan,
  type RingFiling,
  ringFilingNeeded,
  ringGapAlongBore,
} from '../cylinders/index.js';
import { type BasedLimits, type Basis, type Finding, judge, type Span } from '../judging/index.js';
import {
  diametralClearance,
  guardText,
  judgeSpan,
  type Names,
  namedFrom,
  ownLimitsOr,
} from '../judging/internal.js';
import { type BoreShape, boreShape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { own } from '../reading/index.js';
import type { CylinderLimits, CylinderSheet } from './sheet.js';

/** What was found of one cylinder. */
export interface CylinderReport {
  /** What it is called on the bench. */
  readonly name: string;
  /** Size and shape of the ring travel, and the wear where the unworn land was read. */
  readonly shape: BoreShape;
  /** Out-of-round, taper and wear against their limits. */
  readonly findings: readonly Finding<'length'>[];
  /** The piston in it. */
  readonly piston?: {
    /** Diametral clearance from the tightest to the loosest place of the ring travel [m]. */
    readonly clearance: Span<Length>;
    /** The worse end of it against the limits, if the sheet gives any. */
    readonly finding?: Finding<'length'>;
  };
  /** Every ring. */
  readonly rings: readonly RingReport[];
}

/** What was found of one ring in its cylinder. */
export interface RingReport {
  /** Which ring. */
  readonly name: string;
  /** Gap from the tightest to the widest place of its travel [m]. */
  readonly travel: Span<Length>;
  /** Station of the bore where it is widest [m]. */
  readonly widestAt: Length;
  /** What to do with it. */
  readonly filing: RingFiling;
}

/** Limits for a bore where the maker's are not known. */
const SHAPE_RULE: Basis = {
  kind: 'common practice',
  rule: 'bore out-of-round up to 0.001 of its diameter',
};
const WEAR: Basis = {
  kind: 'published',
  source:
    'TM 10-3930-647-14&P, bore wear of 0.001 of the diameter (the order of its labels is inferred)',
};
const TAPER: Basis = {
  kind: 'published',
  source:
    'TM 10-3930-647-14&P, bore taper of 0.0005 of the length it is read over (the order of its labels is inferred)',
};

/** Inspects one cylinder with its piston and rings. */
export function inspectCylinder(
  cylinder: CylinderSheet,
  allowed: CylinderLimits = {},
): CylinderReport {
  const { readings, ringTravel } = cylinder.bore;
  const shape = namedFrom(
    () => BORE_NAMES,
    () => boreShape(readings, ringTravel === undefined ? {} : { ringTravel }),
  );
  const piston = cylinder.piston;
  return {
    name: guardText('cylinder.name', cylinder.name),
    shape,
    findings: namedFrom(
      () => LIMIT_NAMES,
      () => shapeFindings(shape, allowed),
    ),
    ...(piston !== undefined && {
      piston: namedFrom(
        () => PISTON_NAMES,
        () => pistonIn(shape, piston, allowed),
      ),
    }),
    rings: (cylinder.rings ?? []).map((ring, i) =>
      namedFrom(
        () => ringNames(`cylinder.rings[${i}]`),
        () => ringIn(shape, ring, allowed),
      ),
    ),
  };
}

const BORE_NAMES: Names = {
  readings: 'cylinder.bore.readings',
  'options.ringTravel': 'cylinder.bore.ringTravel',
};
const LIMIT_NAMES: Names = {
  'out-of-round.limits': 'allowed.outOfRound',
  'taper.limits': 'allowed.taper',
};
const PISTON_NAMES: Names = {
  bore: 'cylinder.bore.readings',
  piston: 'cylinder.piston',
  limits: 'allowed.pistonClearance',
};
const ringNames = (ring: string): Names => ({
  '': ring,
  smallestBore: 'cylinder.bore.readings',
  largestBore: 'cylinder.bore.readings',
  'ring.limits': 'allowed.ringGap',
});

function shapeFindings(shape: BoreShape, allowed: CylinderLimits): readonly Finding<'length'>[] {
  const first = shape.stations[0]?.station ?? 0;
  const length = (shape.stations.at(-1)?.station ?? 0) - first;
  const perBore = { max: (0.001 * shape.smallest) as Length };
  const perLength = { max: (0.0005 * length) as Length };
  const judgeAs = (
    feature: string,
    value: Length,
    stated: CylinderLimits['taper'],
    fallback: BasedLimits<'length'>,
  ) => {
    const chosen = ownLimitsOr(feature, own(stated), fallback, diametralClearance);
    return judge({ feature, dimension: 'length', value, ...chosen });
  };
  const findings = [
    judgeAs('out-of-round', shape.outOfRound, allowed.outOfRound, {
      limits: perBore,
      basis: SHAPE_RULE,
    }),
    judgeAs('taper', shape.taper, allowed.taper, { limits: perLength, basis: TAPER }),
  ];
  if (shape.wear === undefined) return findings;
  return [...findings, judgeAs('wear', shape.wear, undefined, { limits: perBore, basis: WEAR })];
}

function pistonIn(
  shape: BoreShape,
  piston: NonNullable<CylinderSheet['piston']>,
  allowed: CylinderLimits,
): NonNullable<CylinderReport['piston']> {
  const bore = { min: shape.smallest, max: shape.largest };
  const clearance = pistonClearanceSpan({ bore, piston });
  const { limits, basis } = own(allowed.pistonClearance);
  if (limits === undefined || basis === undefined) return { clearance };
  const feature = 'piston clearance';
  const finding = judgeSpan({ feature, dimension: 'length', value: clearance, limits, basis });
  return { clearance, finding };
}

function ringIn(
  shape: BoreShape,
  ring: NonNullable<CylinderSheet['rings']>[number],
  allowed: CylinderLimits,
): RingReport {
  const { gap, measuredIn } = ring;
  const name = guardText('name', ring.name);
  const means = shape.stations.map(({ mean }) => mean);
  const smallestBore = smallestOf(means);
  const largestBore = largestOf(means);
  const { span, widest } = ringGapAlongBore({ gap, measuredIn, stations: shape.stations });
  return {
    name,
    travel: span,
    widestAt: widest.station,
    filing: ringFilingNeeded({
      gap,
      measuredIn,
      smallestBore,
      largestBore,
      ...own(allowed.ringGap),
    }),
  };
}
