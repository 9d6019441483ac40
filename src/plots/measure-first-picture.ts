import { guardLayout, sayDistance } from '../judging/internal.js';
import type { MeasureFirst, Plan } from '../planning/index.js';
import { sayMayBring, sayPartToMeasure } from '../planning/internal.js';
import { planLayout } from '../planning/layouts.js';
import { tradeUnit, valueIn } from '../quantities/index.js';
import { inked, written } from './ink.js';
import { inLines, LETTER_SIZE } from './lettering.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, EDGE, gap, LINE_HEIGHT, note, type Strip } from './picture.js';
import { around, ticksOf } from './plane.js';
import { element, stroke, words } from './svg.js';

/**
 * Draws what measuring may bring: the margin that the tightest clearance of a plan has now, the margin that it may have at
 * best, and for each what to measure. What brings no margin but an engine or money is told in words.
 *
 * @param plan - what `planBuilds` gave
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when the plan is not what `planBuilds` gives, an option is unknown, the unit system is
 * unknown, the width is out of range, or the id is not one
 * @example
 * ```ts
 * const plan = await planBuilds(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * }));
 * measureFirstPicture(plan, { units: 'inch' }).includes('no clearance is judged'); // true
 * ```
 */
export function measureFirstPicture(plan: Plan, options: PictureOptions): string {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  const drawn = guardPicture(options, 'measure-first-picture');
  const { units, width } = drawn;
  const { smallestMargin, measureFirst } = plan;
  const say = (margin: number) => sayDistance(margin, 'length', units);
  const now =
    smallestMargin === undefined
      ? 'As it is: no clearance is judged, so there is no margin.'
      : `As it is: the tightest clearance stays ${say(smallestMargin)} inside its limits.`;
  const steps = measureFirst.map(({ mayBring, parts }) => ({
    margin: marginOf(mayBring),
    text: `${sayMayBring(mayBring, { units })}, if these turn out good:`,
    parts: parts.map((part) => sayPartToMeasure(part, { units })),
  }));
  const rows = [
    ...(smallestMargin === undefined ? [] : [{ margin: smallestMargin, text: now, parts: [] }]),
    ...steps,
  ];
  const nothing =
    measureFirst.length === 0 ? ['Nothing is left to measure that may make this plan better.'] : [];
  const last = 'What is not measured is counted on nowhere in the plan.';
  return drawPicture(
    {
      title: `${plan.shed}: what to measure first`,
      told: [
        now,
        ...steps.map(({ text, parts }) => `${text} ${parts.join('; ')}.`),
        ...nothing,
        last,
      ],
      strips: [
        ...(smallestMargin === undefined ? [note(now, width)] : []),
        ...bars(rows, drawn),
        ...nothing.map((text) => note(text, width)),
        note(last, width),
      ],
    },
    drawn,
  );
}

const marginOf = (mayBring: MeasureFirst['mayBring']): number | undefined =>
  mayBring.kind === 'wider margin' ? mayBring.margin : undefined;

interface Bar {
  readonly margin: number | undefined;
  readonly text: string;
  readonly parts: readonly string[];
}

const BAR = 18;

/** Bars that begin at no margin, each under what it stands for, and their scale. */
function bars(
  rows: readonly Bar[],
  { units, width }: { readonly units: 'inch' | 'metric'; readonly width: number },
): readonly Strip[] {
  const unit = tradeUnit('length', units);
  const margins = rows.flatMap(({ margin }) =>
    margin === undefined ? [] : [valueIn(margin as never, unit)],
  );
  const { from, to } = around([0, ...margins], 1e-6, 0.06);
  const [left, right] = [EDGE + 6, width - EDGE - 6];
  const x = (value: number) => left + ((right - left) * (value - from)) / (to - from);
  const room = width - 2 * EDGE;
  const strips = rows.map(({ margin, text, parts }): Strip => {
    const above = inLines(text, room);
    const under = parts.flatMap((part) => inLines(`– ${part}`, room - 12));
    const bar = margin === undefined ? 0 : BAR + 6;
    return {
      height: (above.length + under.length) * LINE_HEIGHT + bar + 10,
      draw: (top) => {
        const at = top + above.length * LINE_HEIGHT + 3;
        const [zero, end] = [x(0), x(margin === undefined ? 0 : valueIn(margin as never, unit))];
        return [
          element(
            'g',
            written(),
            ...above.map((line, i) => words(line, EDGE, top + i * LINE_HEIGHT + LETTER_SIZE)),
          ),
          ...(margin === undefined
            ? []
            : [
                element('rect', {
                  class: 'margin',
                  x: Math.min(zero, end),
                  y: at,
                  width: Math.abs(end - zero),
                  height: BAR - 4,
                  'stroke-width': 1.5,
                  'stroke-dasharray': parts.length > 0 ? '3 2' : undefined,
                  ...inked({ stroke: 'ink', ...(parts.length === 0 && { fill: 'mark' }) }),
                }),
                stroke([zero, at - 4], [zero, at + BAR], {
                  'stroke-width': 1.5,
                  ...inked({ stroke: 'ink' }),
                }),
              ]),
          element(
            'g',
            written(),
            ...under.map((line, i) =>
              words(
                line,
                EDGE + 12,
                top + above.length * LINE_HEIGHT + bar + i * LINE_HEIGHT + LETTER_SIZE,
              ),
            ),
          ),
        ].join('');
      },
    };
  });
  if (margins.length === 0) return strips;
  const axis: Strip = {
    height: 2 * LINE_HEIGHT + 8,
    draw: (top) =>
      [
        stroke([left, top], [right, top], { 'stroke-width': 1, ...inked({ stroke: 'ink' }) }),
        ...ticksOf({ label: '', from, to }, Math.max(2, Math.floor(room / 90))).map(
          ({ value, text }) =>
            element(
              'g',
              { class: 'tick-x' },
              stroke([x(value), top], [x(value), top + 5], {
                'stroke-width': 1,
                ...inked({ stroke: 'ink' }),
              }),
              words(text, x(value), top + LINE_HEIGHT + 2, {
                'text-anchor': 'middle',
                ...written(),
              }),
            ),
        ),
        words(
          `margin of the tightest clearance [${unit.symbol}]`,
          right,
          top + 2 * LINE_HEIGHT + 2,
          {
            'text-anchor': 'end',
            ...written(),
          },
        ),
      ].join(''),
  };
  return [...strips, gap(2), axis];
}
