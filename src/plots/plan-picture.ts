import { guardLayout } from '../judging/internal.js';
import type { Build, Plan } from '../planning/index.js';
import { workIn } from '../planning/internal.js';
import { planLayout } from '../planning/layouts.js';
import { largestOf } from '../quantities/internal.js';
import { partWord, SECTIONS } from '../shed/internal.js';
import { dashOf, inked, written } from './ink.js';
import { inLines, LETTER_SIZE, widthOfWords } from './lettering.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, EDGE, LINE_HEIGHT, note, type Strip } from './picture.js';
import { element, stroke, words } from './svg.js';

/** A part in the picture, with the engines that take it. */
interface Line {
  readonly text: string;
  readonly isHeading: boolean;
  /** The engines, from 0, and how many of it each takes. */
  readonly engines: readonly number[];
  readonly isLeft: boolean;
}

/**
 * Draws which parts of a shed go into which engine of a plan: parts on the left, engines on the right, and a line from each
 * part to its engine. Parts that are left over have none.
 *
 * @param plan - what `planBuilds` gave
 * @param options - width and ids; units are taken and not needed
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
 * planPicture(plan, { units: 'inch' }).includes('No engine'); // true
 * ```
 */
export function planPicture(plan: Plan, options: PictureOptions): string {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  const drawn = guardPicture(options, 'plan-picture');
  const { width } = drawn;
  const { builds } = plan;
  const lines = linesOf(plan);
  const count =
    builds.length === 0
      ? 'No engine can be built by this plan.'
      : `${builds.length === 1 ? 'One engine' : `${builds.length} engines`} by this plan.`;
  const engines = builds.map(
    (build, i) =>
      `Engine ${i + 1}, ${build.name}: ${build.parts.map((part) => part.name + doneTo(part, build)).join(', ')}.`,
  );
  const isUntested = builds.some(({ parts }) => parts.some(({ untested }) => untested));
  return drawPicture(
    {
      title: `${plan.shed}: which parts go into which engine`,
      told: [count, ...engines],
      strips: [
        note(count, width),
        ...(lines.length === 0
          ? []
          : [
              web(
                lines,
                builds.map(({ name }) => name),
                width,
              ),
            ]),
        note(`Parts in grey are left over.${isUntested ? ' * not tested for cracks.' : ''}`, width),
      ],
    },
    drawn,
  );
}

type Part = Build['parts'][number];

/** What a part needs before it goes in, in a word. */
function doneTo({ name, bought, made, untested }: Part, build: Build): string {
  const isWorked = workIn(build).some(({ part }) => part === name);
  const done = bought ? ' (to buy)' : made ? ' (to be made)' : isWorked ? ' (needs work)' : '';
  return `${done}${untested ? '*' : ''}`;
}

/** Every part by section, those in engines first. */
function linesOf({ builds, leftOver }: Plan): readonly Line[] {
  return SECTIONS.flatMap((section) => {
    const used = new Map<string, number[]>();
    builds.forEach((build, engine) => {
      for (const part of build.parts) {
        if (part.section !== section) continue;
        const text = part.name + doneTo(part, build);
        used.set(text, [...(used.get(text) ?? []), engine]);
      }
    });
    const left = leftOver
      .filter((part) => part.section === section)
      .map(({ name, count, why }) => `${count === 1 ? name : `${count} × ${name}`} (${why})`);
    if (used.size + left.length === 0) return [];
    return [
      { text: partWord(section, 2), isHeading: true, engines: [], isLeft: false },
      ...[...used].map(([text, engines]) => ({ text, isHeading: false, engines, isLeft: false })),
      ...left.map((text) => ({ text, isHeading: false, engines: [], isLeft: true })),
    ];
  });
}

/** Parts on the left, engines on the right, lines between them. */
function web(lines: readonly Line[], engines: readonly string[], width: number): Strip {
  const most = Math.min(300, (width - 2 * EDGE) * 0.46);
  const wide = Math.min(
    most,
    14 + largestOf(lines.map(({ text }) => widthOfWords(text, LETTER_SIZE * 1.1))),
  );
  const broken = lines.map(({ text, isHeading }) =>
    inLines(text, isHeading ? wide / 1.1 : wide - 10),
  );
  const starts = broken.map((_, i) => broken.slice(0, i).reduce((sum, its) => sum + its.length, 0));
  const rows = broken.flat().length;
  const box = Math.min(240, (width - 2 * EDGE) * 0.32);
  const from = EDGE + wide + 6;
  const to = Math.min(width - EDGE - box, from + 300);
  const names = engines.map((name, i) => inLines(`${i + 1}. ${name}`, (box - 16) / 1.1));
  const needed = names.reduce((sum, its) => sum + its.length * LINE_HEIGHT + 24, 0);
  const height = Math.max(rows * LINE_HEIGHT, needed) + 8;
  return {
    height,
    draw: (top) => {
      const at = (line: number) => top + (starts[line] ?? 0) * LINE_HEIGHT + LINE_HEIGHT / 2;
      const room = (height - needed) / Math.max(1, engines.length);
      let y = top + room / 2;
      const boxes = names.map((its) => {
        const high = its.length * LINE_HEIGHT + 12;
        const place = { its, top: y, high, middle: y + high / 2 };
        y += high + 12 + room;
        return place;
      });
      return [
        ...lines.map(({ isHeading, isLeft }, row) =>
          element(
            'g',
            { ...(isHeading && { 'font-weight': 'bold' }), ...written(isLeft ? 'soft' : 'ink') },
            ...(broken[row] ?? []).map((text, i) =>
              words(text, isHeading ? EDGE : EDGE + 10, at(row) + 4 + i * LINE_HEIGHT),
            ),
          ),
        ),
        ...lines.flatMap(({ engines: its }, row) =>
          its.length === 0 ? [] : [leader(broken[row]?.[0] ?? '', from, at(row))],
        ),
        ...lines.flatMap(({ engines: its }, row) =>
          its.map((engine) =>
            stroke([from, at(row)], [to, boxes[engine]?.middle ?? top], {
              class: 'goes-into',
              'stroke-width': 1.2,
              'stroke-dasharray': dashOf(engine),
              ...inked({ stroke: engine % 2 === 0 ? 'ink' : 'mark' }),
            }),
          ),
        ),
        ...boxes.map(({ its, top: above, high }, engine) =>
          [
            element('rect', {
              x: to,
              y: above,
              width: box,
              height: high,
              'stroke-width': 1.5,
              'stroke-dasharray': dashOf(engine),
              ...inked({ stroke: engine % 2 === 0 ? 'ink' : 'mark', fill: 'paper' }),
            }),
            ...its.map((line, i) =>
              words(line, to + 8, above + 6 + i * LINE_HEIGHT + LETTER_SIZE, {
                'font-weight': 'bold',
                ...written(),
              }),
            ),
          ].join(''),
        ),
      ].join('');
    },
  };
}

/** Leads the eye from the end of a name to where its lines begin. */
function leader(name: string, to: number, y: number): string {
  const from = Math.min(to, EDGE + 10 + widthOfWords(name) + 4);
  return stroke([from, y], [to, y], {
    class: 'leader',
    'stroke-dasharray': '1 3',
    ...inked({ stroke: 'soft' }),
  });
}
