import { fitOf, inchFit } from '../fits/index.js';
import type { BasedLimits, Basis, Certainty, Finding, Limits, Span } from '../judging/index.js';
import { judgeSpan, NANOMETRE, spanOf } from '../judging/internal.js';
import { type Length, minus } from '../quantities/index.js';
import { type FitData, statedBasis } from '../reading/index.js';

/** How two parts are to fit, and how they do. */
export interface FitSetting {
  /** What they are. */
  readonly name: string;
  /** Diametral clearance that is wanted, negative for an interference; absent if it is not known. */
  readonly wanted?: BasedLimits<'length'>;
  /** What new parts of its class may measure; the clearance that is wanted may be another one. */
  readonly newParts?: NewParts;
  /** Diametral clearance of the parts as they were measured [m]. */
  readonly clearance?: Span<Length>;
  /** Its worse end against what is wanted. */
  readonly finding?: Finding<'length'>;
  /** Whether they are pressed together, or may have to be: what is wanted, or what was measured, is or may be an interference. */
  readonly mayBePressed: boolean;
}

/** What a new hole and a new shaft of a class may measure. */
export interface NewParts {
  /** The hole [m]. */
  readonly hole: Span<Length>;
  /** The shaft [m]. */
  readonly shaft: Span<Length>;
  /** The standard that says so. */
  readonly basis: Basis;
}

/** How two parts are to fit, as far as the file tells. */
export function fitSetting(data: FitData, certainty: Certainty<'length'>): FitSetting {
  const { name } = data;
  const ofClass = classOf(data);
  const wanted = statedBasis(data.clearance) ?? ofClass?.wanted;
  const clearance = measured(data);
  const finding =
    clearance &&
    wanted &&
    judgeSpan({
      feature: 'clearance',
      dimension: 'length',
      value: clearance,
      ...wanted,
      ...certainty,
    });
  return {
    name,
    ...(wanted && { wanted }),
    ...(ofClass && { newParts: ofClass.newParts }),
    ...(clearance && { clearance }),
    ...(finding && { finding }),
    mayBePressed: isTight(wanted?.limits ?? {}, clearance),
  };
}

/** Of a fit that may be either way, the parts at hand tell; one that is tight by its limits stays one, however worn. */
function isTight({ min, max }: Limits<Length>, clearance: Span<Length> | undefined): boolean {
  if (max !== undefined && max <= 0) return true;
  return (clearance ? clearance.min : (min ?? 0)) < -NANOMETRE;
}

type OfClass = Required<Pick<FitSetting, 'wanted' | 'newParts'>>;

function classOf({ isoFit, inchFit: asked }: FitData): OfClass | undefined {
  if (isoFit !== undefined) {
    const { clearance, hole, shaft } = fitOf(isoFit);
    return ofClass(clearance, hole.limits, shaft.limits, `ISO 286-1:2010, ${isoFit}`);
  }
  if (asked !== undefined) {
    const { clearance, hole, shaft, source } = inchFit(asked);
    return ofClass(clearance, hole.limits, shaft.limits, `${asked.fitClass}: ${source}`);
  }
  return undefined;
}

function ofClass(
  clearance: Span<Length>,
  hole: Span<Length>,
  shaft: Span<Length>,
  source: string,
): OfClass {
  const basis: Basis = { kind: 'published', source };
  return {
    wanted: { limits: clearance, basis, limitsOf: 'new parts' },
    newParts: { hole, shaft, basis },
  };
}

function measured({ hole, shaft }: FitData): Span<Length> | undefined {
  if (hole === undefined || shaft === undefined) return undefined;
  const [holes, shafts] = [spanOf(hole), spanOf(shaft)];
  return { min: minus(holes.min, shafts.max), max: minus(holes.max, shafts.min) };
}
