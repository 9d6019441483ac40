import type { Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { DiameterReading } from '../measuring/index.js';
import { type Length, thou } from '../quantities/index.js';

/** A reading that no step comes to, whatever wear there is on top of it. */
export interface FarReading {
  /** Where along the part it was read [m]. */
  readonly station: Length;
  /** What it reads [m]. */
  readonly reading: Length;
  /** How far it is below the standard size, or above it if negative [m]. */
  readonly below: Length;
}

/** How far wear takes a journal or a bore past a step at the most (common practice of this library). */
const WORN = {
  journals: /* @__PURE__ */ thou(10),
  bores: /* @__PURE__ */ thou(30),
} as const;
/** How far a reading of a place differs from another, or from a step that it stands at, by dirt and the hand that reads it. */
const DIRT = /* @__PURE__ */ thou(2.5);

/**
 * The readings of a journal or bore that lie beyond every step and the wear on it: most likely a digit or a turn was
 * misread. A reading that was taken twice at its place, and alike, stands. It is for places read too little to compare
 * their readings with each other.
 */
export function farReadings(
  of: 'journals' | 'bores',
  readings: readonly DiameterReading[],
  standard: Span<Length>,
  steps: readonly Length[],
): readonly FarReading[] {
  const isIn = ({ diameter }: DiameterReading) =>
    steps.some((step) =>
      of === 'bores'
        ? diameter >= standard.min + step - DIRT - NANOMETRE &&
          diameter <= standard.max + step + WORN.bores + NANOMETRE
        : diameter >= standard.min - step - WORN.journals - NANOMETRE &&
          diameter <= standard.max - step + DIRT + NANOMETRE,
    );
  const isConfirmed = (one: DiameterReading) =>
    readings.some(
      (other) =>
        other !== one &&
        other.station === one.station &&
        other.angle === one.angle &&
        Math.abs(other.diameter - one.diameter) <= DIRT,
    );
  return readings
    .filter((one) => !isIn(one) && !isConfirmed(one))
    .map(({ station, diameter }) => ({
      station,
      reading: diameter,
      below: (diameter > standard.max
        ? standard.max - diameter
        : standard.min - diameter) as Length,
    }));
}
