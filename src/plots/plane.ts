import { scaleLinear } from 'd3-scale';
import { largestOf } from '../quantities/internal.js';
import { inked, written } from './ink.js';
import { LETTER_SIZE, widthOfWords } from './lettering.js';
import { EDGE, LINE_HEIGHT, type Strip } from './picture.js';
import { element, stroke, words } from './svg.js';

/** One direction of a plane. */
export interface Axis {
  /** What it measures, with its unit. */
  readonly label: string;
  /** The values at its two ends. */
  readonly from: number;
  readonly to: number;
  /** Where a value stands, if not in proportion. */
  readonly at?: (value: number) => number;
  /** What is written at it; round values if left out. */
  readonly marked?: readonly Tick[];
  /** Values grow downward, as depths do. */
  readonly down?: boolean;
}

/** Where values stand in a picture, in pixels, and the edges of the field. */
export interface Plane {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A field between two axes. */
export function plane(
  {
    x,
    y,
    height,
    width,
  }: { readonly x: Axis; readonly y: Axis; readonly height: number; readonly width: number },
  drawIn: (field: Plane) => string,
): Strip {
  const yTicks = ticksOf(y, Math.max(2, Math.floor(height / 40)));
  const left = EDGE + largestOf([0, ...yTicks.map(({ text }) => widthOfWords(text))]) + 10;
  const [last] = ticksOf(x, 6).slice(-1);
  const right = width - EDGE - Math.max(6, widthOfWords(last?.text ?? '') / 2 - 4);
  const xTicks = fitting(x, right - left);
  return {
    height: LINE_HEIGHT + 6 + height + 2 * LINE_HEIGHT + 10,
    draw: (above) => {
      const top = above + LINE_HEIGHT + 6;
      const bottom = top + height;
      const field: Plane = {
        x: placeOn(x, [left, right]),
        y: placeOn(y, y.down ? [top, bottom] : [bottom, top]),
        left,
        right,
        top,
        bottom,
      };
      return [
        words(y.label, EDGE, above + LETTER_SIZE, written()),
        words(x.label, right, bottom + 2 * LINE_HEIGHT + 2, { 'text-anchor': 'end', ...written() }),
        ...yTicks.map(({ value, text }) =>
          element(
            'g',
            { class: 'tick-y' },
            stroke([left, field.y(value)], [right, field.y(value)], GRID),
            words(text, left - 6, field.y(value) + 4, { 'text-anchor': 'end', ...written() }),
          ),
        ),
        ...xTicks.map(({ value, text }) =>
          element(
            'g',
            { class: 'tick-x' },
            stroke([field.x(value), top], [field.x(value), bottom], GRID),
            words(text, field.x(value), bottom + LINE_HEIGHT, {
              'text-anchor': 'middle',
              ...written(),
            }),
          ),
        ),
        drawIn(field),
        element('rect', {
          x: left,
          y: top,
          width: right - left,
          height,
          'stroke-width': 1,
          ...inked({ stroke: 'ink' }),
        }),
      ].join('');
    },
  };
}

const GRID = /* @__PURE__ */ grid();

function grid() {
  return { 'stroke-width': 0.5, 'stroke-opacity': 0.45, ...inked({ stroke: 'soft' }) };
}

/** A value that is written at an axis. */
export interface Tick {
  readonly value: number;
  readonly text: string;
}

const straightOn = (value: number): number => value;

function placeOn({ from, to, at = straightOn }: Axis, range: readonly [number, number]) {
  const place = scaleLinear([at(from), at(to)], range);
  return (value: number) => place(at(value));
}

/** The round values of an axis, about so many. */
export function ticksOf({ from, to, marked }: Axis, count: number): readonly Tick[] {
  if (marked !== undefined) return marked;
  const values = scaleLinear([from, to], [0, 1]).ticks(count);
  const [first = 0, second = first + 1] = values;
  // One digit more than the step is large: 0.5 takes one, 0.25 two.
  const step = Math.abs(second - first);
  let decimals = 0;
  while (decimals < 9 && Math.abs(Number(step.toFixed(decimals)) - step) > step * 1e-3) decimals++;
  return values.map((value) => ({ value, text: (value + 0).toFixed(decimals) }));
}

/** The most values whose texts do not run into each other. */
function fitting(axis: Axis, width: number): readonly Tick[] {
  for (let count = Math.floor(width / 40); count > 2; count--) {
    const ticks = ticksOf(axis, count);
    const widest = largestOf([0, ...ticks.map(({ text }) => widthOfWords(text))]);
    if (ticks.length * (widest + 10) <= width) return ticks;
  }
  return ticksOf(axis, 2);
}

/** Values that are written as they are. */
export const marksAt = (values: readonly number[]): readonly Tick[] =>
  values.map((value) => ({ value, text: String(value) }));

/** From the least to the greatest of some values, with a little room, and no less than so much. */
export function around(
  values: readonly number[],
  least: number,
  room = 0.08,
): { readonly from: number; readonly to: number } {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) [from, to] = [Math.min(from, value), Math.max(to, value)];
  const middle = (from + to) / 2;
  const half = Math.max((to - from) * (0.5 + room), least / 2);
  return { from: middle - half, to: middle + half };
}
