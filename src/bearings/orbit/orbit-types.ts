import type { Finding } from '../../judging/index.js';
import type { LoadDiagram } from '../../motion/index.js';
import type { Angle, DynamicViscosity, Length, Ratio, Speed } from '../../quantities/index.js';

/** A big end, its oil and its loads. */
export interface BigEnd {
  /** Crankpin diameter [m]. */
  readonly journal: Length;
  /** Length of the shell that carries [m]. */
  readonly length: Length;
  /** Diametral oil clearance [m]. */
  readonly clearance: Length;
  /** Viscosity of the oil in the bearing, warm as it is there [Pa·s]. */
  readonly viscosity: DynamicViscosity;
  /** The forces over a cycle, from `bigEndLoads` or your own. */
  readonly loads: LoadDiagram;
  /** The film of a bearing as long as it is, or of a short one, as the older charts have it; finite if left out. */
  readonly film?: 'finite' | 'short';
  /** A film of interest: the share of the cycle below it is counted [m]. */
  readonly thinnerThan?: Length;
  /** How exact the film is to be, as a share of it; a ten-thousandth if left out [-]. */
  readonly tolerance?: Ratio;
}

/** Where the journal stands at one angle of the crank, seen from the rod. */
export interface OrbitPoint {
  /** Crank past the firing top dead centre [rad]. */
  readonly crankAngle: Angle;
  /** Eccentricity ratio along the rod, positive towards the small end [-]. */
  readonly along: Ratio;
  /** Eccentricity ratio across it, positive towards where the crank turns at top dead centre [-]. */
  readonly across: Ratio;
  /** Thinnest film all around [m]. */
  readonly film: Length;
}

/** The thinnest film of the cycle. */
export interface LeastFilm {
  /** How thin it is [m]. */
  readonly film: Length;
  /** When: crank past the firing top dead centre [rad]. */
  readonly crankAngle: Angle;
  /** Where on the shells: from the middle of the shell in the rod, in the sense of the crank's turning; half a turn is the middle of the cap [rad]. */
  readonly onShell: Angle;
  /** Where on the pin: from the side farthest from the crankshaft, in the sense of the crank's turning [rad]. */
  readonly onPin: Angle;
}

/** The fastest closing of the gap between pin and shell. */
export interface Approach {
  /** How fast the thinnest film shrinks [m/s]. */
  readonly speed: Speed;
  /** When: crank past the firing top dead centre [rad]. */
  readonly crankAngle: Angle;
  /** The film that is left then [m]. */
  readonly film: Length;
}

/** How far the result may be trusted: outside of either range it is a guess, and errs to the side that the basis says. */
export interface OrbitRange {
  /** Length of the bearing over its diameter, against what the film is good for [-]. */
  readonly lengthToDiameter: Finding<'ratio'>;
  /** Thinnest film over the radial clearance, against the same [-]. */
  readonly leastGap: Finding<'ratio'>;
}

/** The journal's path under its loads, or why there is none. */
export type BigEndOrbit =
  | {
      /** The journal comes back to where it started, every cycle. */
      readonly outcome: 'settled';
      /** The thinnest film, when and where. */
      readonly leastFilm: LeastFilm;
      /** Share of the cycle with less than `thinnerThan` for a film; only if that was given [-]. */
      readonly shareThinner?: Ratio;
      /** The fastest closing of the gap: what hammers a loose bearing. */
      readonly greatestApproach: Approach;
      /** The path over a cycle, at every two degrees. */
      readonly path: readonly OrbitPoint[];
      /** How many cycles were followed. */
      readonly cycles: number;
      /** How many steps they took. */
      readonly steps: number;
      /** How far to trust it. */
      readonly range: OrbitRange;
    }
  | {
      /** Nothing draws oil in: the shaft does not turn, and metal rests on metal. */
      readonly outcome: 'no film';
    }
  | {
      /** It was followed for long and did not come back to where it started. */
      readonly outcome: 'not settled';
      /** Steps: the film becomes too thin to be followed, far below any roughness. Cycles: each still ends elsewhere than it began. */
      readonly because: 'too many steps' | 'too many cycles';
      /** How many cycles were followed. */
      readonly cycles: number;
      /** How many steps they took. */
      readonly steps: number;
    };
