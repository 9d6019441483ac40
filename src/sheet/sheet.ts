import type { SizeOrSpan, Span } from '../judging/index.js';
import type { DiameterReading } from '../measuring/index.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import type {
  AssemblyData,
  Bench,
  BoreKind,
  Happening,
  JournalKind,
  ShellPairs,
  StatedLimits,
} from '../reading/index.js';
import type { CompressionSheet } from './compression-sheet.js';
import type { LeakAlone, OilSheet } from './oil-sheet.js';
import type { ValveLimits, ValveSheet } from './valve-sheet.js';

/** A rod, main or cylinder that is left out. */
export interface LeftOut {
  /** Its name. */
  readonly name: string;
  /** What is still to be read of it, if some was read. */
  readonly lacks?: string;
}

/** What a sheet names and nobody filled in, or read too little of to judge. */
export interface NotFilledIn {
  /** Rods. */
  readonly rods?: readonly LeftOut[];
  /** Mains. */
  readonly mains?: readonly LeftOut[];
  /** Cylinders. */
  readonly cylinders?: readonly LeftOut[];
}

/**
 * The inspection sheet of one engine, as `readSheet` returns it, with every quantity in SI. In the
 * JSON file each is text with its unit, `"2.1248 in"`.
 */
export interface Sheet extends Bench {
  /** Version of the layout. */
  readonly version: 1;
  /** Name of the engine. */
  readonly engine: string;
  /** What the engine went through, if that is known. */
  readonly happened?: readonly Happening[];
  /** Units of the report, and of the engine's default undersizes. */
  readonly units: UnitSystem;
  /** Data on the crankshaft as a whole. */
  readonly crankshaft?: CrankshaftSheet;
  /** Rods, mains and cylinders that the file names and that nobody filled in, or that are half read. */
  readonly notFilledIn?: NotFilledIn;
  /** Connecting rods, each with the journal it runs on. */
  readonly rods?: readonly BearingSheet[];
  /** Main housings, each with the journal that runs in it. */
  readonly mains?: readonly BearingSheet[];
  /** Shells on the shelf, and those found fitted. */
  readonly shells?: readonly ShellPairs[];
  /** Sizes of the bores as the maker made them, and what they are bored to. */
  readonly bores?: BoresSheet;
  /** Limits for every cylinder. */
  readonly cylinderLimits?: CylinderLimits;
  /** Cylinders, each with its piston and rings. */
  readonly cylinders?: readonly CylinderSheet[];
  /** Limits for every valve. */
  readonly valveLimits?: ValveLimits;
  /** Valves, each with its seat, guide and spring. */
  readonly valves?: readonly ValveSheet[];
  /** A compression test, and a leakage test of the cylinders that had one. */
  readonly compressionTest?: CompressionSheet;
  /** What the engine is set to as it goes together. */
  readonly assembly?: AssemblyData;
  /** The oil and its leak, or the leak alone. */
  readonly oil?: OilSheet | LeakAlone;
}

/** The crankshaft as a whole. */
export interface CrankshaftSheet {
  /** Standard size and limits of the rod journals; required if rods were measured. */
  readonly rodJournals?: JournalKind;
  /** Standard size and limits of the main journals; required if mains were measured. */
  readonly mainJournals?: JournalKind;
  /** End play. */
  readonly endPlay?: EndPlaySheet;
}

/** End play readings. */
export interface EndPlaySheet {
  /** Dial readings at both ends of the float, a pair for each turn of the shaft. */
  readonly readings: readonly {
    /** Dial with the shaft pushed to one end [m]. */
    readonly pushed: Length;
    /** Dial with the shaft pulled to the other end [m]. */
    readonly pulled: Length;
  }[];
  /** Its limits. */
  readonly limits?: StatedLimits<'length'>;
}

/** One bearing: a journal and the housing it runs in. */
export interface BearingSheet {
  /** Its name on the bench. */
  readonly name: string;
  /** The journal. */
  readonly journal: {
    /** Micrometer readings, at two or more angles at each of two or more stations. */
    readonly readings: readonly DiameterReading[];
    /** Full indicator reading against the axis it will be ground about [m]. */
    readonly runout?: Length;
  };
  /** Housing bore with its cap torqued and no shells; without it no clearance is judged and no shells are chosen [m]. */
  readonly housingBore?: SizeOrSpan<Length>;
  /** Name of the shells found in it. */
  readonly fittedShells?: string;
}

/** Sizes of the bores as the maker made them, and what they are bored to. */
export type BoresSheet = Pick<
  BoreKind,
  'standard' | 'steps' | 'stroke' | 'honingAllowance' | 'sizeAllowance' | 'leastWall'
>;

/** Limits for every cylinder. Without one, a published limit or a rule of thumb is used and named. */
export interface CylinderLimits {
  /** Out-of-round of the ring travel. */
  readonly outOfRound?: StatedLimits<'length'>;
  /** Taper of the ring travel. */
  readonly taper?: StatedLimits<'length'>;
  /** Piston clearance, on the diameter. Without limits it is not judged. */
  readonly pistonClearance?: StatedLimits<'length'>;
  /** Ring gap. */
  readonly ringGap?: StatedLimits<'length'>;
}

/** One cylinder with its piston and rings. */
export interface CylinderSheet {
  /** Its name on the bench. */
  readonly name: string;
  /** The bore. */
  readonly bore: {
    /** Bore-gauge readings, stations measured down from the deck. */
    readonly readings: readonly DiameterReading[];
    /** The stations at the ends of the ring travel [m]. */
    readonly ringTravel?: Span<Length>;
    /** Cylinder wall at its thinnest, now [m]. */
    readonly wall?: Length;
  };
  /** Piston diameter across its thrust faces [m]. */
  readonly piston?: SizeOrSpan<Length>;
  /** The rings for it. */
  readonly rings?: readonly {
    /** Which ring. */
    readonly name: string;
    /** Gap of the ring squared in its bore [m]. */
    readonly gap: Length;
    /** Diameter of the bore where the gap was measured [m]. */
    readonly measuredIn: Length;
  }[];
}
