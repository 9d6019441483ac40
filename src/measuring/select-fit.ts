import type { Limits, Span } from '../judging/index.js';
import { judgeSpan, NANOMETRE } from '../judging/internal.js';
import { leastAssignment } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import type { FitPair, FitRequest, SelectedFit } from './fit-types.js';
import { type FitSizes, guardFit } from './guard-fit.js';
import { worstCase } from './worst-case.js';

/**
 * Which part goes into which place, of parts that lie measured on the bench: which piston into which bore, which
 * shells into which housing. The worst margin is the best that any choice can have; of the choices that share it, the
 * next worst is the best, and so on to the last. Margins are compared in whole nanometres.
 *
 *     clearance = room - times * size
 *
 * Among choices that are equal in all margins, parts stay where they are, and then the order given decides: no part
 * is moved for nothing.
 *
 * It looks at one size alone. Weight, the hand of a piston, the mark on a cap and what has run together may forbid a
 * choice that the sizes allow. Used parts that have run together are best left together.
 *
 * @param request - places, parts and limits [m]
 * @returns the pairs with their clearances and findings, the smallest margin, and the spare parts [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, there
 * is no place, there are fewer parts than places, there are too many, a name is not its own, a current part is not
 * among the parts, a part is in two places, the part is neither taken once nor twice, the limits have no bound, the
 * limits are reversed, or the basis is none
 * @see Source: lexicographic bottleneck assignment, found exactly; checked against trying every choice
 * @example
 * ```ts
 * const { pairs, leastMargin } = selectFit({
 *   places: [{ name: 'cylinder 1', room: mm(87.21) }, { name: 'cylinder 2', room: mm(87.235) }],
 *   parts: [{ name: 'A', size: mm(87.202) }, { name: 'B', size: mm(87.175) }, { name: 'C', size: mm(87.19) }],
 *   limits: { min: mm(0.025), max: mm(0.045) },
 * });
 * pairs.map(({ part }) => part); // ["B", "A"]
 * format(leastMargin, mm); // "0.008 mm"
 * ```
 */
export function selectFit(request: FitRequest): SelectedFit {
  const { places, parts, times, limits, basis } = guardFit(request);
  const clearances = places.map(({ span: room }) =>
    parts.map(({ span: size }) =>
      worstCase([
        [1, room],
        [-times, size],
      ]),
    ),
  );
  const chosen = leastAssignment(costsOf(clearances, limits, places, parts));
  const pairs = places.map(({ name, current }, i): FitPair => {
    const at = chosen[i] as number;
    const part = (parts[at] as FitSizes).name;
    const clearance = clearances[i]?.[at] as Span<Length>;
    const finding = judgeSpan({
      feature: 'clearance',
      dimension: 'length',
      value: clearance,
      limits,
      basis,
    });
    return { place: name, part, clearance, finding, isMoved: current !== part };
  });
  const margins = pairs.map(({ finding }) => finding.margin);
  const isWithin = pairs.every(({ finding }) => finding.verdict === 'within');
  return {
    outcome: isWithin ? 'all within' : 'some outside',
    pairs,
    leastMargin: smallestOf(margins),
    spare: parts.flatMap(({ name }, at) => (chosen.includes(at) ? [] : [name])),
  };
}

/**
 * One whole number for each pair whose sum over a choice puts all choices into order. Its digits, from the first: how
 * many pairs have the worst of all margins, how many the next, and so on; how many parts are moved; and which part, in
 * the order given, the first place gets, then the second. A digit never carries over into the one before it.
 */
function costsOf(
  clearances: readonly (readonly Span<Length>[])[],
  { min = -Infinity as Length, max = Infinity as Length }: Limits<Length>,
  places: readonly FitSizes[],
  parts: readonly FitSizes[],
): readonly (readonly bigint[])[] {
  const margins = clearances.map((row) =>
    row.map((left) => Math.round(Math.min(left.min - min, max - left.max) / NANOMETRE)),
  );
  const levels = [...new Set(margins.flat())].sort((a, b) => b - a);
  const levelOf = new Map(levels.map((margin, level) => [margin, BigInt(level)]));
  const count = BigInt(places.length + 1);
  const each = BigInt(parts.length);
  return margins.map((row, i) =>
    row.map((margin, at) => {
      const worse = count ** (levelOf.get(margin) as bigint);
      const moved = places[i]?.current === parts[at]?.name ? 0n : 1n;
      const order = BigInt(at) * each ** BigInt(places.length - 1 - i);
      return (worse * count + moved) * each ** BigInt(places.length) + order;
    }),
  );
}
