import type { Finding, OwnLimits, SizeOrSpan, Span } from '../../judging/index.js';
import type { Length, Temperature } from '../../quantities/index.js';
import type { RunningPart } from '../warm/running-part.js';

/**
 * How a pin sits in one bore. `floating` in the bosses of a piston, it may be tight cold but turns warm. In a
 * `bushing` it turns cold and warm. `press`: it is held, by its small end or by the bosses.
 */
export type PinJoint = 'floating' | 'bushing' | 'press';

/** A piston pin in one of its bores, each reading as far as it was taken, with the limits of the clearance on the bench. */
export interface PinInBore extends OwnLimits<'length'> {
  /** How it is to sit there. */
  readonly joint: PinJoint;
  /** Diameter of the pin where it sits in this bore [m]. */
  readonly pin?: SizeOrSpan<Length>;
  /** Diameter of the bore [m]. */
  readonly bore?: SizeOrSpan<Length>;
  /** How warm both were when they were measured; by default 20 °C [K]. */
  readonly measuredAt?: Temperature;
  /** The pin when the engine runs. */
  readonly warmPin?: RunningPart;
  /** The boss or the rod around the bore when the engine runs. */
  readonly warmBore?: RunningPart;
  /** Wall of the bushing in it; nothing where the pin runs in the rod itself. A `bushing` needs it for its warm clearance [m]. */
  readonly bushingWall?: Length;
  /** The bushing when the engine runs. */
  readonly warmBushing?: RunningPart;
  /** Limits of the clearance when the engine runs. */
  readonly warmLimits?: OwnLimits<'length'>;
}

/** How a pin fits one of its bores. */
export interface PinFit {
  /** Diametral clearance on the bench; negative is an interference; absent without both readings [m]. */
  readonly clearance?: Span<Length>;
  /** The same when the engine runs; absent without the temperatures [m]. */
  readonly warmClearance?: Span<Length>;
  /** What runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly outsideRange: readonly ('warmBore' | 'warmBushing' | 'warmPin')[];
  /** What was not given, so that nothing is said of it. */
  readonly missing: readonly (
    | 'pin'
    | 'bore'
    | 'limits'
    | 'warmPin'
    | 'warmBore'
    | 'bushingWall'
    | 'warmBushing'
  )[];
  /** The worse ends against the caller's limits; and that the pin may not turn or not hold, if it may not. Empty is no pass. */
  readonly findings: readonly Finding<'length'>[];
}
