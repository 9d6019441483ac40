import { DOMParser, type Element } from '@xmldom/xmldom';
import { expect } from 'vitest';

/** A picture as a person or a program sees it: nothing of it comes from the code that drew it. */
export interface Seen {
  readonly root: Element;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly desc: string;
  /** Every text that is drawn. */
  readonly texts: readonly string[];
  /** All that is drawn with a class. */
  readonly all: (name: string) => readonly Element[];
}

/** Reads a picture as XML. What is not well-formed is refused. */
export function seen(svg: string): Seen {
  const root = new DOMParser({
    onError: (level, message) => {
      // The mark for what is no character is meant.
      if (!message.startsWith('Unicode replacement')) throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(svg, 'image/svg+xml').documentElement as Element;
  const [, , width = 0, height = 0] = numbersIn(root.getAttribute('viewBox') ?? '');
  const every = [...root.getElementsByTagName('*')];
  const child = (name: string) =>
    [...root.childNodes].find(({ nodeName }) => nodeName === name)?.textContent ?? '';
  return {
    root,
    width,
    height,
    title: child('title'),
    desc: child('desc'),
    texts: every
      .filter(({ tagName }) => tagName === 'text')
      .map(({ textContent }) => textContent ?? ''),
    all: (name) =>
      every.filter((each) => (each.getAttribute('class') ?? '').split(' ').includes(name)),
  };
}

export const numbersIn = (text: string): readonly number[] =>
  (text.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);

/** Where a mark stands. */
export function placeOf(mark: Element): readonly [x: number, y: number] {
  const [x = Number.NaN, y = Number.NaN] = numbersIn(mark.getAttribute('transform') ?? '');
  return [x, y];
}

export const numberOf = (element: Element, name: string): number =>
  Number(element.getAttribute(name) ?? Number.NaN);

/** The scale that a reader takes from the numbers at an axis: from pixels to what is written there. */
export function scaleOf(
  { all }: Seen,
  axis: 'x' | 'y',
  within: (line: Element) => boolean = () => true,
): (pixels: number) => number {
  const ticks = all(`tick-${axis}`).flatMap((tick) => {
    const [line] = tick.getElementsByTagName('line');
    const [text] = tick.getElementsByTagName('text');
    if (!line || !within(line)) return [];
    return [{ at: numberOf(line, `${axis}1`), value: Number(text?.textContent) }];
  });
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (!first || !last || first === last) throw new Error('an axis needs two numbers');
  return (pixels) =>
    first.value + ((pixels - first.at) * (last.value - first.value)) / (last.at - first.at);
}

/** What a pixel is worth on an axis. */
export const pixelOf = (scale: (pixels: number) => number): number => Math.abs(scale(1) - scale(0));

const ACROSS = ['x', 'x1', 'x2', 'cx'] as const;
const DOWN = ['y', 'y1', 'y2', 'cy'] as const;

/** Holds a picture to what every one must be. */
export function expectSound(svg: string): Seen {
  expect(svg).not.toMatch(/NaN|Infinity|undefined|\bnull\b|\[object/);
  const picture = seen(svg);
  const { root, width, height } = picture;
  expect(root.getAttribute('role')).toBe('img');
  expect(picture.title).not.toBe('');
  expect(picture.desc).not.toBe('');
  const ids = [...root.getElementsByTagName('*')].flatMap((each) => each.getAttribute('id') ?? []);
  expect(root.getAttribute('aria-labelledby')?.split(' ')).toEqual(ids);
  for (const each of [...root.getElementsByTagName('*')]) {
    const across = ACROSS.flatMap((name) => (each.hasAttribute(name) ? numberOf(each, name) : []));
    const down = DOWN.flatMap((name) => (each.hasAttribute(name) ? numberOf(each, name) : []));
    if (each.getAttribute('class') === 'reading') {
      across.push(placeOf(each)[0]);
      down.push(placeOf(each)[1]);
    } else if (each.tagName === 'path' && /^M[\d.]+ [\d.]+L/.test(each.getAttribute('d') ?? '')) {
      numbersIn(each.getAttribute('d') ?? '').forEach((value, i) => {
        (i % 2 === 0 ? across : down).push(value);
      });
    }
    if (each.hasAttribute('width'))
      across.push((numberOf(each, 'x') || 0) + numberOf(each, 'width'));
    for (const value of across) {
      if (!(value >= 0 && value <= width)) throw new Error(`${each} is beside the picture`);
    }
    for (const value of down) {
      if (!(value >= 0 && value <= height))
        throw new Error(`${each} is above or below the picture`);
    }
    if (each.tagName === 'text') expectRoom(each, width);
  }
  return picture;
}

/** Letters are at least so wide, in shares of their size: a text that needs more than there is would be cut. */
const NARROWEST = 0.42;

function expectRoom(text: Element, width: number): void {
  const long = (text.textContent ?? '').length * 12 * NARROWEST;
  const x = numberOf(text, 'x');
  const anchor = text.getAttribute('text-anchor');
  const left = anchor === 'end' ? x - long : anchor === 'middle' ? x - long / 2 : x;
  if (left < 0 || left + long > width) throw new Error(`"${text.textContent}" is cut off`);
}
