import { describeBasis, guardFields, namedFrom } from '../judging/internal.js';
import { type DilutionOptions, type SumpStory, sumpLog } from '../oil/index.js';
import { dilutionThresholds } from '../oil/internal.js';
import {
  format,
  percentByVolume,
  RebuildInputError,
  type VolumeFraction,
  valueIn,
} from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { type Point, type Stretch, storyOf, timeOf } from './fuel-story.js';
import { flowingIn } from './fuel-words.js';
import { haloed, inked } from './ink.js';
import { widthOfWords } from './lettering.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, legend, limitLine, note, shade, straight } from './picture.js';
import { type Plane, plane } from './plane.js';
import { element, stroke, words } from './svg.js';

/** A sump whose fuel is known to lie between two: the same log, from the least of it and from the most. */
export interface SumpBetween {
  /** With the least fuel and the least leak that it may be. */
  readonly least: SumpStory;
  /** With the most. */
  readonly most: SumpStory;
}

const BETWEEN = ['least', 'most'] as const;
/**
 * Draws the fuel in a sump against the hours, through running and standing, draining and topping up. Of a sump that is
 * known between a least and a most, as blending laws disagree about the fuel in it, the whole band is drawn.
 *
 * @param sump - what happened to it, once or for the least and the most of fuel; both with the same log
 * @param thresholds - the fractions to act at and not to run above, as `dilutionFinding` takes them
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the log is empty, the logs
 * differ, no time passes in it, a threshold has no sound value, the unit system is unknown, the width is out of range, or
 * the id is not one
 * @example
 * ```ts
 * const story = { oil: quartUS(1), leak: mLPerHour(12), log: [{ running: hour(2) }, { standing: hour(12) }] };
 * const picture = fuelPicture(
 *   { least: story, most: { ...story, fuel: mL(20) } }, {}, { units: 'inch' },
 * );
 * picture.includes('standing'); // true
 * ```
 */
export function fuelPicture(
  sump: SumpStory | SumpBetween,
  thresholds: DilutionOptions,
  options: PictureOptions,
): string {
  const between = guardSump(sump);
  const { thresholds: limits, basis } = namedFrom(
    () => ({ options: 'thresholds' }),
    () => dilutionThresholds(thresholds),
  );
  const drawn = guardPicture(options, 'fuel-picture');
  const { width } = drawn;
  const most = storyOf(between.most);
  const least = storyOf(between.least);
  const isBand = between.least !== between.most;
  const hours = most.stretches.at(-1)?.to ?? 0;
  const vol = (fraction: number) => valueIn(fraction as VolumeFraction, percentByVolume);
  const highest = largestOf([limits.critical, ...most.points.map(({ fraction }) => fraction)]);
  const lines = [
    { label: `act above ${percent(limits.act)}`, value: vol(limits.act) },
    { label: `do not run above ${percent(limits.critical)}`, value: vol(limits.critical) },
  ];
  const flowing = (['running', 'standing'] as const)
    .filter((state) => most.stretches.some((stretch) => stretch.state === state))
    .map((state) => flowingIn(state, [between.least, between.most], drawn));
  const told = [
    ...sayFuel({ least, most, isBand, critical: limits.critical }),
    ...flowing.map(({ told }) => told),
  ];
  return drawPicture(
    {
      title: 'Fuel in the sump',
      told: [...told, `Limits: ${describeBasis(basis)}.`],
      strips: [
        legend(
          [
            ...flowing.map(({ state, label }) => ({
              label,
              place: placeOf(state),
              as: 'shade' as const,
            })),
            { label: isBand ? 'most it may be' : 'fuel', place: 0, as: 'line' },
            ...(isBand ? [{ label: 'least it may be', place: 1, as: 'line' as const }] : []),
            ...lines.map(({ label }, place) => ({ label, place, as: 'limit' as const })),
          ],
          width,
        ),
        plane(
          {
            x: { label: 'hours', from: 0, to: hours },
            y: { label: 'fuel in the oil [vol%]', from: 0, to: vol(highest) * 1.1 },
            height: Math.min(300, Math.max(200, width * 0.4)),
            width,
          },
          (field) =>
            [
              ...most.stretches.map((stretch) => drawStretch(stretch, field)),
              ...(isBand ? [band(least.points, most.points, field)] : []),
              path(most.points, field, undefined, 'most'),
              ...(isBand ? [path(least.points, field, '7 3', 'least')] : []),
              ...lines.map(({ value }, place) =>
                stroke([field.left, field.y(value)], [field.right, field.y(value)], {
                  class: 'limit',
                  ...limitLine(place),
                }),
              ),
            ].join(''),
        ),
        ...told.map((text) => note(text, width)),
        note(`Limits: ${describeBasis(basis)}.`, width),
      ],
    },
    drawn,
  );
}

const placeOf = (state: Stretch['state']) => (state === 'running' ? 0 : 1);
const percent = (fraction: VolumeFraction): string => format(fraction, percentByVolume);

function guardSump(sump: SumpStory | SumpBetween): SumpBetween {
  if (typeof sump !== 'object' || sump === null || !('least' in sump || 'most' in sump)) {
    const story = sump as SumpStory;
    sumpLog(story);
    guardTime('sump.log', story);
    return { least: story, most: story };
  }
  const { least, most } = guardBoth(sump as SumpBetween);
  guardTime('sump.least.log', least);
  if (JSON.stringify(least.log) === JSON.stringify(most.log)) return { least, most };
  throw new RebuildInputError({
    parameter: 'sump.most.log',
    value: most.log,
    expected: 'the same log as that of the least',
    hint: 'One thing happened to the sump; only how much fuel was in it is not known.',
  });
}

function guardBoth(sump: SumpBetween): SumpBetween {
  guardFields('sump', sump, BETWEEN);
  for (const end of BETWEEN) {
    namedFrom(
      () => ({ sump: `sump.${end}`, '': `sump.${end}` }),
      () => sumpLog(sump[end]),
    );
  }
  return sump;
}

function guardTime(parameter: string, { log }: SumpStory): void {
  if (log.some((entry) => timeOf(entry) > 0)) return;
  throw new RebuildInputError({
    parameter,
    value: log,
    expected: 'a log in which some time passes',
    hint: 'Write how long it ran or stood, e.g. { standing: hour(12) }.',
  });
}

function drawStretch({ state, from, to }: Stretch, field: Plane): string {
  const [left, right] = [field.x(from), Math.min(field.right, field.x(to))];
  const fits = right - left > widthOfWords(state) + 8;
  return [
    element('rect', {
      class: state,
      x: left,
      y: field.top,
      width: Math.max(0, right - left),
      height: field.bottom - field.top,
      ...shade(placeOf(state)),
    }),
    ...(fits
      ? [words(state, (left + right) / 2, field.top + 14, { 'text-anchor': 'middle', ...haloed() })]
      : []),
  ].join('');
}

const placesOf = (points: readonly Point[], field: Plane) =>
  points.map(
    ({ hours, fraction }) =>
      [
        Math.min(field.right, field.x(hours)),
        field.y(valueIn(fraction as VolumeFraction, percentByVolume)),
      ] as const,
  );

const path = (
  points: readonly Point[],
  field: Plane,
  dash: string | undefined,
  name: string,
): string =>
  element('path', {
    class: name,
    d: straight(placesOf(points, field)),
    'stroke-width': 1.8,
    'stroke-dasharray': dash,
    ...inked({ stroke: 'ink' }),
  });

const band = (least: readonly Point[], most: readonly Point[], field: Plane): string =>
  element('path', {
    class: 'band',
    d: `${straight([...placesOf(most, field), ...placesOf(least, field).reverse()])}Z`,
    'fill-opacity': 0.25,
    ...inked({ fill: 'mark' }),
  });

interface Told {
  readonly least: ReturnType<typeof storyOf>;
  readonly most: ReturnType<typeof storyOf>;
  readonly isBand: boolean;
  readonly critical: VolumeFraction;
}

function sayFuel({ least, most, isBand, critical }: Told): readonly string[] {
  const [low, high] = [least, most].map(({ points }) =>
    percent((points.at(-1)?.fraction ?? 0) as VolumeFraction),
  );
  const past = most.points.find(({ fraction }) => fraction > critical);
  const end = isBand ? `between ${low} and ${high}` : high;
  return [
    `At the end ${end} of the oil is fuel.`,
    past
      ? `It ${isBand ? 'may be' : 'is'} above ${percent(critical)} ${past.hours > 0 ? `within ${past.hours.toFixed(1)} hours` : 'from the start'}: do not run the engine from then on, before the oil is changed.`
      : `It stays at or below ${percent(critical)}.`,
  ];
}
