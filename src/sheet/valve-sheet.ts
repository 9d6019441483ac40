import type { SizeOrSpan } from '../judging/index.js';
import type { Force, Length } from '../quantities/index.js';
import type { StatedLimits } from '../reading/index.js';

/** Limits for every valve. Without one, a limit of another engine is used and named, or the size is not judged. */
export interface ValveLimits {
  /** Clearance of a stem in its guide. Without limits it is not judged. */
  readonly guideClearance?: StatedLimits<'length'>;
  /** Width of a seat along its slope. */
  readonly seatWidth?: StatedLimits<'length'>;
  /** Margin of a valve. */
  readonly margin?: StatedLimits<'length'>;
  /** How far a valve's head lies below the deck. Without limits it is not judged. */
  readonly recession?: StatedLimits<'length'>;
}

/** One valve with its seat, guide and spring, as far as they were read. */
export interface ValveSheet {
  /** Its name on the bench. */
  readonly name: string;
  /** Whether it is an inlet or an exhaust valve. */
  readonly kind: 'inlet' | 'exhaust';
  /** Diameter of its stem where it runs in the guide [m]. */
  readonly stem?: SizeOrSpan<Length>;
  /** Bore of its guide [m]. */
  readonly guide?: SizeOrSpan<Length>;
  /** Width of its seat along the slope [m]. */
  readonly seatWidth?: Length;
  /** Its margin where it is thinnest [m]. */
  readonly margin?: Length;
  /** How far its head lies below the deck; negative if it stands out [m]. */
  readonly recession?: Length;
  /** Lash that was found, cold, seat and face finished; negative is how far the valve is held off its seat [m]. */
  readonly lash?: Length;
  /** How long it is, from its face to the end of its stem [m]. */
  readonly length?: Length;
  /** The least length that its stem may be ground to, by the maker [m]. */
  readonly leastLength?: Length;
  /** Its spring on a tester. */
  readonly spring?: {
    /** At the height of the closed valve. */
    readonly closed: SpringReading;
    /** At the height of the open valve. */
    readonly open: SpringReading;
    /** How far the tester may be off, either way [N]. */
    readonly forceWithin?: Force;
  };
}

/** What a spring pressed with at one height. */
export interface SpringReading {
  /** The height [m]. */
  readonly height: Length;
  /** The force [N]. */
  readonly force: Force;
}
