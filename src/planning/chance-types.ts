import type { Ratio } from '../quantities/index.js';
import type { NotJudged, Section } from '../shed/index.js';
import type { Unproven } from './proof-types.js';

/** How likely each number of engines is. */
export interface EngineChances {
  /** The chance of every number of engines, fewest first; none if the search did not end. */
  readonly chances: readonly EngineChance[];
  /** Whether every case was tried, or cases were drawn. */
  readonly how: 'every case' | 'draws';
  /** How many cases were drawn, if they were. */
  readonly draws?: number;
  /** The seed of the draws. */
  readonly seed?: number;
  /** The odds of every part that is not known, and of every other that its owner gives odds of. */
  readonly odds: readonly OddsOfPart[];
  /** What the chances leave out: parts that the engines take without a verdict on all of them, or without a crack test. */
  readonly notIn: readonly LeftOutOfChances[];
  /** Why the search ended early, if it did. */
  readonly ended?: Unproven['outcome'];
}

/** The chance of a number of engines. */
export interface EngineChance {
  /** How many engines [-]. */
  readonly engines: number;
  /** How likely it is that just so many can be built [-]. */
  readonly chance: Ratio;
}

/** How likely a part is good. */
export interface OddsOfPart {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name. */
  readonly name: string;
  /** How likely it is good [-]. */
  readonly odds: Ratio;
  /** Who says so. */
  readonly by: 'owner' | 'rule of thumb';
}

/** What the chances leave out of a part. */
export interface LeftOutOfChances {
  /** Its section of the shed. */
  readonly section: Section;
  /** Its name. */
  readonly name: string;
  /** Whether it is a part that cracks, and no test of it for cracks is listed. */
  readonly untested?: true;
  /** What of it no verdict is given on; absent if all is judged. */
  readonly notJudged?: readonly NotJudged[];
}
