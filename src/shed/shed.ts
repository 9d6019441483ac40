import type { SizeOrSpan, Span } from '../judging/index.js';
import type { DiameterReading } from '../measuring/index.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import type { EngineKind, Price, ShellPairs } from '../reading/index.js';
import type { Fault } from './faults.js';
import type { Section } from './sections.js';
import type { Work } from './works.js';

/**
 * Every part of one kind of engine that lies in a shed, as `readShed` gives it:
 * every quantity is SI. In the JSON each stands as text with its unit,
 * `"2.1248 in"`, and each price as text with its currency, `"14.50 EUR"`.
 */
export interface Shed extends Partial<Parts> {
  /** Version of the file's layout. */
  readonly version: 1;
  /** What the shed is called. */
  readonly shed: string;
  /** Units that plans are printed in, and that undersizes and oversizes step by. */
  readonly units: UnitSystem;
  /** What is known of the engine that the parts are for. */
  readonly engine: EngineKind;
  /** Machining that the owner can get; without it nothing can be machined. */
  readonly machining?: readonly MachiningOffer[];
  /** Parts that can be bought, section by section as in the shed. */
  readonly toBuy?: Offers;
}

/** The parts of a shed, section by section. */
export interface Parts {
  /** Cylinder blocks. */
  readonly blocks: readonly BlockPart[];
  /** Crankshafts. */
  readonly crankshafts: readonly CrankshaftPart[];
  /** Connecting rods, single or in sets that stay together. */
  readonly rods: readonly RodsPart[];
  /** Pistons, in sets of one for each cylinder. */
  readonly pistonSets: readonly PistonSetPart[];
  /** Rings, in sets for all cylinders. */
  readonly ringSets: readonly RingSetPart[];
  /** Pairs of half shells. */
  readonly shells: readonly ShellPart[];
  /** Thrust washers and shims that set the end play. */
  readonly thrustWashers: readonly ThrustWasherPart[];
  /** Cylinder heads. */
  readonly heads: readonly HeadPart[];
  /** Valves, in sets for a whole engine. */
  readonly valveSets: readonly ValveSetPart[];
}

/** Parts that can be bought: like those of the shed, each with its price. */
export type Offers = { readonly [S in Section]?: readonly Offered<Parts[S][number]>[] };

/** A part that can be bought. Its count or pairs are how many can be had; by default as many as are wanted. */
export type Offered<P> = P & {
  /** Price of one: a part, a set, a pair of shells. */
  readonly price: Price;
};

/** What every part has. */
export interface Part {
  /** What it is called on the bench; no two parts share a name. */
  readonly name: string;
  /** What it came from, for example a donor. */
  readonly from?: string;
  /** The groups of engines it interchanges with; by default it goes into all. */
  readonly interchange?: readonly string[];
  /** What can be seen to be wrong with it. */
  readonly faults?: readonly Fault[];
}

/** A part that there may be several of, all alike. */
export interface Counted {
  /** How many there are, all alike; by default 1. */
  readonly count?: number;
}

/** A cylinder block with its caps. */
export interface BlockPart extends Part {
  /** Every cylinder. */
  readonly bores: readonly BorePlace[];
  /** Every main housing, in the order of the crankshaft's main journals. */
  readonly mainHousings?: readonly HousingPlace[];
  /** Width over its thrust faces, between which the crankshaft's run [m]. */
  readonly thrustWidth?: Length;
}

/** One cylinder of a block. */
export interface BorePlace {
  /** What it is called on the bench. */
  readonly name: string;
  /** Bore-gauge readings, stations measured down from the deck. */
  readonly readings: readonly DiameterReading[];
  /** Stations between which the rings run [m]. */
  readonly ringTravel?: Span<Length>;
  /** Cylinder wall at its thinnest, as it is now [m]. */
  readonly wall?: Length;
  /** What can be seen to be wrong with it. */
  readonly faults?: readonly Fault[];
}

/** One housing that a pair of shells sits in. */
export interface HousingPlace {
  /** What it is called on the bench. */
  readonly name: string;
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: SizeOrSpan<Length>;
}

/** A crankshaft. */
export interface CrankshaftPart extends Part {
  /** Every rod journal. */
  readonly rodJournals: readonly JournalPlace[];
  /** Every main journal, in the order of the block's main housings. */
  readonly mainJournals?: readonly JournalPlace[];
  /** Distance between its thrust faces [m]. */
  readonly thrustWidth?: Length;
}

/** One journal of a crankshaft. */
export interface JournalPlace {
  /** What it is called on the bench. */
  readonly name: string;
  /** Micrometer readings, two angles or more at two stations or more. */
  readonly readings: readonly DiameterReading[];
  /** Full indicator reading against the axis it will be ground about [m]. */
  readonly runout?: Length;
  /** What can be seen to be wrong with it. */
  readonly faults?: readonly Fault[];
}

/** One rod, or a set that stays together: as many as the engine has cylinders. */
export interface RodsPart extends Part {
  /** Every rod. */
  readonly rods: readonly HousingPlace[];
}

/** Pistons for all cylinders. */
export interface PistonSetPart extends Part, Counted {
  /** The oversize they are made for, on the diameter; 0 for standard [m]. */
  readonly oversize: Length;
  /** Every piston. */
  readonly pistons: readonly {
    /** What it is called on the bench. */
    readonly name: string;
    /** Diameter across its thrust faces [m]. */
    readonly diameter: SizeOrSpan<Length>;
  }[];
}

/** Rings for all cylinders. */
export interface RingSetPart extends Part, Counted {
  /** The oversize they are made for, on the diameter of the bore; 0 for standard [m]. */
  readonly oversize: Length;
  /** Rings whose gap was measured: a gap that is too wide cannot be filed away. */
  readonly rings?: readonly {
    /** Which ring. */
    readonly name: string;
    /** Gap of the ring squared in its bore [m]. */
    readonly gap: Length;
    /** Diameter of the bore where the gap was measured [m]. */
    readonly measuredIn: Length;
  }[];
}

/** Pairs of half shells of one kind. */
export interface ShellPart extends Part, ShellPairs {}

/** Thrust washers or shims of one thickness. */
export interface ThrustWasherPart extends Part, Counted {
  /** Measured thickness [m]. */
  readonly thickness: Length;
}

/** A cylinder head. */
export interface HeadPart extends Part {
  /** Largest gap under a straight edge laid across its face [m]. */
  readonly flatness?: Length;
  /** Bore of its valve guides, the span of all [m]. */
  readonly guideBore?: SizeOrSpan<Length>;
}

/** Valves for a whole engine. */
export interface ValveSetPart extends Part, Counted {
  /** Diameter of their stems, the span of all [m]. */
  readonly stem?: SizeOrSpan<Length>;
}

/** Work that a shop does, and what it asks. */
export interface MachiningOffer {
  /** What is done. */
  readonly work: Work;
  /** Who does it. */
  readonly shop: string;
  /** Price of one: a journal, a cylinder, a housing; for straightening and skimming a part. */
  readonly price: Price;
}
