import type { UnitSystem } from '../quantities/index.js';
import type { CardTopic } from './formula-card.js';

/** A number with its unit, as it is printed. */
export interface PrintedQuantity {
  /** The number as it is printed, rounded [-]. */
  readonly value: number;
  /** The unit as a person reads it; empty for a plain number. */
  readonly unit: string;
  /** Both: `0.062 in`. */
  readonly text: string;
}

/** How a number in one unit becomes one in another. */
export interface WorkedConversion {
  /** The sum, as a calculator takes it: `62 / 1000`. */
  readonly typed: string;
  /** What it gives. */
  readonly gives: PrintedQuantity;
}

/** A letter of the formula, and what was put in for it. */
export interface WorkedLetter {
  /** How the formula writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
  /** The parameter of the function that it goes into. */
  readonly field: string;
  /** The value in the unit that a shop reads it in. */
  readonly given: PrintedQuantity;
  /** The value in the units that the formula is worked in, where they are others. */
  readonly converted?: WorkedConversion;
}

/** A quantity that the formula itself holds, in the units that it is worked in. */
export interface WorkedConstant {
  /** As the formula writes it: `0.0002 in`. */
  readonly written: string;
  /** The same in the units of the working. */
  readonly gives: PrintedQuantity;
}

/** One line of the working. */
export interface WorkedStep {
  /** What is worked out. */
  readonly symbol: string;
  /** What that stands for, where it is worked out on the way. */
  readonly meaning?: string;
  /** In letters. */
  readonly symbolic: string;
  /** With the numbers put in, each with its unit, in mathjs syntax. */
  readonly substituted: string;
  /** With the numbers put in, and no units, as a calculator takes it; angles are in radians. */
  readonly typed: string;
  /** What comes out. */
  readonly gives: PrintedQuantity;
  /** Whether its numbers were read from a table. */
  readonly isTabled: boolean;
}

/** A formula worked through with numbers. */
export interface WorkedFormula {
  /** Name of the card. */
  readonly name: string;
  /** What the formula gives, in the trade's words. */
  readonly title: string;
  /** What it is about. */
  readonly topic: CardTopic;
  /** The units that a shop reads. */
  readonly units: UnitSystem;
  /** What comes out: its symbol and what it stands for. */
  readonly asks: {
    /** How the formula writes it. */
    readonly symbol: string;
    /** What it stands for, in the trade's words. */
    readonly meaning: string;
  };
  /** The formula, in letters. */
  readonly formula: string;
  /** Definitions that go with it, in letters. */
  readonly where: readonly string[];
  /** What goes in. */
  readonly legend: readonly WorkedLetter[];
  /** Quantities that the formula itself holds, where they are written in other units. */
  readonly constants: readonly WorkedConstant[];
  /** The working, line by line; the last one gives the result. */
  readonly steps: readonly WorkedStep[];
  /** The result in the units of the working. */
  readonly result: PrintedQuantity;
  /** The result in the unit that a shop reads it in, where it is another. */
  readonly converted?: WorkedConversion;
  /** The result as a number [SI]. */
  readonly value: number;
  /** Whether a calculator must be set to radians. */
  readonly inRadians: boolean;
  /** Where the formula comes from. */
  readonly source: string;
}
