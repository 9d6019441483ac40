import type { LeakHeardAt } from '../cylinders/index.js';
import type { GaugePressure, Length, Pressure } from '../quantities/index.js';

/** A compression test, and a leakage test of the cylinders that had one. */
export interface CompressionSheet {
  /** All cylinders in the order they stand in, those not read as well. */
  readonly cylinders: readonly TestedCylinder[];
  /** How well one cylinder repeats from try to try, either way [Pa]. */
  readonly repeatsWithin?: Pressure;
  /** How far the gauge itself may be off, either way [Pa]. */
  readonly gaugeWithin?: Pressure;
}

/** What was read of one cylinder. */
export interface TestedCylinder {
  /** Its name on the bench. */
  readonly name: string;
  /** What the gauge showed, throttle open [Pa]. */
  readonly dry?: GaugePressure;
  /** The same with a little oil put in [Pa]. */
  readonly wet?: GaugePressure;
  /** The head or bank that it stands under; by default all stand under one. */
  readonly head?: string;
  /** Its leakage test. */
  readonly leakage?: {
    /** What the first gauge shows: the air that is fed in [Pa]. */
    readonly supply: GaugePressure;
    /** What the second shows: the air that the cylinder holds [Pa]. */
    readonly held: GaugePressure;
    /** Bore of the orifice between the gauges [m]. */
    readonly orifice?: Length;
    /** Where air is heard, felt or seen. Leave it out if nobody has listened. */
    readonly heardAt?: readonly LeakHeardAt[];
  };
}
