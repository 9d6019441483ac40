import type { Finding, Limits, SizeOrSpan, Span } from '../judging/index.js';
import type { Length, Ratio } from '../quantities/index.js';

/** How a size is spread over its span. */
export type SizeDistribution =
  | {
      /** Every size between the ends is as likely as any other: all that is known are the ends. */
      readonly kind: 'uniform';
    }
  | {
      /** Most likely at the nominal size, and less so in a straight line to either end. */
      readonly kind: 'triangular';
    }
  | {
      /** The bell of a process that is under control, centred in the span. It is not cut off: some lie outside. */
      readonly kind: 'normal';
      /** How many standard deviations lie between the middle of the span and its ends: 2, 3 … [-]. */
      readonly sigmas: number;
    };

/** One size of a stack. */
export interface StackContributor {
  /** What it is called on the bench. */
  readonly name: string;
  /** One size, or the least and most it can be [m]. */
  readonly size: SizeOrSpan<Length>;
  /** How far one size may be off, either way; a span says so itself [m]. */
  readonly tolerance?: Length;
  /** The size that was aimed at; by default the middle of the span. A triangle has its peak there [m]. */
  readonly nominal?: Length;
  /** By how much the stack grows if the size grows by one; by default 1, negative where it shrinks. */
  readonly sensitivity?: number;
  /** How the size is spread; by default uniform, which claims least. Worst case does not ask. */
  readonly distribution?: SizeDistribution;
}

/** How sizes are stacked up. */
export type StackMethod =
  | {
      /** Every size at its worst end at once. */
      readonly kind: 'worst case';
      /** What the stack must lie between [m]. */
      readonly limits?: Limits<Length>;
    }
  | {
      /** The spreads are added as variances. */
      readonly kind: 'root sum square';
      /** How many standard deviations the span reaches either way; by default 3. */
      readonly sigmas?: number;
      /** What the stack must lie between [m]. */
      readonly limits?: Limits<Length>;
    }
  | {
      /** Engines are put together at random, again and again. */
      readonly kind: 'Monte Carlo';
      /** A whole number that decides the draws: same seed, same answer [-]. */
      readonly seed: number;
      /** How many engines are put together; by default 100 000. */
      readonly draws?: number;
      /** The shares below the quantiles that are wanted, ascending; by default 0.005, 0.05, 0.5, 0.95 and 0.995. */
      readonly shares?: readonly number[];
      /** What the stack must lie between [m]. */
      readonly limits?: Limits<Length>;
    };

/** What one size brings to a stack. */
export interface StackPart {
  /** What it is called on the bench. */
  readonly name: string;
  /** By how much it alone moves the stack from end to end [m]. */
  readonly width: Length;
  /** Its share in the variance of the stack; 0 where nothing varies [-]. */
  readonly shareOfVariance: Ratio;
}

/** What all methods give. */
interface Stack {
  /** The stack of all nominal sizes [m]. */
  readonly nominal: Length;
  /** What every size brings, in the order given. */
  readonly parts: readonly StackPart[];
}

/** A stack with every size at its worst end. */
export interface WorstCaseStack extends Stack {
  /** How it was found. */
  readonly method: 'worst case';
  /** Least and most that the stack can be [m]. */
  readonly span: Span<Length>;
  /** The worse end of the span against the limits, if there are any. */
  readonly finding?: Finding<'length'>;
}

/** A stack whose spreads were added as variances. */
export interface RootSumSquareStack extends Stack {
  /** How it was found. */
  readonly method: 'root sum square';
  /** Mean of the stack [m]. */
  readonly mean: Length;
  /** Standard deviation of the stack [m]. */
  readonly standardDeviation: Length;
  /** So many standard deviations about the mean. It says nothing of how many lie in it unless the stack is normal [m]. */
  readonly span: Span<Length>;
  /** Whether every size that varies is normal. Only then is the stack exactly normal. */
  readonly isNormal: boolean;
  /** The share of stacks outside the limits if the stack is normal [-]. */
  readonly shareOutsideIfNormal?: Ratio;
}

/** A stack of sizes that were drawn at random. */
export interface MonteCarloStack extends Stack {
  /** How it was found. */
  readonly method: 'Monte Carlo';
  /** Seed of the draws [-]. */
  readonly seed: number;
  /** Number of draws [-]. */
  readonly draws: number;
  /** Mean of the draws [m]. */
  readonly mean: Length;
  /** Standard deviation of the draws [m]. */
  readonly standardDeviation: Length;
  /** Least and most that was drawn. Rarer ones are possible [m]. */
  readonly drawn: Span<Length>;
  /** What a share of the draws lies below. */
  readonly quantiles: readonly {
    /** The share below it [-]. */
    readonly share: number;
    /** The quantile [m]. */
    readonly value: Length;
  }[];
  /** How many lie outside the limits, if there are any. */
  readonly outside?: ShareOutside;
}

/** The share of random stacks outside their limits. */
export interface ShareOutside {
  /** Outside at either end [-]. */
  readonly share: Ratio;
  /** Below the least that is allowed [-]. */
  readonly below: Ratio;
  /** Above the most that is allowed [-]. */
  readonly above: Ratio;
  /** Standard error of the share. It is not 0 where no draw lies outside: another run may draw one [-]. */
  readonly standardError: Ratio;
}

/** What each method gives. */
export interface StackByMethod {
  /** Every size at its worst end at once. */
  readonly 'worst case': WorstCaseStack;
  /** Spreads added as variances. */
  readonly 'root sum square': RootSumSquareStack;
  /** Sizes drawn at random. */
  readonly 'Monte Carlo': MonteCarloStack;
}

/** What a stack comes to. */
export type StackUp = StackByMethod[keyof StackByMethod];
