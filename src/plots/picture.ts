import { escapedMarkup } from '../pages/index.js';
import { largestOf } from '../quantities/internal.js';
import { dashOf, inked, mark, spanBar, whisker, written } from './ink.js';
import { inLines, LETTER_SIZE, widthOfWords } from './lettering.js';
import type { Drawn } from './options.js';
import { element, pixel, stroke, words } from './svg.js';

/** White around a picture, in pixels. */
export const EDGE = 12;
/** From one line of text to the next. */
export const LINE_HEIGHT = 16;

/** A part of a picture that takes its whole width. Strips stand one below the other. */
export interface Strip {
  readonly height: number;
  readonly draw: (top: number) => string;
}

/** What a picture is made of. */
interface Parts {
  readonly title: string;
  /** What a person who sees it takes away, with its numbers, for one who does not. */
  readonly told: readonly string[];
  readonly strips: readonly Strip[];
}

/** Draws a picture: its title, then strip by strip. */
export function drawPicture({ title, told, strips }: Parts, { width, id }: Drawn): string {
  const all = [note(title, width, { bold: true }), ...strips];
  let top = EDGE;
  const drawn = all.map((strip) => {
    const text = strip.draw(top);
    top += strip.height;
    return text;
  });
  const height = Math.ceil(top + EDGE);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': 'system-ui, sans-serif',
      'font-size': LETTER_SIZE,
      style: 'max-width:100%;height:auto',
    },
    element('title', { id: `${id}-title` }, escapedMarkup(title)),
    element('desc', { id: `${id}-desc` }, escapedMarkup(told.join(' '))),
    element('rect', { width, height, ...inked({ fill: 'paper' }) }),
    ...drawn,
  );
}

/** A paragraph. */
export function note(
  text: string,
  width: number,
  { bold = false, ink = 'ink' }: { readonly bold?: boolean; readonly ink?: 'ink' | 'alarm' } = {},
): Strip {
  // Bold letters are wider.
  const lines = inLines(text, (width - 2 * EDGE) / (bold ? 1.1 : 1));
  return {
    height: lines.length * LINE_HEIGHT + 4,
    draw: (top) =>
      element(
        'g',
        { ...written(ink), ...(bold && { 'font-weight': 'bold' }) },
        ...lines.map((line, i) => words(line, EDGE, top + i * LINE_HEIGHT + LETTER_SIZE)),
      ),
  };
}

/** White between strips. */
export const gap = (height: number): Strip => ({ height, draw: () => '' });

/** A sample of a line and its mark, with what it stands for. */
export interface Sample {
  readonly label: string;
  /** The place of the line among the lines. */
  readonly place: number;
  /** What of it is drawn in the picture. */
  readonly as: 'line and mark' | 'line' | 'mark' | 'shade' | 'limit' | 'bar' | 'whisker';
}

const SAMPLE = 34;

/** What the lines of a picture stand for: as many samples in a row as there is room for. */
export function legend(samples: readonly Sample[], width: number): Strip {
  const room = width - 2 * EDGE;
  const inTheList: { sample: Sample; x: number; row: number; lines: readonly string[] }[] = [];
  let [x, row] = [0, 0];
  for (const sample of samples) {
    const lines = inLines(sample.label, room - SAMPLE - 6);
    const wide = SAMPLE + 6 + largestOf(lines.map((line) => widthOfWords(line))) + 12;
    if (x > 0 && x + wide - 12 > room) [x, row] = [0, row + 1];
    inTheList.push({ sample, x: EDGE + x, row, lines });
    if (lines.length > 1) [x, row] = [0, row + lines.length];
    else x += wide;
  }
  const rows = x > 0 ? row + 1 : row;
  return {
    height: rows * LINE_HEIGHT + 6,
    draw: (top) =>
      inTheList
        .map(({ sample, x: left, row: its, lines }) => {
          const middle = top + its * LINE_HEIGHT + LINE_HEIGHT / 2;
          return [
            drawSample(sample, left, middle),
            ...lines.map((line, i) =>
              words(line, left + SAMPLE + 6, middle + 4 + i * LINE_HEIGHT, written()),
            ),
          ].join('');
        })
        .join(''),
  };
}

function drawSample({ place, as }: Sample, x: number, y: number): string {
  if (as === 'shade') {
    return element('rect', { x, y: y - 6, width: SAMPLE, height: 12, ...shade(place) });
  }
  // A sample is no reading and no finding.
  if (as === 'bar') return sampled(spanBar(x, x + SAMPLE, y));
  if (as === 'whisker') return sampled(whisker(x, x + SAMPLE, y));
  if (as === 'limit') return stroke([x, y], [x + SAMPLE, y], limitLine(place));
  const line = stroke([x, y], [x + SAMPLE, y], {
    'stroke-width': 1.5,
    'stroke-dasharray': dashOf(place),
    ...inked({ stroke: 'ink' }),
  });
  const sign = sampled(mark(place, x + SAMPLE / 2, y));
  return `${as === 'mark' ? '' : line}${as === 'line' ? '' : sign}`;
}

const sampled = (drawn: string): string =>
  drawn.replace(/class="(?:reading|span|uncertainty)"/, 'class="sample"');

/** The line of a limit; each place has dashes of its own, so that none hangs on its colour. */
export const limitLine = (place: number) => ({
  'stroke-width': 1.2,
  'stroke-dasharray': place === 0 ? '2 3' : '8 2 2 2',
  ...inked({ stroke: 'alarm' }),
});

/** A shaded field, the lighter ones with the higher numbers. */
export const shade = (place: number) => ({
  ...inked({ fill: 'ink' }),
  'fill-opacity': place === 0 ? 0.16 : 0.07,
});

/** A path through places, straight from one to the next. */
export const straight = (places: readonly (readonly [x: number, y: number])[]): string =>
  places.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${pixel(x)} ${pixel(y)}`).join('');
