import { scaleLinear } from 'd3-scale';
import type { Finding, Span, Wording } from '../judging/index.js';
import { describeSpan, say, sayFinding } from '../judging/internal.js';
import { inch, type Length } from '../quantities/index.js';
import { type Ink, inked, mark, spanBar, whisker, written } from './ink.js';
import { inLines, LETTER_SIZE, widthOfWords } from './lettering.js';
import { LINE_HEIGHT, shade } from './picture.js';
import { element, stroke, words } from './svg.js';

/** A clearance, a gap or a play, as far as it is known. */
export interface ShownClearance {
  /** What and where, as on the bench. */
  readonly name: string;
  /** It against its limits; absent if there are none, or it was not measured. */
  readonly finding?: Finding<'length'>;
  /** From its tightest to its widest place; absent if it was not measured, or only once [m]. */
  readonly span?: Span<Length>;
  /** A reading that it rests on does not fit the others: nothing is judged before that is read again. */
  readonly readAgain?: true;
}

/** A row of the picture: so high, and drawn from its upper left corner. */
export interface ClearanceRow {
  readonly height: number;
  readonly draw: (left: number, top: number) => string;
}

const TRACK = 26;
/** From the end of the track to the value that stands behind it. */
const BEHIND = 8;

/** How a clearance stands, in words: the sentence of its finding, or what is missing. */
export function sayStanding(
  { finding, span, readAgain }: ShownClearance,
  wording: Wording,
): string {
  if (readAgain) return 'not judged: a reading does not fit the others; read it again first';
  if (finding) return sayFinding(finding, wording);
  if (span === undefined) return 'not measured';
  return `${describeSpan(span, 'length', wording.units)}; not judged, as no limit is given`;
}

/** Lays out one clearance in a column so wide. */
export function rowOf(clearance: ShownClearance, width: number, wording: Wording): ClearanceRow {
  const name = inLines(clearance.name, width / 1.1);
  const said = inLines(sayStanding(clearance, wording), width);
  const value = shownValue(clearance, wording);
  // As wide for every row of these units, so that their tracks end alike.
  const behind = BEHIND + widthOfWords(say(inch(1), 'length', wording.units)) * 1.1;
  return {
    height: (name.length + said.length) * LINE_HEIGHT + TRACK + 10,
    draw: (left, top) => {
      const track = top + name.length * LINE_HEIGHT;
      const text = track + TRACK;
      return [
        element(
          'g',
          { 'font-weight': 'bold', ...written() },
          ...name.map((line, i) => words(line, left, top + i * LINE_HEIGHT + LETTER_SIZE)),
        ),
        trackOf(clearance, { left, right: left + width - behind, middle: track + TRACK / 2 }),
        words(value, left + width, track + TRACK / 2 + 4, {
          class: 'value',
          'text-anchor': 'end',
          'font-weight': 'bold',
          ...written(),
        }),
        element(
          'g',
          written(),
          ...said.map((line, i) => words(line, left, text + i * LINE_HEIGHT + LETTER_SIZE)),
        ),
      ].join('');
    },
  };
}

/** The clearance that is judged, to be read without its sentence. */
const shownValue = ({ finding, readAgain }: ShownClearance, { units }: Wording): string =>
  finding === undefined || readAgain ? '' : say(finding.value, 'length', units);

interface Track {
  readonly left: number;
  readonly right: number;
  readonly middle: number;
}

function trackOf({ finding, span, readAgain }: ShownClearance, track: Track): string {
  const { left, right, middle } = track;
  if (finding === undefined || readAgain) {
    return element('rect', {
      class: 'no-verdict',
      x: left,
      y: middle - 8,
      width: right - left,
      height: 16,
      'stroke-dasharray': '2 4',
      ...inked({ stroke: 'soft' }),
    });
  }
  const { limits, value, uncertainty = 0 } = finding;
  const place = placeIn(finding, track);
  const held = (size: number) => Math.max(left, Math.min(right, place(size)));
  const low = limits.min === undefined ? left : held(limits.min);
  const high = limits.max === undefined ? right : held(limits.max);
  const wall = (x: number) =>
    stroke([x, middle - 11], [x, middle + 11], {
      class: 'limit',
      'stroke-width': 1.5,
      ...inked({ stroke: 'ink' }),
    });
  const service = [finding.service?.limits.min, finding.service?.limits.max].flatMap((limit) =>
    limit === undefined || place(limit) < left || place(limit) > right ? [] : [place(limit)],
  );
  return [
    element('rect', {
      class: 'allowed',
      x: low,
      y: middle - 9,
      width: high - low,
      height: 18,
      ...shade(0),
    }),
    stroke([left, middle], [right, middle], { 'stroke-width': 0.7, ...inked({ stroke: 'soft' }) }),
    ...[limits.min, limits.max].map((limit) => (limit === undefined ? '' : wall(held(limit)))),
    ...service.map((x) =>
      stroke([x, middle - 11], [x, middle + 11], {
        class: 'service-limit',
        'stroke-width': 1.5,
        'stroke-dasharray': '3 2',
        ...inked({ stroke: 'ink' }),
      }),
    ),
    ...(span ? [spanBar(held(span.min), held(span.max), middle)] : []),
    ...standing(finding, place(value), track, [
      held(value - uncertainty),
      held(value + uncertainty),
    ]),
  ].join('');
}

/** The value itself with its whisker, or an arrow where it is past the end. */
function standing(
  finding: Finding<'length'>,
  at: number,
  { left, right, middle }: Track,
  [from, to]: readonly [number, number],
): readonly string[] {
  if (at < left) return [arrow(left, middle, -1)];
  if (at > right) return [arrow(right, middle, 1)];
  return [...(to > from ? [whisker(from, to, middle)] : []), verdictMark(finding, at, middle)];
}

/** No clearance is told to less than this [m]: a finer scale has nothing to show. */
const LEAST_SCALE = 1e-7;

/** Where sizes stand on the track of a finding: its limits take the middle of it. */
function placeIn({ limits: { min, max }, value }: Finding<'length'>, { left, right }: Track) {
  const [near, far] = [left + 0.22 * (right - left), left + 0.55 * (right - left)];
  if (min !== undefined && max !== undefined) {
    const half = Math.max(max - min, LEAST_SCALE) / 2;
    const middle = (min + max) / 2;
    return scaleLinear([middle - half, middle + half], [near, far]);
  }
  const limit = max ?? min ?? value;
  const reach = Math.max(Math.abs(limit) || Math.abs(value), LEAST_SCALE);
  return max === undefined
    ? scaleLinear([limit, limit + reach], [near, far])
    : scaleLinear([limit - reach, limit], [left + 0.05 * (right - left), far]);
}

const hundredth = (value: number): number => Math.round(value * 100) / 100;

/** A value that is past the end of the track. */
const arrow = (x: number, y: number, way: 1 | -1): string =>
  element('path', {
    class: 'off-the-track',
    d: `M${hundredth(x)} ${y}l${-14 * way} -8v16Z`,
    ...inked({ fill: 'alarm' }),
  });

/** The shape of a verdict: a round for within, a diamond for undecided, a triangle for outside. */
export const VERDICT_SHAPES = { within: 0, undecided: 3, below: 2, above: 2 } as const;

function verdictMark({ verdict }: Finding<'length'>, x: number, y: number): string {
  const ink: Ink = verdict === 'within' || verdict === 'undecided' ? 'ink' : 'alarm';
  return element(
    'g',
    { class: `verdict ${verdict}` },
    mark(VERDICT_SHAPES[verdict], x, y, undefined, ink),
  );
}
