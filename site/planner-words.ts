import type { Block } from '../src/pages/index.js';
import type { UnitSystem } from '../src/quantities/index.js';

// What the page and its worker tell each other.

/** What the worker is to do with a file. */
export interface Asked {
  readonly ask: 'report' | 'plan';
  /** The sheet or the shed, as text. */
  readonly text: string;
  /** A CSV of readings that goes with a shed. */
  readonly readings?: string;
  /** The day, as `2026-11-26`. */
  readonly today: string;
  readonly units?: UnitSystem;
  readonly why: boolean;
  readonly atMost?: number;
  readonly buying: boolean;
}

/** One printed paper: a report or a plan, which have pictures, or a build sheet to write on. */
export interface Paper {
  readonly title: string;
  /** As plain text, to keep. */
  readonly text: string;
  readonly shown: ShownPage | ShownBlocks;
}

/** A web page of its own, as `crankwright/plots` prints it. */
export interface ShownPage {
  readonly as: 'page';
  readonly page: string;
}

/** What a build sheet is made of. */
export interface ShownBlocks {
  readonly as: 'blocks';
  readonly blocks: readonly Block[];
}

/** What the worker tells the page. */
export type Told =
  | { readonly told: 'progress'; readonly stage: string; readonly elapsed: number }
  | { readonly told: 'done'; readonly of: 'sheet' | 'shed'; readonly papers: readonly Paper[] }
  | { readonly told: 'refused'; readonly message: string };
