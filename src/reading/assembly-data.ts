import type {
  BoltGrade,
  BoltPlace,
  ThreadCondition,
  ThreadSize,
  WrenchAdapter,
} from '../fasteners/index.js';
import type { WrenchScale } from '../fasteners/internal.js';
import type { InchFitClass } from '../fits/index.js';
import type { SizeOrSpan } from '../judging/index.js';
import type { EngineMaterial } from '../measuring/index.js';
import type { Length, Ratio, Temperature, Torque } from '../quantities/index.js';
import type { CompressionData, DipperData, TimingData } from './setting-up-data.js';
import type { StatedLimits } from './stated-limits.js';

/** What an engine is set to as it goes together, as far as its maker's figures are known. */
export interface AssemblyData {
  /** What the torque wrench is marked in; by default lbf·ft in an inch shop and N·m in a metric one. */
  readonly wrench?: WrenchScale;
  /** Fasteners, by what they hold. */
  readonly fasteners?: FastenersData;
  /** Lash and springs of the valves. */
  readonly valves?: ValvesData;
  /** Rings in their grooves. */
  readonly rings?: RingsData;
  /** Rod from centre to centre; with the stroke of `bores` it tells where the piston is [m]. */
  readonly rodLength?: Length;
  /** The space above the piston, and how compression is tested. */
  readonly compression?: CompressionData;
  /** Where valves and spark come. */
  readonly timing?: TimingData;
  /** The dippers of a splash-oiled engine and their troughs. */
  readonly dipper?: DipperData;
  /** Parts that run or press in each other. */
  readonly fits?: readonly FitData[];
}

/** The fasteners of an engine, by what they hold. */
export interface FastenersData {
  /** Main bearing caps. */
  readonly mainCaps?: FastenerData;
  /** Rod caps. */
  readonly rodCaps?: FastenerData;
  /** Cylinder head. */
  readonly head?: FastenerData;
  /** Flywheel. */
  readonly flywheel?: FastenerData;
}

/** A thread. */
export interface ThreadData extends ThreadSize {
  /** As its standard writes it, if it is one of a series: `3/8-16 UNC`. */
  readonly designation?: string;
}

/** How a fastener is kept from working loose: split pins, tab washers, wire, locknuts, or its torque alone. */
export type Locking = 'pins' | 'tabs' | 'wire' | 'locknuts' | 'torque alone';

/** What is known of the bolts, studs or nuts that hold one part. */
export interface FastenerData {
  /** The thread, as its standard names it, or its form, diameter and pitch. */
  readonly thread?: ThreadData;
  /** What the head says. */
  readonly grade?: BoltGrade;
  /** What is on the thread and under the nut as it is tightened. */
  readonly condition?: ThreadCondition;
  /** Least diameter of the shank, if that may be less than the thread's [m]. */
  readonly leastDiameter?: Length;
  /** The maker's torque at the fastener [N·m]. */
  readonly torque?: SizeOrSpan<Torque>;
  /** Who gives that torque, for example the manual and its page. */
  readonly source?: string;
  /** Torque that turns a locking nut before it meets its seat [N·m]. */
  readonly prevailing?: Torque;
  /** An adapter that stands off the square of the wrench, if there is one. */
  readonly adapter?: WrenchAdapter;
  /** Where the bolts stand; the sequence comes of it. */
  readonly bolts?: readonly BoltPlace[];
  /** In how many rounds they are tightened; by default 3. */
  readonly rounds?: 2 | 3;
  /** How they are locked; without it nobody knows. */
  readonly locking?: Locking;
}

/** The valves of an engine. */
export interface ValvesData {
  /** All inlet valves. */
  readonly inlet?: ValveData;
  /** All exhaust valves. */
  readonly exhaust?: ValveData;
}

/** What is known of one kind of valve. */
export interface ValveData {
  /** Its lash. */
  readonly lash?: StatedLimits<'length'>;
  /** Whether that lash is set cold or hot; without it nobody knows. */
  readonly set?: 'cold' | 'hot';
  /** How it is set: by a screw, by shims or caps, or by grinding the stem. */
  readonly setBy?: 'screw' | 'shims' | 'stem';
  /** What warms up between the cam and the seat. Of a lash that is set hot it gives one to set cold. */
  readonly train?: TrainData;
  /** Its spring with the valve closed: height, and the least and most force at it. */
  readonly closedSpring?: SpringData;
  /** The same with the valve open. */
  readonly openSpring?: SpringData;
}

/** A valve train and what carries it. */
export interface TrainData extends TrainSideData {
  /** The rocker, with what lies between the cam and its shaft. */
  readonly rocker?: TrainSideData & {
    /** Arm on the valve's side over the arm on the push rod's [-]. */
    readonly ratio: Ratio;
  };
}

/** What opens a lash as it warms, and what closes it. */
export interface TrainSideData {
  /** What carries the train; it opens the lash. */
  readonly carrier: readonly TrainPieceData[];
  /** The train itself; it closes the lash. */
  readonly train: readonly TrainPieceData[];
}

/** A piece that warms up. */
export interface TrainPieceData {
  /** How long it is when cold, along the train [m]. */
  readonly length: Length;
  /** What it is made of. */
  readonly material: EngineMaterial;
  /** How warm it runs, on average over its length [K]. */
  readonly temperature: Temperature;
}

/** What a spring presses with at one height. */
export interface SpringData {
  /** The height [m]. */
  readonly height: Length;
  /** The force that is wanted at it. */
  readonly force: StatedLimits<'force'>;
}

/** What is known of the rings in their grooves. */
export interface RingsData {
  /** Side clearance of a ring in its groove. */
  readonly sideClearance?: StatedLimits<'length'>;
  /** Room behind a ring that is flush with its land. */
  readonly backClearance?: StatedLimits<'length'>;
}

/** A hole and what goes into it. */
export interface FitData {
  /** What it is, for example the piston pin in its bushing. */
  readonly name: string;
  /** The fit by ISO 286, for example `20H7/g6`. */
  readonly isoFit?: string;
  /** The fit by ANSI B4.1. */
  readonly inchFit?: {
    /** Class of the fit. */
    readonly fitClass: InchFitClass;
    /** Basic size of both [m]. */
    readonly basic: Length;
  };
  /** Diametral clearance that is wanted, negative for an interference; it wins over a class. */
  readonly clearance?: StatedLimits<'length'>;
  /** The hole as it was measured [m]. */
  readonly hole?: SizeOrSpan<Length>;
  /** The shaft as it was measured [m]. */
  readonly shaft?: SizeOrSpan<Length>;
}
