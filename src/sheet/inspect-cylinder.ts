import {
  pistonClearanceSpan,
  type RingFiling,
  ringFilingNeeded,
  ringGapAlongBore,
} from '../cylinders/index.js';
import { boreInDoubt, boreShapeLimits, boreWearLimits } from '../cylinders/internal.js';
import { type Finding, judge, type Span } from '../judging/index.js';
import { guardText, holds, judgeSpan, type Names, namedFrom } from '../judging/internal.js';
import type { BoreShape, OddReading } from '../measuring/index.js';
import { judgeShape, oddInBore } from '../measuring/internal.js';
import { type Length, thou } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import {
  type Accuracy,
  at20C,
  boreSeen,
  certaintyOf,
  own,
  readWith,
  statedBasis,
} from '../reading/index.js';
import type { BoresSheet, CylinderLimits, CylinderSheet } from './sheet.js';

/** Findings on one cylinder. */
export interface CylinderReport {
  /** Its name on the bench. */
  readonly name: string;
  /** Size and shape of the ring travel, and the wear if the unworn land was measured. */
  readonly shape: BoreShape;
  /** Readings that do not fit the others, if any. No verdict rests on them before they are read again. */
  readonly readAgain?: readonly OddReading[];
  /** Out-of-round, taper and wear against their limits. */
  readonly findings: readonly Finding<'length'>[];
  /** Whether only rules of thumb and limits of other engines stand against it, and not all of those. */
  readonly inDoubt: boolean;
  /** How far it is above standard, if it reads round and straight and that is neither a step nor wear [m]. */
  readonly oddSize?: Length;
  /** The oversize at which it needs no work by itself, though it is to be bored [m]. */
  readonly soundAt?: Length;
  /** The piston in it, if it was measured. */
  readonly piston?: {
    /** Diametral clearance, from the tightest to the loosest place of the ring travel [m]. */
    readonly clearance: Span<Length>;
    /** Its worse end against the limits; absent if the sheet gives none, and then it is not judged. */
    readonly finding?: Finding<'length'>;
    /** It reads as no piston of this bore does: larger than it, or smaller by more than wear takes off. */
    readonly readAgain?: true;
  };
  /** Every ring whose gap was measured. */
  readonly rings: readonly RingReport[];
}

/** Findings on one ring in its cylinder. */
export interface RingReport {
  /** Which ring. */
  readonly name: string;
  /** Gap, from the tightest to the widest place of its travel [m]. */
  readonly travel: Span<Length>;
  /** Station of the bore where the gap is widest [m]. */
  readonly widestAt: Length;
  /** What to do with it. */
  readonly filing: RingFiling;
}

/** Inspects one cylinder with its piston and rings. */
export function inspectCylinder(
  cylinder: CylinderSheet,
  accuracy: Accuracy,
  allowed: CylinderLimits = {},
  bores?: BoresSheet,
): CylinderReport {
  const { readings, ringTravel } = cylinder.bore;
  const shape = namedFrom(
    () => BORE_NAMES,
    () => boreSeen(readings, ringTravel, accuracy),
  );
  const readAgain = oddInBore(readings, ringTravel, readWith('boreGauge', accuracy));
  const piston =
    cylinder.piston === undefined ? undefined : at20C(cylinder.piston, 'pistons', accuracy);
  const bore = bores?.standard.min ?? shape.smallest;
  const { findings, inDoubt } = namedFrom(
    () => LIMIT_NAMES,
    () => shapeFindings(shape, allowed, bore, bores?.stroke, accuracy),
  );
  return {
    name: guardText('cylinder.name', cylinder.name),
    shape,
    ...(readAgain.length > 0 && { readAgain }),
    findings,
    inDoubt,
    ...(piston !== undefined && {
      piston: namedFrom(
        () => PISTON_NAMES,
        () => pistonIn(shape, piston, allowed, accuracy),
      ),
    }),
    rings: (cylinder.rings ?? []).map((ring, i) =>
      namedFrom(
        () => ringNames(`cylinder.rings[${i}]`),
        () => ringIn(shape, ring, allowed, accuracy),
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

function shapeFindings(
  shape: BoreShape,
  { outOfRound, taper }: CylinderLimits,
  bore: Length,
  stroke: Length | undefined,
  accuracy: Accuracy,
): Pick<CylinderReport, 'findings' | 'inDoubt'> {
  const certainty = certaintyOf('bore shape', accuracy);
  const limits = boreShapeLimits(
    { outOfRound: { ...own(outOfRound), ...certainty }, taper: { ...own(taper), ...certainty } },
    bore,
    stroke,
    { outOfRound: 'out-of-round', taper: 'taper' },
  );
  const judged = judgeShape(shape, limits.outOfRound, limits.taper);
  const wear =
    shape.wear === undefined
      ? undefined
      : judge({
          feature: 'wear',
          dimension: 'length',
          value: shape.wear,
          ...boreWearLimits(bore),
          ...certainty,
        });
  const findings = [...judged, ...(wear ? [wear] : [])];
  const fails = findings.some((finding) => !holds(finding));
  return {
    findings,
    inDoubt: fails && boreInDoubt({ shape: judged, ...(wear && { wear }) }, bore),
  };
}

/**
 * No worn skirt lets a piston hang this far past what is allowed at the smallest place of its bore: half a step, where a
 * piston of another size may be told from a slip. Without a limit 0.003 of the bore is allowed. Both common practice.
 */
const PAST_WEAR = /* @__PURE__ */ thou(5);

function pistonIn(
  shape: BoreShape,
  piston: NonNullable<CylinderSheet['piston']>,
  allowed: CylinderLimits,
  accuracy: Accuracy,
): NonNullable<CylinderReport['piston']> {
  const bore = { min: shape.smallest, max: shape.largest };
  const clearance = pistonClearanceSpan({ bore, piston });
  const limits = statedBasis(allowed.pistonClearance);
  const most = limits?.service?.limits.max ?? limits?.limits.max ?? 0.003 * shape.smallest;
  const readAgain = (clearance.max < 0 || clearance.min > most + PAST_WEAR) && {
    readAgain: true as const,
  };
  if (limits === undefined) return { clearance, ...readAgain };
  const feature = 'piston clearance';
  const finding = judgeSpan({
    feature,
    dimension: 'length',
    value: clearance,
    ...limits,
    ...certaintyOf('piston clearance', accuracy, shape.largest),
  });
  return { clearance, finding, ...readAgain };
}

function ringIn(
  shape: BoreShape,
  ring: NonNullable<CylinderSheet['rings']>[number],
  allowed: CylinderLimits,
  accuracy: Accuracy,
): RingReport {
  const { gap } = ring;
  const measuredIn = at20C(ring.measuredIn, 'bores', accuracy);
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
      ...certaintyOf('ring gap', accuracy),
    }),
  };
}
