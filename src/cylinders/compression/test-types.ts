import type { Finding, Span } from '../../judging/index.js';
import type { GaugePressure, Pressure, Ratio } from '../../quantities/index.js';
import type { CompressionRule } from './rules.js';

/** One cylinder of a compression test, as far as it was read. */
export interface CompressionReadings {
  /** What it is called on the bench. */
  readonly name: string;
  /** What the gauge showed, throttle open, after as many turns as the others. Leave it out if it was not read [Pa]. */
  readonly dry?: GaugePressure;
  /** The same with a little oil put in [Pa]. */
  readonly wet?: GaugePressure;
  /** The head or bank that it stands under; by default all stand under one. */
  readonly head?: string;
}

/** A compression test of an engine, and how it is to be judged. */
export interface CompressionTest {
  /** All cylinders of the engine in the order they stand in, those not read as well. */
  readonly cylinders: readonly CompressionReadings[];
  /** What it is judged by; several rules may disagree. */
  readonly rules: readonly CompressionRule[];
  /** How well one cylinder repeats from try to try, either way; by default exactly [Pa]. */
  readonly repeatsWithin?: Pressure;
  /** How far the gauge itself may be off, either way and on all cylinders alike; by default not at all [Pa]. */
  readonly gaugeWithin?: Pressure;
  /** By what share oil has to raise a reading to speak of rings; by default a tenth, a rule of thumb [-]. */
  readonly risesBy?: Ratio;
}

/** Whether cylinders keep to a rule. */
export type RuleVerdict = 'kept' | 'broken' | 'undecided';

/** What one rule says of a test. */
export interface JudgedRule {
  /** The rule. */
  readonly rule: CompressionRule;
  /** What it says. `undecided` where an error or a cylinder that was not read may turn it, or where there is nothing to compare. */
  readonly verdict: RuleVerdict;
  /** The cylinder that decides. */
  readonly cylinder: string;
  /** How that cylinder stands to the rule. A rule of another engine condemns none. */
  readonly finding: Finding<'pressure'> | Finding<'gaugePressure'> | Finding<'ratio'>;
  /** Cylinders that are low by this rule, the errors aside. */
  readonly low: readonly string[];
}

/** What oil did to a cylinder. It is a rule of thumb: oil fills some of a small chamber and raises any reading. */
export interface OiledCylinder {
  /** The cylinder. */
  readonly cylinder: string;
  /** By how much it rose; negative is a fall [Pa]. */
  readonly rise: Pressure;
  /** What that suggests. `valves or gasket` only of a cylinder that some rule calls low; `undecided` where the errors decide. */
  readonly suggests: 'rings or bore' | 'valves or gasket' | 'nothing' | 'undecided';
}

/** A compression test, judged. */
export interface JudgedCompression {
  /**
   * What all rules say together. Where some are kept and some broken they `disagree`; `undecided` is never good. The
   * rules of this engine alone are in `byOwnRules`.
   */
  readonly outcome: RuleVerdict | 'rules disagree';
  /** What the rules of this engine say together, its maker's or the caller's; absent without any. It counts before the others. */
  readonly byOwnRules?: RuleVerdict | 'rules disagree';
  /** What each rule says, in the order given. */
  readonly rules: readonly JudgedRule[];
  /** From the lowest to the highest reading [Pa]. */
  readonly readings: Span<GaugePressure>;
  /** Their average [Pa]. */
  readonly average: GaugePressure;
  /** What oil did, for each cylinder read both ways. */
  readonly oiled: readonly OiledCylinder[];
  /** Neighbours under one head that are both low and that oil does not raise: maybe the gasket between them. An indication, no verdict. */
  readonly gasketBetween: readonly (readonly [string, string])[];
  /** Cylinders that were not read. */
  readonly notRead: readonly string[];
  /** Which errors were not given and are taken as none. */
  readonly takenAsExact: readonly ('gauge' | 'repeats')[];
}
