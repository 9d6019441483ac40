import type { Happening } from '../../reading/index.js';
import type { Condition } from '../part.js';
import type { Section } from '../sections.js';
import type { NeededTest } from './needed-test.js';

/** An engine that is not taken apart, as far as its owner knows it. */
export interface TriagedCore {
  /** Its name. */
  readonly name: string;
  /** The state it was found in. */
  readonly condition?: Condition;
  /** What happened to it. */
  readonly happened?: readonly Happening[];
  /** What it should hold, of which nothing was measured: the trade's words. */
  readonly holds: readonly string[];
  /** The tests that its parts need before they are used, for what happened to it or for what they are. */
  readonly tests: readonly CoreTest[];
}

/** A test that a part of an engine needs, which is not taken apart. */
export interface CoreTest {
  /** The section of the part. */
  readonly section: Section;
  /** The part, named after its engine. */
  readonly name: string;
  /** The test. */
  readonly test: NeededTest;
}
