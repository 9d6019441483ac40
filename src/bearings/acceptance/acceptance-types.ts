import type { Finding, SizeOrSpan } from '../../judging/index.js';
import type { LoadDiagram } from '../../motion/index.js';
import type { Flow, Force, Length, Ratio } from '../../quantities/index.js';
import type { Roughness } from '../film/film-regime.js';
import type { FedBearing, WarmFilm } from '../film/heat-balance.js';
import type { OilSupply, SupplyFinding } from './oil-supply.js';
import type { ShellMaterial } from './shell-material.js';

/** A bearing to accept. What is left out is unknown, and what is unknown is never good. */
export interface BearingToAccept extends Omit<FedBearing, 'clearance'> {
  /** Diametral oil clearance, or the span that it lies in, which is judged at both ends [m]. */
  readonly clearance: SizeOrSpan<Length>;
  /** What the running face of the shell is made of. */
  readonly material?: ShellMaterial;
  /** Root mean square roughness of journal and shell [m]. */
  readonly roughness?: Roughness;
  /** Least film over the combined roughness, a figure of your own [-]. */
  readonly filmRatio?: Ratio;
  /** Without a film ratio of your own: 3 as a general figure, 5 for surfaces that fit closely. */
  readonly duty?: 'general' | 'closely fitted';
  /** The largest particle that comes in with the oil because no filter holds it back, or that there is no filter [m]. */
  readonly largestParticle?: Length | 'no filter';
  /** How oil comes to it. */
  readonly supply?: OilSupply;
  /** The loads of a big end over the cycle, from `bigEndLoads`; the verdict then goes by its orbit. */
  readonly loads?: LoadDiagram;
  /**
   * By what share every load may be more than was given, as one is that nobody measured; none by default. What holds
   * only as given is then unknown. A load that may be less excuses nothing [-].
   */
  readonly loadDoubt?: Ratio;
  /** A rule to hold it to besides. */
  readonly rule?: 'Trumpler';
  /** For that rule: the load while the shaft starts to turn [N]. */
  readonly startUpLoad?: Force;
}

/** What a bearing is checked for. */
export type AcceptanceCheckName =
  | 'material'
  | 'mean pressure'
  | 'peak pressure'
  | 'film temperature'
  | 'film over roughness'
  | 'film over particles'
  | 'oil supply'
  | 'least film by Trumpler'
  | 'temperature by Trumpler'
  | 'start-up pressure by Trumpler';

/** One check of a bearing. */
export type AcceptanceCheck =
  | {
      /** It holds, or fails. */
      readonly outcome: 'holds' | 'fails';
      /** What was checked. */
      readonly check: AcceptanceCheckName;
      /** The value against its limit. */
      readonly finding: Finding;
    }
  | {
      /** Nobody knows. A caution can be lived with, and withholds no acceptance. */
      readonly outcome: 'unknown' | 'caution';
      /** What was to be checked. */
      readonly check: AcceptanceCheckName;
      /** What would settle it, or how to live with a caution. */
      readonly give: string;
      /** The value against the stricter limit, where sources differ and it lies between them. */
      readonly finding?: Finding;
      /** It holds under the loads as given, and not if they are more by as much as they are in doubt. */
      readonly tooNear?: {
        /** By what share they may be more [-]. */
        readonly doubt: Ratio;
        /** The value under that much more, if it can be computed. */
        readonly finding?: Finding;
      };
    };

/** The orbit of a big end, as far as its acceptance goes by it. */
export type AcceptedOrbit =
  | {
      /** It was followed to the end. */
      readonly outcome: 'settled';
      /** The thinnest film of the cycle [m]. */
      readonly film: Length;
    }
  | {
      /** It carries no film, became too thin to be followed, or did not come back to where it began. */
      readonly outcome: 'no film' | 'too thin to follow' | 'not settled' | 'out of range';
    };

/** The films of a bearing side by side, at one clearance. */
export interface FilmsSideBySide {
  /** The clearance they are for [m]. */
  readonly clearance: Length;
  /** The bearing under the mean of its load, steady. */
  readonly mean: WarmFilm;
  /** The bearing under the most of its load, as if that stayed. */
  readonly peak: WarmFilm;
  /** The orbit; only where the loads of the cycle are known. */
  readonly orbit?: AcceptedOrbit;
  /** The film that the verdict goes by: the orbit's thinnest, else that under the most of the load; none if unknown [m]. */
  readonly film?: Length;
  /** Oil that leaves at the ends in a time, the most of both steady films [m³/s]. */
  readonly sideFlow: Flow;
}

/** Whether a bearing is good. */
export interface BearingAcceptance {
  /**
   * Accepted only if every check holds or is no more than a caution. Not accepted if one fails or the metal of the shell is unknown.
   * Otherwise undecided.
   */
  readonly outcome: 'accepted' | 'not accepted' | 'undecided';
  /** The checks that decide: all where it is accepted, else those that fail, else those that are unknown. */
  readonly because: readonly AcceptanceCheck[];
  /** Every check, each at the end of the clearance where it comes out worse. */
  readonly checks: readonly AcceptanceCheck[];
  /** The loads it was judged under. */
  readonly load: {
    /** Mean over the cycle; the steady load where no cycle is known [N]. */
    readonly mean: Force;
    /** The most of the cycle, or the steady load where that is more [N]. */
    readonly peak: Force;
    /** Whether the loads of the cycle were known. */
    readonly of: 'cycle' | 'steady load';
  };
  /** The films at the end of the clearance where the film is thinner. */
  readonly films: FilmsSideBySide;
  /** Oil that it needs against what it gets. */
  readonly supply: SupplyFinding;
}
