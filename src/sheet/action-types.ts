import type { ShellMatch } from '../bearings/index.js';
import type { NearlyServes, ServedGrindPlan } from '../crankshaft/index.js';
import type { ServedBorePlan } from '../cylinders/index.js';
import type { Finding, Span } from '../judging/index.js';
import type { OddReading } from '../measuring/index.js';
import type { DilutionFinding, FuelFractionSpan, ThinningFinding } from '../oil/index.js';
import type { Flow, KinematicViscosity, Length } from '../quantities/index.js';
import type { Happening } from '../reading/index.js';
import type { AssemblyAction } from './assembly-actions.js';
import type { RingReport } from './inspect-cylinder.js';
import type { FilmReport } from './inspect-film.js';
import type { BareHousing, BuyShells, WhenShells, WrongShells } from './shell-action-types.js';
import type { Unsettled } from './unsettled.js';
import type { ValveAction } from './valve-actions.js';
import type { Wait } from './waiting.js';

/** One thing to do, by its `kind`, with the finding behind it. */
export type Action =
  | WrongShells
  | BareHousing
  | BuyShells
  | ValveAction
  | AssemblyAction
  | (Unsettled & {
      /** A size is nearer to a limit than it is measured to: better readings decide. */
      readonly kind: 'measure again';
    })
  | {
      /** A reading does not fit the others: nothing is decided on its part before it is read again. */
      readonly kind: 'read again';
      /** The journal or cylinder. */
      readonly part: string;
      /** The reading, and what the others say. */
      readonly odd: OddReading;
    }
  | {
      /** Look for cracks before any money is spent on a part. */
      readonly kind: 'crack test';
      /** What the engine went through, if anything. */
      readonly happened: readonly Happening[];
      /** The castings and forgings that money is to be spent on. */
      readonly machined: readonly ('crankshaft' | 'block')[];
    }
  | {
      /** The housing is out of round by what is wrong with the clearance. */
      readonly kind: 'check the housing';
      /** Which bearing. */
      readonly bearing: string;
      /** How far its readings are apart [m]. */
      readonly outOfRound: Length;
      /** The clearance against its limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Fuel has thinned the oil: too far to run, or far enough to change it. */
      readonly kind: 'do not run' | 'change the oil';
      /** The fuel fraction against its limit, at the end where most is found. */
      readonly dilution: DilutionFinding;
      /** Fuel by every blending law: the laws disagree. */
      readonly byLaw: FuelFractionSpan;
    }
  | {
      /** The oil has lost much of its viscosity, or has thinned out of its grade, more than its fuel tells. */
      readonly kind: 'thin oil';
      /** The viscosity that it has lost. */
      readonly thinning: ThinningFinding;
    }
  | {
      /** The oil is thicker than clean oil: it has aged, or is another grade. */
      readonly kind: 'thick oil';
      /** Viscosity of the sample [m²/s]. */
      readonly viscosity: KinematicViscosity;
      /** Viscosity of clean oil at the same temperature [m²/s]. */
      readonly clean: KinematicViscosity;
    }
  | {
      /** Oil does not keep the surfaces of a bearing apart, or its metal, heat or oil supply wrecks it. */
      readonly kind: 'thin film';
      /** The bearing and its film. */
      readonly film: FilmReport;
    }
  | {
      /** Fuel leaks into the oil. */
      readonly kind: 'stop the leak';
      /** Size of the leak, least and most [m³/s]. */
      readonly flow: Span<Flow>;
    }
  | {
      /**
       * A bearing that needs no grinding has a wrong clearance, and no undersize explains it. Or
       * the clearance contradicts the stamp on the shells and the size of the journal.
       */
      readonly kind: 'wrong clearance' | 'check sizes';
      /** Which bearing. */
      readonly bearing: string;
      /** Its clearance against the limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** A journal runs so far out that the crankshaft is bent: it has no size to grind to until it is straight. */
      readonly kind: 'bent crankshaft';
      /** Which bearing it was read at. */
      readonly bearing: string;
      /** Its runout against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Housings are compared with the manual before shells are bought or journals ground. */
      readonly kind: 'compare the housings';
      /** Which ones. */
      readonly journals: readonly ('rods' | 'mains')[];
    }
  | {
      /** Fuel leaks into oil of which nobody knows how much fuel is in it. */
      readonly kind: 'unknown oil';
      /** Size of the leak, least and most [m³/s]. */
      readonly flow: Span<Flow>;
    }
  | {
      /** Journals must be ground. */
      readonly kind: 'grind';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** To what size, and why. */
      readonly plan: ServedGrindPlan;
      /** Whether only rules of thumb ask for it. */
      readonly byRule?: true;
      /** Journals found ground to that size in shells of another: they are read again first. */
      readonly hangsOn?: readonly string[];
      /** Journals that need no grinding by themselves. */
      readonly sound: readonly {
        /** Which one. */
        readonly name: string;
        /** Its undersize now [m]. */
        readonly undersize: Length;
      }[];
    }
  | {
      /** No undersize saves these journals. */
      readonly kind: 'no step serves';
      /** Which ones. */
      readonly journals: 'rods' | 'mains';
      /** Journals that do not clean up at any step. */
      readonly defeatedBy: readonly string[];
      /** The first step that may serve all the same, if journals are measured better. */
      readonly nearly?: NearlyServes;
    }
  | {
      /** Shells from the shelf, or those that were found in it, fit a finished bearing. */
      readonly kind: 'fit shells';
      /** Which bearing. */
      readonly bearing: string;
      /** Which shells, and the clearance they leave. */
      readonly match: ShellMatch;
      /** Whether it depends on the grinding. */
      readonly when: WhenShells;
      /** Whether they are those that were found in it. */
      readonly wereFound: boolean;
    }
  | {
      /** The crankshaft floats too much or too little. */
      readonly kind: 'set the end play';
      /** The end play against its limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The crankshaft floats so far that a thrust face or a washer is gone. */
      readonly kind: 'lost thrust face';
      /** The end play against its limits. */
      readonly finding: Finding<'length'>;
      /** How much is missing [m]. */
      readonly missing: Length;
    }
  | {
      /** The cylinders must be bored to a common oversize. */
      readonly kind: 'bore';
      /** To what size, and why. */
      readonly plan: ServedBorePlan;
      /** Whether only rules of thumb ask for it. */
      readonly byRule?: true;
      /** Cylinders that need no boring by themselves. */
      readonly sound: readonly {
        /** Which one. */
        readonly name: string;
        /** Its oversize now [m]. */
        readonly oversize: Length;
      }[];
    }
  | {
      /** The bore is outside its limits, and the sheet does not say what the maker bored to. */
      readonly kind: 'rebore';
      /** Which cylinder. */
      readonly cylinder: string;
      /** The finding that it fails. */
      readonly finding: Finding<'length'>;
      /** Whether only rules of thumb and limits of other engines stand against it, and not all of those. */
      readonly inDoubt: boolean;
    }
  | {
      /** The piston reads larger than its bore, or looser than wear makes one: a reading is wrong, or it is not for this bore. */
      readonly kind: 'piston interferes' | 'loose piston';
      /** Which cylinder. */
      readonly cylinder: string;
      /** Its diametral clearance, all of it negative where it interferes [m]. */
      readonly clearance: Span<Length>;
    }
  | {
      /** A journal reads round and straight at no step, or above standard: most likely the thimble was read a turn off. */
      readonly kind: 'odd size';
      /** Which bearing. */
      readonly bearing: string;
      /** How far it is below standard; negative above it [m]. */
      readonly below: Length;
    }
  | {
      /** A bore reads round and straight, and yet where no boring and no wear takes it. */
      readonly kind: 'odd bore';
      /** Which cylinder. */
      readonly cylinder: string;
      /** How far it is above standard [m]. */
      readonly above: Length;
    }
  | Wait
  | {
      /** The clearance of the piston is outside its limits. */
      readonly kind: 'wrong piston';
      /** Which cylinder. */
      readonly cylinder: string;
      /** The finding that it fails. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** A ring must be filed or replaced, or the bore is worn too far for it. */
      readonly kind: 'ring';
      /** Which cylinder. */
      readonly cylinder: string;
      /** Which ring, and what to do with it. */
      readonly ring: RingReport;
    };
