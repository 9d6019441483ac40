import type { FormulaCard } from './formula-card.js';

/**
 * What two formulas have in common that are worked alike: what they give, and the formula itself whatever its letters
 * and numbers are. Where a formula has definitions, the work is in those, and the last line is left out.
 */
export function likenessOf({ gives, where, expression }: FormulaCard): string {
  const letters = new Map<string, number>();
  const lettered = (where.length === 0 ? [expression] : where).map((line) =>
    line
      .replaceAll(/(?<![\w.])\d+(?:\.\d+)?(?:e-?\d+)?/g, '#')
      .replaceAll(/(?<![\w.])[A-Za-z]\w*(?!\w|\()/g, (letter) => {
        if (!letters.has(letter)) letters.set(letter, letters.size);
        return `x${letters.get(letter)}`;
      }),
  );
  return [gives.dimension, ...lettered].join('; ');
}
