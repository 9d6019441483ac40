import type { SizeOrSpan, Span } from '../judging/index.js';
import type { DiameterReading } from '../measuring/index.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import type { Bench, EngineKind, Price, ShellPairs } from '../reading/index.js';
import type { AsWritten } from './as-written.js';
import type { Fault } from './faults.js';
import type { Testable } from './history.js';
import type { Core, Part } from './part.js';
import type { Section } from './sections.js';
import type { ToMake } from './to-make.js';
import type { Work } from './works.js';

/**
 * All the parts you have for one kind of engine, as `readShed` returns them, with every quantity in
 * SI. In the JSON file each quantity is text with its unit, `"2.1248 in"`, and each price is text
 * with its currency, `"14.50 EUR"`.
 */
export interface Shed extends Partial<Parts>, Bench {
  /** Version of the layout. */
  readonly version: 1;
  /** Name of the shed. */
  readonly shed: string;
  /** Units of the plans, and of the default undersizes and oversizes. */
  readonly units: UnitSystem;
  /** Data on the engine the parts are for. */
  readonly engine: EngineKind;
  /** Remarks on the whole. */
  readonly notes?: readonly string[];
  /** Engines that are not taken apart. */
  readonly cores?: readonly Core[];
  /** Machining you can get; without it nothing can be machined. */
  readonly machining?: readonly MachiningOffer[];
  /** Parts you can buy, section by section as in the shed. */
  readonly toBuy?: Offers;
  /** Parts that can be made to suit. */
  readonly toMake?: ToMake;
  /** How hard the parts of a section, or other parts of a kind, are to get: weights against each other. */
  readonly hardToGet?: Readonly<Record<string, number>>;
  /** The file it was read from: `writeShed` gives it back. Absent in a shed that was made in code. */
  readonly asWritten?: AsWritten;
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
  /** Camshafts, magnetos, carburettors, pumps and any other kind of part. */
  readonly otherParts: readonly OtherPart[];
}

/** Parts to buy: like those of the shed, each with its price. */
export type Offers = { readonly [S in Section]?: readonly Offered<Parts[S][number]>[] };

/** A part to buy. Its `count` or `pairs` is how many you can get; by default there is no limit. */
export type Offered<P> = P & {
  /** Price of one: a part, a set, a pair of shells. */
  readonly price: Price;
};

/** A part of which there may be several, all alike. */
export interface Counted {
  /** How many there are; by default 1. */
  readonly count?: number;
}

/** A cylinder block with its caps. */
export interface BlockPart extends Part, Testable {
  /** Every cylinder. */
  readonly bores?: readonly BorePlace[];
  /** Every main housing, in the order of the crankshaft's main journals. */
  readonly mainHousings?: readonly HousingPlace[];
  /** Width over its thrust faces, which lie between those of the crankshaft [m]. */
  readonly thrustWidth?: Length;
}

/** One cylinder of a block. */
export interface BorePlace {
  /** Its name on the bench. */
  readonly name: string;
  /** Bore-gauge readings, stations measured down from the deck. */
  readonly readings?: readonly DiameterReading[];
  /** The stations at the ends of the ring travel [m]. */
  readonly ringTravel?: Span<Length>;
  /** Cylinder wall at its thinnest, now [m]. */
  readonly wall?: Length;
  /** Its visible faults. */
  readonly faults?: readonly Fault[];
}

/** One housing for a pair of shells. */
export interface HousingPlace {
  /** Its name on the bench. */
  readonly name: string;
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore?: SizeOrSpan<Length>;
}

/** A crankshaft. */
export interface CrankshaftPart extends Part, Testable {
  /** Every rod journal. */
  readonly rodJournals?: readonly JournalPlace[];
  /** Every main journal, in the order of the block's main housings. */
  readonly mainJournals?: readonly JournalPlace[];
  /** Distance between its thrust faces [m]. */
  readonly thrustWidth?: Length;
  /**
   * Of a bent crankshaft: the largest full indicator reading that its journals will have once it is
   * straight, which the shop promises [m].
   */
  readonly runoutOnceStraight?: Length;
}

/** One journal of a crankshaft. */
export interface JournalPlace {
  /** Its name on the bench. */
  readonly name: string;
  /** Micrometer readings, at two or more angles at each of two or more stations. */
  readonly readings?: readonly DiameterReading[];
  /** Full indicator reading against the axis it will be ground about [m]. */
  readonly runout?: Length;
  /** Its visible faults. */
  readonly faults?: readonly Fault[];
}

/** One rod, or a set that stays together, with one rod for each cylinder. */
export interface RodsPart extends Part, Testable {
  /** Every rod; a set for all cylinders if they are not listed. */
  readonly rods?: readonly HousingPlace[];
}

/** Pistons for all cylinders. */
export interface PistonSetPart extends Part, Counted {
  /** The oversize they are made for, on the diameter; 0 for standard [m]. */
  readonly oversize?: Length;
  /** Every piston. */
  readonly pistons?: readonly PistonPlace[];
}

/** One piston. */
export interface PistonPlace {
  /** Its name on the bench. */
  readonly name: string;
  /** Diameter across its thrust faces [m]. */
  readonly diameter?: SizeOrSpan<Length>;
}

/** Rings for all cylinders. */
export interface RingSetPart extends Part, Counted {
  /** The oversize they are made for, on the diameter of the bore; 0 for standard [m]. */
  readonly oversize?: Length;
  /** Rings with a measured gap: a gap that is too wide cannot be corrected. */
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
export interface ShellPart extends Part, Partial<Omit<ShellPairs, 'name'>> {}

/** Thrust washers or shims of one thickness. */
export interface ThrustWasherPart extends Part, Counted {
  /** Measured thickness [m]. */
  readonly thickness?: Length;
}

/** A cylinder head. */
export interface HeadPart extends Part, Testable {
  /** Largest gap under a straight edge laid across its face [m]. */
  readonly flatness?: Length;
  /** Bore of its valve guides, as one span for all [m]. */
  readonly guideBore?: SizeOrSpan<Length>;
}

/** Valves for a whole engine. */
export interface ValveSetPart extends Part, Counted {
  /** Diameter of their stems, as one span for all [m]. */
  readonly stem?: SizeOrSpan<Length>;
  /** Thinnest margin of any valve: the rim between its face and the top of its head. Of pitted valves, what refacing leaves [m]. */
  readonly margin?: Length;
}

/** Any other part: a camshaft, a magneto, a gasket set. */
export interface OtherPart extends Part, Counted {
  /** What it is, in the words that `engine.alsoNeeds` uses. */
  readonly kind: string;
}

/** Work that a shop offers, and its price. */
export interface MachiningOffer {
  /** The work. */
  readonly work: Work;
  /** The shop. */
  readonly shop: string;
  /** Price for one journal, cylinder or housing; for any other work, for one part or one set of valves. */
  readonly price: Price;
}
