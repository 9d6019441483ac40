import type { Dimension, UnitSystem } from '../quantities/index.js';
import type { CardTopic } from './formula-card.js';
import type { PrintedQuantity } from './worked-types.js';

/** Something that an exercise gives, in the unit that a shop reads it in. */
export interface ExerciseGiven extends PrintedQuantity {
  /** How the formula writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
}

/** A letter that the formula defines on the way. */
export interface ExerciseDefined {
  /** How the formula writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
}

/** What an exercise asks for. */
export interface ExerciseAsk {
  /** How the formula writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
  /** Its dimension. */
  readonly dimension: Dimension;
  /** The unit that a shop reads it in; empty for a plain number. */
  readonly unit: string;
}

/** A problem to work out, with its answer. */
export interface Exercise {
  /** Name of the card. */
  readonly name: string;
  /** The number that it was drawn with: the same seed gives the same exercise. */
  readonly seed: number;
  /** The units that the shop reads. */
  readonly units: UnitSystem;
  /** The units that it is told in: what is made or measured out in one system alone is told in that to every shop. */
  readonly toldIn: UnitSystem;
  /** What the formula gives, in the trade's words. */
  readonly title: string;
  /** What it is about. */
  readonly topic: CardTopic;
  /** What is given. */
  readonly given: readonly ExerciseGiven[];
  /** What is asked. */
  readonly asks: ExerciseAsk;
  /** The formula to work with. */
  readonly formula: string;
  /** Definitions that go with it. */
  readonly where: readonly string[];
  /** What those define. */
  readonly defines: readonly ExerciseDefined[];
  /** A number for each letter [SI]. */
  readonly values: Readonly<Record<string, number>>;
  /** The answer in the unit that is asked for, as a shop writes it down. */
  readonly answer: PrintedQuantity;
  /** The answer as a number [SI]. */
  readonly value: number;
  /** How far from it a right answer may be [SI]. */
  readonly tolerance: number;
}
