import type { Allowed, Row, Term } from './model.js';

/**
 * Tightens the bounds of a model by its rows, and reduces every row to lowest terms. Everything in a
 * model is a whole number, so this is exact. A solver is not: a price of a thousand million beside
 * one of a cent exceeds its tolerances, and a cost limit usually rules out the large one.
 */
export function tightened({ bounds, rows }: Allowed): Allowed {
  const merged = rows.map((row) => ({ ...row, terms: mergedTerms(row.terms) }));
  const room = [...bounds];
  for (const { terms, max } of merged) {
    if (max === Infinity) continue;
    const least = terms.reduce((sum, [i, by]) => sum + Math.min(0, by * (bounds[i] ?? 0)), 0);
    for (const [i, by] of terms) {
      if (by < 0) continue;
      room[i] = Math.max(0, Math.min(room[i] ?? 0, Math.floor((max - least) / by)));
    }
  }
  return { bounds: room, rows: merged.map((row) => inLowestTerms(row, room)) };
}

function inLowestTerms({ terms, min, max }: Row, bounds: readonly number[]): Row {
  const [kept, factor] = lowestTerms(terms, bounds);
  return { terms: kept, min: Math.ceil(min / factor), max: Math.floor(max / factor) };
}

/** The terms that can be non-zero, divided by their common factor, and that factor. */
export function lowestTerms(
  terms: readonly Term[],
  bounds: readonly number[],
): readonly [terms: readonly Term[], factor: number] {
  const kept = mergedTerms(terms).filter(([i]) => (bounds[i] ?? 0) > 0);
  const factor = kept.reduce((common, [, by]) => commonFactor(common, Math.abs(by)), 0) || 1;
  return [kept.map(([i, by]) => [i, by / factor]), factor];
}

/** One term for each variable. */
function mergedTerms(terms: readonly Term[]): readonly Term[] {
  const sums = new Map<number, number>();
  for (const [i, by] of terms) sums.set(i, (sums.get(i) ?? 0) + by);
  return [...sums].filter(([, by]) => by !== 0);
}

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));
