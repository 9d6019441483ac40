import { scaleLinear } from 'd3-scale';
import type { UnitSystem } from '../../src/quantities/index.js';
import { compute, type FormulaCard, type Values } from '../cards.js';
import { type AnyUnit, say, sayResult, symbolAfter } from '../units.js';
import { type Curve, curveOf, rangeOf, strongest } from './curve.js';
import type { Field } from './field.js';
import { byId, element } from './page.js';
import { path, svg } from './svg.js';

const HEIGHT = 300;
const MARGIN = { top: 28, right: 16, bottom: 44, left: 64 };
/** The slider's steps from one end of the range to the other. */
const STEPS = 200;

/** The result drawn against one of the inputs, which a slider moves. */
export class Picture {
  readonly #card: FormulaCard;
  readonly #fields: readonly Field[];
  readonly #against = byId<HTMLSelectElement>('against');
  readonly #slider = byId<HTMLInputElement>('slider');
  readonly #place = byId('picture');
  #last: { readonly values: Values; readonly unit: AnyUnit } | undefined;
  #curve: Curve | undefined;

  constructor(card: FormulaCard, fields: readonly Field[], changed: () => void) {
    this.#card = card;
    this.#fields = fields;
    const values = Object.fromEntries(
      fields.map(({ letter, quantity }) => [letter, quantity as number]),
    );
    this.#against.append(
      ...fields.map(({ letter, about }) => element('option', { value: letter }, about.meaning)),
    );
    this.#against.value = strongest(card, values);
    this.#slider.max = String(STEPS);
    this.#against.addEventListener('change', () => this.#redraw());
    this.#slider.addEventListener('input', () => {
      const [least, most] = this.#range();
      const share = Number(this.#slider.value) / STEPS;
      this.#field.put(
        rounded(least + share * (most - least), (most - least) / STEPS, this.#field.unit),
      );
      changed();
    });
    new ResizeObserver(() => this.#redraw()).observe(this.#place);
  }

  /** Draws the result for these values, or says that there is none. */
  draw(values: Values | undefined, unit: AnyUnit | undefined, _system: UnitSystem): void {
    if (values && unit) this.#last = { values, unit };
    this.#place.classList.toggle('stale', !values);
    this.#redraw();
  }

  get #field(): Field {
    return this.#fields.find(({ letter }) => letter === this.#against.value) as Field;
  }

  /** What the slider ranges over: what is usual, and the value typed, wherever it is. */
  #range(): readonly [number, number] {
    const { about, letter } = this.#field;
    return rangeOf(about, this.#last?.values[letter]);
  }

  #redraw(): void {
    const last = this.#last;
    if (!last) return;
    const { letter, about, unit } = this.#field;
    const range = this.#range();
    const at = last.values[letter] as number;
    this.#slider.value = String(Math.round(((at - range[0]) / (range[1] - range[0])) * STEPS));
    this.#slider.setAttribute('aria-valuetext', say(at, unit));
    this.#curve = curveOf(this.#card, last.values, letter, range, this.#curve);
    const value = compute(this.#card, last.values);
    const { gives } = this.#card;
    const xs = (quantity: number) => numberIn(quantity, unit);
    const ys = (quantity: number) => numberIn(quantity, last.unit);
    const drawn = this.#curve.points.flatMap(({ y }) => (y === undefined ? [] : [y]));
    if (value === undefined || drawn.length === 0) return;
    const width = Math.max(260, this.#place.clientWidth);
    const x = scaleLinear([xs(range[0]), xs(range[1])], [MARGIN.left, width - MARGIN.right]);
    const y = scaleLinear(spread([...drawn, value].map(ys)), [
      HEIGHT - MARGIN.bottom,
      MARGIN.top,
    ]).nice(5);
    const [across, yText] = [width < 420 ? 3 : 6, y.tickFormat(5)];
    const xText = x.tickFormat(across);
    const here = { x: x(xs(at)), y: y(ys(value)) };
    const title = `${gives.meaning} against ${about.meaning}`;
    const told = `At ${say(at, unit)} it is ${sayResult(value, last.unit)}.`;
    const ends = [
      this.#curve.points.find((p) => p.y !== undefined),
      this.#curve.points.findLast((p) => p.y !== undefined),
    ];
    const run = ends.map((p) =>
      p?.y === undefined ? '' : `${sayResult(p.y, last.unit)} at ${say(p.x, unit)}`,
    );
    this.#place.replaceChildren(
      svg(
        'svg',
        {
          viewBox: `0 0 ${width} ${HEIGHT}`,
          width,
          height: HEIGHT,
          role: 'img',
          'aria-labelledby': 'picture-title picture-text',
        },
        [
          svg('title', { id: 'picture-title' }, [title]),
          svg('desc', { id: 'picture-text' }, [
            `${told} The line runs from ${run[0]} to ${run[1]}, the other inputs as they are.`,
          ]),
          ...y.ticks(5).flatMap((tick) => [
            svg('line', {
              class: 'grid',
              x1: MARGIN.left,
              x2: width - MARGIN.right,
              y1: y(tick),
              y2: y(tick),
            }),
            svg(
              'text',
              { class: 'tick', x: MARGIN.left - 6, y: y(tick) + 4, 'text-anchor': 'end' },
              [yText(tick)],
            ),
          ]),
          ...x.ticks(across).flatMap((tick) => [
            svg('line', {
              class: 'grid',
              x1: x(tick),
              x2: x(tick),
              y1: MARGIN.top,
              y2: HEIGHT - MARGIN.bottom,
            }),
            svg(
              'text',
              {
                class: 'tick',
                x: x(tick),
                y: HEIGHT - MARGIN.bottom + 18,
                'text-anchor': 'middle',
              },
              [xText(tick)],
            ),
          ]),
          svg('text', { class: 'name', x: 4, y: 16 }, [
            shortened(`${gives.meaning}${inUnit(last.unit)}`, width - 8),
          ]),
          svg(
            'text',
            { class: 'name', x: width - MARGIN.right, y: HEIGHT - 6, 'text-anchor': 'end' },
            [shortened(`${about.meaning}${inUnit(unit)}`, width - 24)],
          ),
          svg('path', {
            class: 'curve',
            d: path(
              this.#curve.points.map((p) =>
                p.y === undefined ? undefined : [x(xs(p.x)), y(ys(p.y))],
              ),
            ),
          }),
          svg('path', {
            class: 'lead',
            d: `M${here.x},${HEIGHT - MARGIN.bottom}V${here.y}H${MARGIN.left}`,
          }),
          svg('circle', { class: 'here', cx: here.x, cy: here.y, r: 5 }),
        ],
      ),
      element(
        'p',
        {},
        told,
        this.#curve.points.some((p) => p.y === undefined)
          ? ' Where there is no line, it is refused.'
          : '',
      ),
    );
  }
}

const inUnit = (unit: AnyUnit) => (unit.symbol === '-' ? '' : `,${symbolAfter(unit)}`);

/** The number that a quantity is in a unit; the scale of a picture needs no refusal. */
const numberIn = (quantity: number, { numerator, denominator, offset }: AnyUnit): number =>
  (quantity * denominator - offset) / numerator;

/** A value of the slider, rounded so that its digits do not run on, but each step is another one. */
function rounded(quantity: number, step: number, unit: AnyUnit): number {
  const size = Math.abs((step * unit.denominator) / unit.numerator);
  const decimals = Math.max(0, Math.ceil(-Math.log10(size)));
  return unit(Number(numberIn(quantity, unit).toFixed(Math.min(decimals, 20))));
}

/** The ends of a scale. A result that never changes has some room about it. */
function spread(values: readonly number[]): readonly [number, number] {
  const [least, most] = values.reduce(
    ([l, m], v) => [Math.min(l, v), Math.max(m, v)],
    [Infinity, -Infinity],
  );
  const room = most - least > 1e-9 * Math.abs(most) ? 0 : Math.abs(most) / 2 || 1;
  return [least - room, most + room];
}

/** Text cut to what fits a width, at about 7 pixels for a letter. */
const shortened = (text: string, width: number): string =>
  text.length * 7 <= width ? text : `…${text.slice(-Math.floor(width / 7) + 1)}`;
