import {
  symbol,
  symbolCircle,
  symbolCross,
  symbolDiamond,
  symbolSquare,
  symbolTriangle,
  symbolWye,
} from 'd3-shape';
import { type Attributes, element } from './svg.js';

/**
 * The inks of a picture. A page sets its own by custom properties, as `--crankwright-ink`; without, a picture is dark
 * on white. The attribute is for pages whose security policy takes no style.
 */
const INKS = {
  paper: '#ffffff',
  ink: '#1a1a1a',
  soft: '#6b6b6b',
  mark: '#1f5f99',
  alarm: '#b3261e',
} as const;
export type Ink = keyof typeof INKS;

const property = (ink: Ink): string => `var(--crankwright-${ink}, ${INKS[ink]})`;

/** Attributes that draw in an ink, by attribute and by custom property. */
export function inked(inks: { readonly stroke?: Ink; readonly fill?: Ink }): Attributes {
  const { stroke, fill } = inks;
  const styles = [
    ...(stroke ? [`stroke:${property(stroke)}`] : []),
    ...(fill ? [`fill:${property(fill)}`] : []),
  ];
  return {
    ...(stroke && { stroke: INKS[stroke] }),
    fill: fill ? INKS[fill] : 'none',
    style: styles.join(';'),
  };
}

/** Text in an ink. */
export const written = (ink: Ink = 'ink'): Attributes => inked({ fill: ink });

/** How the lines of one picture are told apart without colour. */
const DASHES = [undefined, '7 3', '2 3', '9 3 2 3', '14 4', '1 4'] as const;
/** What the lines of one picture are marked with. */
const SHAPES = [
  symbolCircle,
  symbolSquare,
  symbolTriangle,
  symbolDiamond,
  symbolCross,
  symbolWye,
] as const;

/** The dash of a line, by its place among the lines. */
export const dashOf = (place: number): string | undefined => DASHES[place % DASHES.length];

/** The mark of a reading, by the place of its line, with what it says when it is pointed at. */
export function mark(
  place: number,
  x: number,
  y: number,
  about?: string,
  ink: Ink = 'ink',
): string {
  const shape = SHAPES[place % SHAPES.length] ?? symbolCircle;
  const told = about === undefined ? [] : [element('title', {}, about)];
  return element(
    'path',
    {
      class: 'reading',
      transform: `translate(${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100})`,
      d: symbol(shape, 44).digits(2)() ?? '',
      'stroke-width': 1.5,
      ...inked({ stroke: ink, fill: 'paper' }),
    },
    ...told,
  );
}

/** A ring and a cross around what is not to be trusted: seen in black and white, and from afar. */
export const oddMark = (x: number, y: number): string =>
  element(
    'g',
    { class: 'odd', 'stroke-width': 2, ...inked({ stroke: 'alarm' }) },
    element('circle', { cx: x, cy: y, r: 9 }),
    element('path', {
      d: [
        [-13, -13, -7, -7],
        [7, 7, 13, 13],
        [-13, 13, -7, 7],
        [7, -7, 13, -13],
      ]
        .map(
          ([a = 0, b = 0, c = 0, d = 0]) => `M${at(x + a)} ${at(y + b)}L${at(x + c)} ${at(y + d)}`,
        )
        .join(''),
    }),
  );

const at = (value: number): number => Math.round(value * 100) / 100;

/** How far a value may be off, from its least to its most. */
export const whisker = (from: number, to: number, y: number): string =>
  element('path', {
    class: 'uncertainty',
    d: `M${at(from)} ${y - 6}V${y + 6}M${at(from)} ${y}H${at(to)}M${at(to)} ${y - 6}V${y + 6}`,
    'stroke-width': 1.5,
    ...inked({ stroke: 'ink' }),
  });

/** From the least to the most that something is, place by place. */
export const spanBar = (from: number, to: number, y: number): string =>
  element('rect', {
    class: 'span',
    x: from,
    y: y - 3,
    width: Math.max(1, to - from),
    height: 6,
    ...inked({ fill: 'mark' }),
  });

/** Text over lines: paper around its letters keeps it legible. */
export const haloed = (ink: Ink = 'ink'): Attributes => ({
  'stroke-width': 3.5,
  'stroke-linejoin': 'round',
  'paint-order': 'stroke',
  ...inked({ stroke: 'paper', fill: ink }),
});

/** A place that the text speaks of. */
export const dot = (x: number, y: number): string =>
  element('circle', { class: 'dot', cx: x, cy: y, r: 4.5, ...inked({ fill: 'ink' }) });
