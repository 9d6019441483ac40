import { type CardLetter, compute, type FormulaCard, type Values } from '../cards.js';
import { isRefusal } from '../reading.js';

/** A result against one letter, in SI; no y where the function refuses. */
export interface Curve {
  readonly key: string;
  readonly points: readonly { readonly x: number; readonly y: number | undefined }[];
}

/** How many points a line has. */
const POINTS = 81;

/** What is usual for a letter, and what it is now. Where usual is one value alone, a quarter to either side. */
export function rangeOf(
  { usual: [least, most], domain }: CardLetter,
  now: number | undefined,
): readonly [number, number] {
  const room = most > least ? 0 : Math.abs(most) / 4;
  const all = [least - room, most + room, ...(now === undefined ? [] : [now])];
  return [Math.max(domain.least, Math.min(...all)), Math.min(domain.most, Math.max(...all))];
}

/** The result over a range of one letter, the others as they are. Unchanged, it is not worked out again. */
export function curveOf(
  card: FormulaCard,
  values: Values,
  letter: string,
  [least, most]: readonly [number, number],
  before: Curve | undefined,
): Curve {
  const key = JSON.stringify([letter, least, most, { ...values, [letter]: 0 }]);
  if (before?.key === key) return before;
  const points = Array.from({ length: POINTS }, (_, i) => {
    const x = least + ((most - least) * i) / (POINTS - 1);
    return { x, y: resultOr(card, { ...values, [letter]: x }) };
  });
  return { key, points };
}

/** The letter that moves the result the most over what is usual. */
export function strongest(card: FormulaCard, values: Values): string {
  const swings = Object.entries(card.letters).map(([letter, { usual }]) => {
    const ends = usual.map((x) => resultOr(card, { ...values, [letter]: x }));
    const [from, to] = ends;
    return { letter, swing: from === undefined || to === undefined ? 0 : Math.abs(to - from) };
  });
  const [most] = swings.sort((a, b) => b.swing - a.swing);
  return most?.letter ?? '';
}

function resultOr(card: FormulaCard, values: Values): number | undefined {
  try {
    return compute(card, values);
  } catch (error) {
    if (!isRefusal(error)) throw error;
    return undefined;
  }
}
