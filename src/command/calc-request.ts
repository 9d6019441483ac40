import type { UnitSystem } from '../quantities/index.js';

/** What to work out: an expression on the command line, or a file of them. */
export interface CalcRequest {
  readonly command: 'calc';
  /** What is on the command line; without it, standard input is read. */
  readonly text?: string;
  readonly units: UnitSystem;
  readonly output: 'text' | 'json';
}
