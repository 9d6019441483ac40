import type { GrindRequest } from '../crankshaft/index.js';
import type { Names } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import type { Accuracy } from './accuracy.js';
import { certaintyOf } from './certainty.js';
import type { JournalKind } from './engine-kind.js';
import { type MeasuredPart, sizesOf } from './measured-part.js';
import { own } from './stated-limits.js';

/** A journal as it was measured. */
export interface MeasuredJournal extends MeasuredPart {
  readonly runout?: Length | undefined;
}

/** The input of `grindPlan`: the journals of one kind, and the maker's data. */
export function grindRequest(
  { standard, minimum, cleanUpAllowance, sizeAllowance, wear, shape }: JournalKind,
  steps: readonly Length[],
  journals: readonly MeasuredJournal[],
  accuracy: Accuracy,
): GrindRequest {
  const { uncertainty: sizeUncertainty } = certaintyOf('journal size', accuracy, standard.max);
  return {
    standard,
    steps,
    journals: journals.map(({ runout, ...journal }) => ({
      ...sizesOf(journal),
      ...(runout !== undefined && { runout }),
    })),
    ...(minimum !== undefined && { minimum }),
    ...(cleanUpAllowance !== undefined && { cleanUpAllowance }),
    ...(sizeAllowance !== undefined && { sizeAllowance }),
    ...(wear !== undefined && { wear }),
    shape: { ...own(shape), ...certaintyOf('journal shape', accuracy) },
    ...(sizeUncertainty !== undefined && { sizeUncertainty }),
  };
}

/** Where the inputs of a grind request come from: the maker's data, and each journal. */
export function grindNames(maker: string, journals: readonly string[]): Names {
  const each = journals.flatMap((journal, i) => [
    [`journals[${i}]`, journal],
    [`journals[${i}].smallest`, `${journal}.readings`],
    [`journals[${i}].largest`, `${journal}.readings`],
  ]);
  return { '': maker, 'shape.limits': `${maker}.shape`, ...Object.fromEntries(each) };
}
