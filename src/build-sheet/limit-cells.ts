import type { BasedLimits, Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import { limitsNumber } from '../planning/internal.js';
import { tradeUnit } from '../quantities/index.js';
import type { AllowedSize } from './allowed-sizes.js';

/** The cells where nothing is known to judge by. */
export const NOT_JUDGED = ['not judged', 'no limits known'] as const;

/** The cells of what has limits in a maker's manual only. */
export const NOT_STATED = ['not judged', 'no limit stated'] as const;

/** The limits of a value and who set them, as two cells. */
export function limitCells(
  { limits, basis }: BasedLimits<'length'>,
  wording: Wording,
): readonly [limits: string, by: string] {
  return sizeCells({ limits, by: [basis] }, wording);
}

/** What a size may be and who set each end of it, as two cells. */
export function sizeCells(
  { limits, by }: AllowedSize,
  wording: Wording,
): readonly [limits: string, by: string] {
  const { min, max } = limits;
  if (min === undefined && max === undefined) return NOT_JUDGED;
  // One source may set both ends.
  const all = new Map(by.map((basis) => [`${basis.kind} ${noteOf(basis, wording)}`, basis]));
  const names = [...all].map(([name, basis], i, those) =>
    basis.kind === those[i - 1]?.[1].kind ? noteOf(basis, wording) : name,
  );
  const crossed = min !== undefined && max !== undefined && min > max;
  return [crossed ? 'no size' : limitsNumber(limits, wording), names.join(', ')];
}

/** What a size may be, with its unit. */
export function sizeText(limits: AllowedSize['limits'], wording: Wording): string {
  const { min, max } = limits;
  if (min === undefined && max === undefined) return 'not judged';
  if (min !== undefined && max !== undefined && min > max) return 'no size';
  return `${limitsNumber(limits, wording)} ${tradeUnit('length', wording.units).symbol}`;
}
