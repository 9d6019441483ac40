import { fitOf, inchFit } from '../fits/index.js';
import type { SizeOrSpan, Span } from '../judging/index.js';
import { showLength, spanOf } from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import type { Check, FitData } from '../reading/index.js';

/** Checks that a hole and a shaft could ever have been of each other, and of the size of their class. */
export function fitChecks(path: string, fit: FitData): readonly Check[] {
  const { hole, shaft } = fit;
  const basic = basicOf(fit);
  const ofClass = basic === undefined ? undefined : { size: basic, what: 'the size of its class' };
  const ofHole = hole === undefined ? undefined : { size: spanOf(hole).max, what: 'its hole' };
  return [
    ...near(`${path}.hole`, hole, ofClass),
    ...near(`${path}.shaft`, shaft, ofClass ?? ofHole),
  ];
}

/** A size that another one must be near. */
interface Near {
  readonly size: Length;
  readonly what: string;
}

function near(
  path: string,
  size: SizeOrSpan<Length> | undefined,
  to: Near | undefined,
): readonly Check[] {
  return size === undefined || to === undefined
    ? []
    : [{ path, run: () => guardNear(spanOf(size), to) }];
}

function basicOf({ isoFit, inchFit: asked }: FitData): Length | undefined {
  if (isoFit !== undefined) return fitOf(isoFit).basic;
  return asked && inchFit(asked).basic;
}

/** Parts wear by less than a tenth, and a slipped digit is more. */
function guardNear({ min, max }: Span<Length>, { size, what }: Near): void {
  const off = [min, max].find((end) => Math.abs(end - size) > 0.1 * size);
  if (off === undefined) return;
  throw new RebuildInputError({
    parameter: 'size',
    value: off,
    shown: showLength(off),
    expected: `within a tenth of ${what}, ${showLength(size)}`,
    hint: 'A digit has slipped, or the units are mixed.',
  });
}
