import type { Span } from '../../judging/index.js';
import type { OddReading } from '../../measuring/index.js';
import type { Length } from '../../quantities/index.js';

/** A reading that can hardly be right: no verdict rests on it before it is read again. */
export type Misread =
  | {
      /** A reading that does not fit the others: no verdict rests on it before it is read again. */
      readonly kind: 'read again';
      /** The journal or bore it was read on. */
      readonly place: string;
      /** The reading, and what the others say. */
      readonly odd: OddReading;
    }
  | {
      /** Readings of one housing lie further apart than any housing is out of round: one of them is wrong. */
      readonly kind: 'readings apart';
      /** The housing. */
      readonly place: string;
      /** The smallest and the largest [m]. */
      readonly readings: Span<Length>;
    }
  | {
      /** A journal reads round and straight and lies at no step: most likely a whole turn of the thimble was miscounted. */
      readonly kind: 'at no step';
      /** The journal. */
      readonly place: string;
      /** How far below standard it reads [m]. */
      readonly below: Length;
    }
  | {
      /** A piston reads as large as the bore that its set is made for, or larger. */
      readonly kind: 'as large as its bore';
      /** The piston. */
      readonly place: string;
      /** What it reads [m]. */
      readonly size: Length;
      /** The oversize of its set; 0 for standard [m]. */
      readonly oversize: Length;
      /** The bore of that oversize [m]. */
      readonly bore: Span<Length>;
    }
  | {
      /** A piston reads further under the bore that its set is made for than any clearance. */
      readonly kind: 'far under its bore';
      /** The piston. */
      readonly place: string;
      /** What it reads [m]. */
      readonly size: Length;
      /** The oversize of its set; 0 for standard [m]. */
      readonly oversize: Length;
      /** The bore of that oversize [m]. */
      readonly bore: Span<Length>;
    }
  | {
      /** A piston differs from another of its set as no two pistons of one set do. */
      readonly kind: 'apart from its set';
      /** The piston. */
      readonly place: string;
      /** What it reads [m]. */
      readonly size: Length;
      /** The piston that it differs from. */
      readonly other: {
        /** Which one. */
        readonly place: string;
        /** What that one reads [m]. */
        readonly size: Length;
      };
    };
