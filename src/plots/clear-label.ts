import { haloed, inked } from './ink.js';
import { LETTER_SIZE, widthOfWords } from './lettering.js';
import type { Plane } from './plane.js';
import { stroke, words } from './svg.js';

type Place = readonly [x: number, y: number];
/** A line in the field that words must not stand on. */
export type Course = readonly Place[];

/** White between words and a line, in pixels. */
const CLEAR = 4;
/** From the foot of a dot to words under it, and from words to a dot that needs no leader. */
const NEAR = 20;
const STEP = 8;

/**
 * Words that name a place, as near to it as no line crosses them: under it if they can, else over it to either side, with
 * a leader where they are far off.
 */
export function clearLabel(
  text: string,
  at: Place,
  lines: readonly Course[],
  field: Plane,
): string {
  const width = widthOfWords(text);
  const held = (left: number) =>
    Math.max(field.left + CLEAR, Math.min(field.right - CLEAR - width, left));
  const [x, y] = at;
  const rows = [y + NEAR];
  for (let row = y - 8; row - LETTER_SIZE > field.top; row -= STEP) rows.push(row);
  const places = rows
    .filter((row) => row < field.bottom - CLEAR)
    .flatMap((row) =>
      [x - width / 2, x + 10, x - 10 - width].map((left) => [held(left), row] as const),
    );
  const [left, row] = places.find((place) => isClear(place, width, lines)) ??
    places[0] ?? [held(x), y];
  const under: Place = [left + width / 2, row < y ? row + 3 : row - LETTER_SIZE];
  const isFar = Math.hypot(under[0] - x, under[1] - y) > NEAR + width / 2;
  return [
    ...(isFar ? [stroke(at, under, { 'stroke-width': 0.7, ...inked({ stroke: 'ink' }) })] : []),
    words(text, left, row, haloed()),
  ].join('');
}

/** Whether no line comes near words that begin at a place. */
function isClear([left, foot]: Place, width: number, lines: readonly Course[]): boolean {
  const [right, top] = [left + width + CLEAR, foot - LETTER_SIZE - CLEAR];
  return lines.every((line) =>
    line.every((end, i) => {
      const start = line[i - 1] ?? end;
      const [from, to] = start[0] <= end[0] ? [start, end] : [end, start];
      if (to[0] < left - CLEAR || from[0] > right) return true;
      const slope = to[0] > from[0] ? (to[1] - from[1]) / (to[0] - from[0]) : 0;
      const heightAt = (x: number) =>
        from[1] + slope * (Math.max(from[0], Math.min(to[0], x)) - from[0]);
      const [one, other] =
        to[0] > from[0] ? [heightAt(left - CLEAR), heightAt(right)] : [from[1], to[1]];
      return Math.max(one, other) < top || Math.min(one, other) > foot + CLEAR;
    }),
  );
}
