import type {
  FilmDoubt,
  LoadedBearing,
  OilSupply,
  Roughness,
  ShellMaterial,
} from '../bearings/index.js';
import type { ViscosityLine, ViscosityPoint } from '../oil/index.js';
import type {
  Density,
  Flow,
  Force,
  KinematicViscosity,
  Length,
  Mass,
  Rate,
  Ratio,
  Temperature,
  Volume,
  VolumeFraction,
} from '../quantities/index.js';

/** The oil and its leak. */
export interface OilSheet {
  /** Two points of the clean oil, from its data sheet. */
  readonly line: ViscosityLine;
  /** Density of the clean oil at 15 °C; by default 880 kg/m³, a rule of thumb [kg/m³]. */
  readonly density?: Density;
  /** Volume of oil the sump should hold [m³]. */
  readonly sump: Volume;
  /** Sample of the used oil: its viscosity, and the temperature of the measurement. */
  readonly sample?: ViscosityPoint;
  /** Viscosity of the fuel at the temperature of the sample; petrol at 20 °C has a default [m²/s]. */
  readonly fuelViscosity?: KinematicViscosity;
  /** The fuel, if it is not petrol and a bearing is to be judged. */
  readonly fuel?: {
    /** Two points of its viscosity line. */
    readonly line: ViscosityLine;
    /** Density at 15 °C [kg/m³]. */
    readonly density: Density;
  };
  /** The bearing to judge, usually the hardest loaded big end. */
  readonly bearing?: FilmSheet;
  /** How far what is put in for the bearing is in doubt; by default a rule of thumb. */
  readonly doubt?: FilmDoubt;
  /** Fuel that leaks into the oil while the engine stands. */
  readonly leak?: LeakSheet;
  /** Fuel fractions to act at. */
  readonly thresholds?: {
    /** Above this, change the oil and find the leak [-]. */
    readonly act: VolumeFraction;
    /** Above this, do not run the engine [-]. */
    readonly critical: VolumeFraction;
    /** Who set them. */
    readonly source?: string;
  };
  /** Shares of its viscosity that the oil may lose. */
  readonly thinning?: {
    /** Above this, change the oil and find the cause [-]. */
    readonly act: Ratio;
    /** Above this, do not run the engine [-]. */
    readonly critical: Ratio;
    /** Who set them. */
    readonly source?: string;
  };
}

/** A leak of fuel into an oil of which nothing else is known. */
export interface LeakAlone {
  /** Fuel that leaks into the oil while the engine stands. */
  readonly leak: LeakSheet;
  /** Volume of oil the sump should hold, if it is known [m³]. */
  readonly sump?: Volume;
}

/** A leak, by its drops or by its flow. */
export type LeakSheet = LeakAround &
  (
    | {
        /** Rate of the drops [1/s]. */
        readonly drops: Rate;
        /** Volume of one drop, if it was measured [m³]. */
        readonly dropVolume?: Volume;
      }
    | {
        /** The flow, if it was measured [m³/s]. */
        readonly flow: Flow;
      }
  );

/** What goes with a leak. */
export interface LeakAround {
  /** Fuel that leaks while the engine runs; by default as much as while it stands [m³/s]. */
  readonly running?: Flow;
  /** Share of the fuel in the oil that evaporates in a time while the engine runs hot; none by default [1/s]. */
  readonly evaporation?: Rate;
  /** Space above one piston at top dead centre [m³]. */
  readonly clearanceVolume?: Volume;
}

/** A bearing whose oil film to judge. */
export interface FilmSheet extends LoadedBearing {
  /** Its name. */
  readonly name: string;
  /** Temperature of the oil at its inlet [K]. */
  readonly inlet: Temperature;
  /** Root mean square roughness of journal and shell [m]. */
  readonly roughness: Roughness;
  /** Least film as a multiple of the combined roughness; by default 3 [-]. */
  readonly filmRatio?: Ratio;
  /** What the running face of the shell is made of; without it the bearing is not accepted. */
  readonly material?: ShellMaterial;
  /** Without a film ratio: 3 as a general figure, 5 for surfaces that fit closely. */
  readonly duty?: 'general' | 'closely fitted';
  /** The largest particle that no filter holds back, or that there is no filter [m]. */
  readonly largestParticle?: Length | 'no filter';
  /** How oil comes to it. */
  readonly supply?: OilSupply;
  /** The parts that load a big end, so that it is judged by its orbit. */
  readonly bigEnd?: BigEndSheet;
  /** A rule to hold it to besides. */
  readonly rule?: 'Trumpler';
  /** For that rule: the load while the shaft starts to turn [N]. */
  readonly startUpLoad?: Force;
}

/** The moving parts of one cylinder. The pressure of its gas is taken as `gasTrace` has it. */
export interface BigEndSheet {
  /** Stroke [m]. */
  readonly stroke: Length;
  /** Rod between the centres of its eyes [m]. */
  readonly rodLength: Length;
  /** Bore [m]. */
  readonly bore: Length;
  /** Compression ratio [-]. */
  readonly compressionRatio: Ratio;
  /** Piston with its rings and pin [kg]. */
  readonly pistonMass: Mass;
  /** Small end of the rod, weighed with the big end held up level [kg]. */
  readonly smallEndMass: Mass;
  /** Big end of the rod with cap, bolts and shells, weighed with the small end held up level [kg]. */
  readonly bigEndMass: Mass;
}
