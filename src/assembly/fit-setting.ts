import { fitOf, inchFit } from '../fits/index.js';
import type { BasedLimits, Basis, Certainty, Finding, Span } from '../judging/index.js';
import { judgeSpan, spanOf } from '../judging/internal.js';
import { type Length, minus } from '../quantities/index.js';
import { type FitData, statedBasis } from '../reading/index.js';

/** How two parts are to fit, and how they do. */
export interface FitSetting {
  /** What they are. */
  readonly name: string;
  /** Diametral clearance that is wanted, negative for an interference; absent if it is not known. */
  readonly wanted?: BasedLimits<'length'>;
  /** What a new hole of the class may measure [m]. */
  readonly hole?: Span<Length>;
  /** What a new shaft of the class may measure [m]. */
  readonly shaft?: Span<Length>;
  /** Diametral clearance of the parts as they were measured [m]. */
  readonly clearance?: Span<Length>;
  /** Its worse end against what is wanted. */
  readonly finding?: Finding<'length'>;
  /** Whether they are pressed together: what is wanted, or what was measured, is an interference. */
  readonly isPressed: boolean;
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
  const most = clearance?.max ?? wanted?.limits.max;
  return {
    name,
    ...(wanted && { wanted }),
    ...(ofClass && { hole: ofClass.hole, shaft: ofClass.shaft }),
    ...(clearance && { clearance }),
    ...(finding && { finding }),
    isPressed: most !== undefined && most <= 0,
  };
}

interface OfClass extends Required<Pick<FitSetting, 'wanted' | 'hole' | 'shaft'>> {}

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
  return { wanted: { limits: clearance, basis, limitsOf: 'new parts' }, hole, shaft };
}

function measured({ hole, shaft }: FitData): Span<Length> | undefined {
  if (hole === undefined || shaft === undefined) return undefined;
  const [holes, shafts] = [spanOf(hole), spanOf(shaft)];
  return { min: minus(holes.min, shafts.max), max: minus(holes.max, shafts.min) };
}
