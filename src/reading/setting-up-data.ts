import type { HeadGasket } from '../cylinders/index.js';
import type { SizeOrSpan } from '../judging/index.js';
import type { DipperInTrough } from '../motion/index.js';
import type { Angle, GaugePressure, Length, Pressure, Ratio, Volume } from '../quantities/index.js';
import type { DeadCentre } from '../timing/index.js';
import type { StatedLimits } from './stated-limits.js';

/** The space above a piston, and how compression is tested. */
export interface CompressionData {
  /** The chamber in the head, poured with valves and plug in place [m³]. */
  readonly chamber?: SizeOrSpan<Volume>;
  /** What of the chamber lies in the block, as the pocket over the valves of a side-valve engine [m³]. */
  readonly blockChamber?: SizeOrSpan<Volume>;
  /** What the crown fills above the flat edge of the piston: a dome positive, a dish negative [m³]. */
  readonly crown?: SizeOrSpan<Volume>;
  /** The gasket; `'none'` where head and block meet without one. */
  readonly gasket?: HeadGasket | 'none';
  /** How far the flat edge of the piston stops below the deck; negative stands above it [m]. */
  readonly deckClearance?: SizeOrSpan<Length>;
  /** From the centre of the crankshaft to the deck [m]. */
  readonly deckHeight?: SizeOrSpan<Length>;
  /** From the centre of the piston's pin to the flat edge of its crown [m]. */
  readonly pinHeight?: SizeOrSpan<Length>;
  /** Limits of the compression ratio. */
  readonly ratio?: StatedLimits<'ratio'>;
  /** Absolute pressure of the air around; by default the standard one at the sea [Pa]. */
  readonly airPressure?: Pressure;
  /** What a compression test is judged by; without any, rules of other engines advise. */
  readonly rules?: readonly CompressionRuleData[];
}

/** A rule for a compression test, and who set it. */
export type CompressionRuleData = {
  /** Who set it, for example the manual and its page. */
  readonly source?: string;
} & (
  | {
      /** The highest and the lowest cylinder are so far apart at most. */
      readonly kind: 'spread';
      /** How far [Pa]. */
      readonly most: Pressure;
    }
  | {
      /** A cylinder has at least such a share of the highest, or of the average. */
      readonly kind: 'share of highest' | 'share of average';
      /** The share [-]. */
      readonly least: Ratio;
    }
  | {
      /** Each cylinder is near a stated figure. */
      readonly kind: 'near a figure';
      /** The figure [Pa]. */
      readonly figure: GaugePressure;
      /** How far from it at most [Pa]. */
      readonly within: Pressure;
    }
  | {
      /** Each cylinder has at least the maker's least figure. */
      readonly kind: 'at least';
      /** The figure [Pa]. */
      readonly least: GaugePressure;
    }
);

/** Where valves and spark come, and the gaps of points and plug. */
export interface TimingData {
  /** Diameter of the rim that is marked [m]. */
  readonly rimDiameter?: Length;
  /** The spark. */
  readonly spark?: SparkData;
  /** Where the valves open and close, each at the same lift. */
  readonly valves?: {
    /** Where the inlet valve opens. */
    readonly inletOpens?: PlaceData;
    /** Where it closes. */
    readonly inletCloses?: PlaceData;
    /** Where the exhaust valve opens. */
    readonly exhaustOpens?: PlaceData;
    /** Where it closes. */
    readonly exhaustCloses?: PlaceData;
    /** How far each place may be off, either way [rad]. */
    readonly within?: Angle;
  };
  /** Teeth of the timing gears. */
  readonly gears?: {
    /** Teeth of the gear on the crankshaft. */
    readonly crankTeeth: number;
    /** Teeth of the gear on the camshaft. */
    readonly camTeeth: number;
  };
  /** Gap of the points. */
  readonly pointsGap?: StatedLimits<'length'>;
  /** Gap of the spark plug. */
  readonly plugGap?: StatedLimits<'length'>;
  /** Who gives the places and the spark, for example the manual and its page. */
  readonly source?: string;
}

/** A place of the crank: so far before or after a dead centre, one of the two. */
export interface PlaceData {
  /** How far from the dead centre [rad]. */
  readonly angle: Angle;
  /** The dead centre that comes next. */
  readonly before?: DeadCentre;
  /** The dead centre that was passed. */
  readonly after?: DeadCentre;
}

/** A spark to be timed. */
export interface SparkData {
  /** How far before top dead centre it is to come in running, in turn of the crank [rad]. */
  readonly advance: Angle;
  /** Turns of the magneto or the breaker cam for one turn of the crank [-]. */
  readonly speedRatio: Ratio;
  /** How far an impulse coupling holds the magneto back, in turn of the magneto; leave it out if there is none or it is not known [rad]. */
  readonly lag?: Angle;
  /** How far a lever or a timer holds the spark back for starting besides, in turn of the crank [rad]. */
  readonly retard?: Angle;
  /** How far the starting spark may be off, either way, in turn of the crank [rad]. */
  readonly within?: Angle;
  /** How far before top dead centre the maker lets it come for starting by hand. */
  readonly starting?: StatedLimits<'angle'>;
}

/** The dippers of a splash-oiled engine and their troughs. */
export interface DipperData
  extends Pick<DipperInTrough, 'cylinder' | 'dipper' | 'centreAboveFloor' | 'oilDepth'> {
  /** How deep they are to get into the oil. */
  readonly dip?: StatedLimits<'length'>;
  /** What is to be left to the floor. */
  readonly clearance?: StatedLimits<'length'>;
}
