import type { LoadedBearing, Roughness } from '../bearings/index.js';
import type { SizeOrSpan, Span } from '../judging/index.js';
import type { DiameterReading } from '../measuring/index.js';
import type { ViscosityLine, ViscosityPoint } from '../oil/index.js';
import type {
  Density,
  Flow,
  KinematicViscosity,
  Length,
  Rate,
  Ratio,
  Temperature,
  UnitSystem,
  Volume,
  VolumeFraction,
} from '../quantities/index.js';
import type { JournalKind, ShellPairs, StatedLimits } from '../reading/index.js';

/**
 * The inspection sheet of one engine, as `readSheet` gives it: every quantity
 * is SI. In the JSON each stands as text with its unit, `"2.1248 in"`.
 */
export interface Sheet {
  /** Version of the sheet's layout. */
  readonly version: 1;
  /** What the engine is called. */
  readonly engine: string;
  /** Units that the report is printed in, and that the engine's undersizes step by. */
  readonly units: UnitSystem;
  /** What is known of the crankshaft as a whole. */
  readonly crankshaft?: CrankshaftSheet;
  /** Connecting rods, each with the journal it runs on. */
  readonly rods?: readonly BearingSheet[];
  /** Main housings, each with the journal that runs in it. */
  readonly mains?: readonly BearingSheet[];
  /** Shells on the shelf, and those that were found fitted. */
  readonly shells?: readonly ShellPairs[];
  /** Limits that hold for every cylinder. */
  readonly cylinderLimits?: CylinderLimits;
  /** Cylinders, each with its piston and rings. */
  readonly cylinders?: readonly CylinderSheet[];
  /** The oil, and what leaks into it. */
  readonly oil?: OilSheet;
}

/** The crankshaft as a whole. */
export interface CrankshaftSheet {
  /** The rod journals' standard size and limits; needed where rods were measured. */
  readonly rodJournals?: JournalKind;
  /** The main journals' standard size and limits; needed where mains were measured. */
  readonly mainJournals?: JournalKind;
  /** End play. */
  readonly endPlay?: EndPlaySheet;
}

/** End play as it was read. */
export interface EndPlaySheet {
  /** Dial at both ends of the float, a pair for each turn of the shaft. */
  readonly readings: readonly {
    /** Dial with the shaft pushed to one end [m]. */
    readonly pushed: Length;
    /** Dial with the shaft pulled to the other end [m]. */
    readonly pulled: Length;
  }[];
  /** What it must lie between. */
  readonly limits?: StatedLimits<'length'>;
}

/** One bearing: a journal and the housing it runs in. */
export interface BearingSheet {
  /** What it is called on the bench. */
  readonly name: string;
  /** The journal. */
  readonly journal: {
    /** Micrometer readings, two angles or more at two stations or more. */
    readonly readings: readonly DiameterReading[];
    /** Full indicator reading against the axis it will be ground about [m]. */
    readonly runout?: Length;
  };
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: SizeOrSpan<Length>;
  /** Name of the shells that were found in it. */
  readonly fittedShells?: string;
}

/** Limits that hold for every cylinder. Where one is absent a published or common rule serves, and says so. */
export interface CylinderLimits {
  /** Out-of-round of the ring travel. */
  readonly outOfRound?: StatedLimits<'length'>;
  /** Taper of the ring travel. */
  readonly taper?: StatedLimits<'length'>;
  /** Piston clearance, on the diameter. There is no rule for it: without limits it is not judged. */
  readonly pistonClearance?: StatedLimits<'length'>;
  /** Ring gap. */
  readonly ringGap?: StatedLimits<'length'>;
}

/** One cylinder with its piston and rings. */
export interface CylinderSheet {
  /** What it is called on the bench. */
  readonly name: string;
  /** The bore. */
  readonly bore: {
    /** Bore-gauge readings, stations measured down from the deck. */
    readonly readings: readonly DiameterReading[];
    /** Stations between which the rings run [m]. */
    readonly ringTravel?: Span<Length>;
  };
  /** Piston diameter across its thrust faces [m]. */
  readonly piston?: SizeOrSpan<Length>;
  /** Rings that are to go into it. */
  readonly rings?: readonly {
    /** Which ring. */
    readonly name: string;
    /** Gap of the ring squared in its bore [m]. */
    readonly gap: Length;
    /** Diameter of the bore where the gap was measured [m]. */
    readonly measuredIn: Length;
  }[];
}

/** The oil, and what leaks into it. */
export interface OilSheet {
  /** Two points of the clean oil, from its data sheet. */
  readonly line: ViscosityLine;
  /** Density of the clean oil at 15 °C; by default 880 kg/m³, a rule of thumb [kg/m³]. */
  readonly density?: Density;
  /** Oil that belongs in the sump [m³]. */
  readonly sump: Volume;
  /** The used oil: its viscosity, and the temperature it was measured at. */
  readonly sample?: ViscosityPoint;
  /** Viscosity of the fuel at the temperature of the sample; petrol at 20 °C has a default [m²/s]. */
  readonly fuelViscosity?: KinematicViscosity;
  /** The fuel, where it is not petrol and a bearing is to be judged. */
  readonly fuel?: {
    /** Two points of its viscosity line. */
    readonly line: ViscosityLine;
    /** Density at 15 °C [kg/m³]. */
    readonly density: Density;
  };
  /** The bearing that the oil must carry, usually the hardest loaded big end. */
  readonly bearing?: FilmSheet;
  /** Fuel that runs into the oil while it stands. */
  readonly leak?:
    | {
        /** How many drops fall in a time [1/s]. */
        readonly drops: Rate;
        /** Volume of one drop, if it was measured [m³]. */
        readonly dropVolume?: Volume;
      }
    | {
        /** The flow, if it was measured [m³/s]. */
        readonly flow: Flow;
      };
  /** Fuel fractions to act at. */
  readonly thresholds?: {
    /** Above this the oil is changed and the leak found [-]. */
    readonly act: VolumeFraction;
    /** Above this the engine is not run [-]. */
    readonly critical: VolumeFraction;
    /** Who says so. */
    readonly source?: string;
  };
}

/** A bearing whose oil film is to be judged. */
export interface FilmSheet extends LoadedBearing {
  /** What it is called. */
  readonly name: string;
  /** Temperature at which the oil comes to it [K]. */
  readonly inlet: Temperature;
  /** Root mean square roughness of journal and shell [m]. */
  readonly roughness: Roughness;
  /** Least film over combined roughness; by default 3 [-]. */
  readonly filmRatio?: Ratio;
}
