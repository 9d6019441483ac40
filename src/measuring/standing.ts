import type { Basis, Finding, Span } from '../judging/index.js';
import {
  diameter,
  guardList,
  guardSpan,
  guardText,
  NANOMETRE,
  outOfTrue,
  showLength,
} from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import type { Shape } from './shape.js';

/** How far a part lies outside a span at its worse end: below it negative, within it zero. */
export function outsideOf(
  { smallest, largest }: Pick<Shape, 'smallest' | 'largest'>,
  target: Span<Length>,
): Length {
  const above = Math.max(0, largest - target.max);
  const below = Math.max(0, target.min - smallest);
  return (above > below ? above : 0 - below) as Length;
}

/** How far outside its size a part may be used, and who says so. */
export interface SizeAllowance {
  readonly most: Length;
  readonly basis: Basis;
  /** How far a size must be from a bound to be judged by it, as it is not measured better [m]. */
  readonly band: Length;
}

/** The same part if every size of it were this much further out; nearer if it is negative. */
function widened({ smallest, largest }: Pick<Shape, 'smallest' | 'largest'>, by: number) {
  return { smallest: (smallest - by) as Length, largest: (largest + by) as Length };
}

/** How a part that may be used as it is lies outside its size, if it does; undefined if it may not, for its size or its faults. */
export function usableAsItIs(
  part: SizeAndShape,
  target: Span<Length>,
  { most, basis, band }: SizeAllowance,
): { readonly outside?: Length; readonly basis?: Basis } | undefined {
  const outside = outsideOf(part, target);
  if (part.faults !== undefined && part.faults.length > 0) return undefined;
  if (Math.abs(outsideOf(widened(part, band), target)) > most + NANOMETRE) return undefined;
  return Math.abs(outside) <= NANOMETRE ? {} : { outside, basis };
}

/** A part that only a rule of thumb, or too coarse a measurement, keeps from being used as it is. */
export interface InDoubt {
  /** What it is called on the bench. */
  readonly name: string;
  /** Its out-of-round or taper, the worse, against the rule. */
  readonly finding?: Finding<'length'>;
  /** How far it lies outside its size, past what the rule allows: below it is negative [m]. */
  readonly outside?: Length;
  /** Who says how far it may. */
  readonly basis?: Basis;
  /** It may be measured too coarsely to tell: once it is measured better, its size may do [m]. */
  readonly band?: Length;
}

/** Whether only rules of thumb or the error of readings stand against a part, and by how little. Faults leave no doubt. */
export function doubtAbout(
  part: SizeAndShape,
  flaw: Finding<'length'> | undefined,
  target: Span<Length>,
  { most, basis, band }: SizeAllowance,
  { wearsTo, upTo }: { readonly wearsTo: 'smaller' | 'larger'; readonly upTo: Length },
): InDoubt | undefined {
  if (part.faults !== undefined && part.faults.length > 0) return undefined;
  if (flaw && (flaw.grade !== 'undecided' || flaw.value > upTo + NANOMETRE)) return undefined;
  const outside = outsideOf(part, target);
  const fits = Math.abs(outsideOf(widened(part, band), target)) <= most + NANOMETRE;
  const mayFit = Math.abs(outsideOf(widened(part, -band), target)) <= most + NANOMETRE;
  const isWorn = wearsTo === 'smaller' ? outside < 0 : outside > 0;
  const isSlight = Math.abs(outside) <= upTo + NANOMETRE;
  const byRule = isWorn && isSlight && basis.kind === 'common practice';
  if (!fits && !mayFit && !byRule) return undefined;
  return {
    name: part.name,
    ...(flaw && { finding: flaw }),
    ...(!fits && { outside, basis }),
    ...(!fits && mayFit && band > 0 && { band }),
  };
}

/** The size and shape of one named part that may be machined. */
export interface SizeAndShape extends Pick<Shape, 'smallest' | 'largest' | 'outOfRound' | 'taper'> {
  readonly name: string;
  readonly faults?: readonly string[];
}

/** Refuses sizes that no such part has, and a shape that contradicts them. Its fields are for the caller to guard. */
export function guardSizeAndShape(at: string, part: SizeAndShape): void {
  guardText(`${at}.name`, part.name);
  diameter(`${at}.smallest`, part.smallest);
  diameter(`${at}.largest`, part.largest);
  guardSpan(at, { min: part.smallest, max: part.largest }, diameter);
  if (part.faults !== undefined) guardList(`${at}.faults`, part.faults, 0, 'faults');
  part.faults?.forEach((fault, i) => {
    guardText(`${at}.faults[${i}]`, fault);
  });
  const range = part.largest - part.smallest;
  for (const flaw of ['outOfRound', 'taper'] as const) {
    if (outOfTrue(`${at}.${flaw}`, part[flaw]) <= range + NANOMETRE) continue;
    throw new RebuildInputError({
      parameter: `${at}.${flaw}`,
      value: part[flaw],
      shown: showLength(part[flaw]),
      expected: `at most largest less smallest, ${showLength(range)}`,
      hint: 'Take all four from one set of readings.',
    });
  }
}
