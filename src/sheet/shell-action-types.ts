import type { UndersizeMismatch } from '../bearings/index.js';
import type { Length } from '../quantities/index.js';

/** Shells found on a journal of another undersize. */
export interface WrongShells {
  /** Take them out: running the engine would wreck it. */
  readonly kind: 'wrong shells';
  /** The bearing they were found in. */
  readonly bearing: string;
  /** Their name on the shelf. */
  readonly shells: string;
  /** The undersize they are made for [m]. */
  readonly undersize: Length;
  /** The undersize that the journal is ground to [m]. */
  readonly journalUndersize: Length;
  /** How the clearance shows it. */
  readonly explanation: UndersizeMismatch;
}

/** When shells are needed: in any case, or by what is decided on the grinding. */
export type WhenShells = 'in any case' | 'if ground' | 'if none is ground';
