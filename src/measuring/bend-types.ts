import type { Span } from '../judging/index.js';
import type { Angle, Length } from '../quantities/index.js';
import type { Runout } from './runout.js';
import type { DialReading } from './trace.js';

/** Dial readings around one station of a shaft. */
export interface BendStation {
  /** Where along the shaft [m]. */
  readonly station: Length;
  /** What the dial showed there; every station counts its angles from the same mark, and the same way. */
  readonly readings: readonly DialReading[];
}

/** How one station of a shaft runs. */
export interface StationRunout extends Omit<Runout, 'toGrind'> {
  /** Where along the shaft [m]. */
  readonly station: Length;
}

/** Why it is not decided whether a shaft is kinked or bowed. */
export type BendDoubt = 'too few angles' | 'too few stations' | 'both fit' | 'neither fits';

/** Whether and how a shaft is bent, and how each station runs. */
export type Bend = BendVerdict & {
  /** Every station, in order along the shaft. */
  readonly stations: readonly StationRunout[];
};

/** Whether and how a shaft is bent. */
export type BendVerdict =
  | {
      /** No station stands off the axis or is out of round by more than the instrument may be. */
      readonly outcome: 'true';
    }
  | {
      /**
       * The dial moves, but no station stands off the axis: the surface is out of round, and the shaft is not seen
       * to be bent.
       */
      readonly outcome: 'out-of-round';
    }
  | {
      /** Straight on either side of one place. */
      readonly outcome: 'kink';
      /** Where, as near as can be told [m]. */
      readonly at: Length;
      /** The places where the kink may be, as far as these readings can tell [m]. */
      readonly between: Span<Length>;
      /** How far the shaft stands off at the kink, on the radius: half of the full indicator reading there [m]. */
      readonly amount: Length;
      /** Which way it stands off, from the mark on the shaft [rad]. */
      readonly direction: Angle;
    }
  | {
      /** Bent evenly along its length. */
      readonly outcome: 'bow';
      /**
       * How far the shaft stands off halfway between its supports, on the radius: half of the full indicator
       * reading there [m].
       */
      readonly amount: Length;
      /** Which way it stands off, from the mark on the shaft [rad]. */
      readonly direction: Angle;
    }
  | {
      /** It stands off its axis, but how it is bent the readings do not tell. */
      readonly outcome: 'undecided';
      /**
       * Why not. With too few angles, lobes of a round shaft may look like a bend. Where neither shape fits, it has more than one bend, or its journals were not ground on one axis.
       */
      readonly because: BendDoubt;
      /** The most that any station stands off, on the radius; between the stations it may be more [m]. */
      readonly mostRead: Length;
      /**
       * Where to read next: in the middle of the longest stretch that was not read; with too few angles, the station
       * that stands off the most of those that were read at too few [m].
       */
      readonly readNext: Length;
      /** With too few angles: at how many to read there at least, equally spaced. */
      readonly anglesNext?: number;
    };
