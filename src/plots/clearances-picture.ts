import type { Basis } from '../judging/index.js';
import {
  describeBasis,
  guardFields,
  guardFinding,
  guardList,
  guardQuantity,
  guardSpan,
  guardText,
} from '../judging/internal.js';
import { type Length, RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import {
  type ClearanceRow,
  rowOf,
  type ShownClearance,
  sayStanding,
  VERDICT_SHAPES,
} from './clearance-row.js';
import { guardPicture, type PictureOptions } from './options.js';
import { drawPicture, EDGE, legend, note, type Strip } from './picture.js';

const SHOWN = ['name', 'finding', 'span', 'readAgain'] as const;
/** From this width on, rows stand in two columns. */
const TWO_COLUMNS = 700;
const BETWEEN = 28;

/**
 * Draws every clearance as a bar against its limits, with its uncertainty. Each has a scale of its own, on which its
 * limits stand alike. What was not measured is shown as not measured.
 *
 * @param clearances - each with its finding, as far as it is known; `clearancesOf` makes them from an inspection
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when the list is empty, a field is misspelt, a name is empty, a finding is not one, a value is
 * not finite, a span is reversed, it is marked to be read again otherwise than by true, the unit system is unknown, the width
 * is out of range, or the id is not one
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'oil clearance', dimension: 'length', value: thou(2.4), uncertainty: thou(0.3),
 *   limits: { min: thou(1.2), max: thou(2.8) }, basis: { kind: 'specified', by: 'the manual' },
 * });
 * const picture = clearancesPicture(
 *   [{ name: 'rod 1', finding }, { name: 'rod 2' }],
 *   { units: 'inch' },
 * );
 * picture.includes('not measured'); // true
 * ```
 */
export function clearancesPicture(
  clearances: readonly ShownClearance[],
  options: PictureOptions,
): string {
  guardList('clearances', clearances, 1, 'clearances');
  const sound = clearances.map((each, i) => guardShown(`clearances[${i}]`, each));
  const drawn = guardPicture(options, 'clearances-picture');
  const { units, width } = drawn;
  const { wording, named } = letteredNotes(units);
  const columns = width < TWO_COLUMNS ? 1 : 2;
  const wide = (width - 2 * EDGE - BETWEEN * (columns - 1)) / columns;
  const rows = sound.map((each) => rowOf(each, wide, wording));
  const standings = sound.map((each) => `${each.name}: ${sayStanding(each, wording)}.`);
  const notes = named.map((text, i) => `[${letter(i)}] ${text}`);
  const sign = (label: string, place: number) => ({ label, place, as: 'mark' as const });
  return drawPicture(
    {
      title: 'Clearances against their limits',
      told: [...standings, ...notes],
      strips: [
        legend(
          [
            sign('clearance within its limits', VERDICT_SHAPES.within),
            sign('undecided', VERDICT_SHAPES.undecided),
            sign('outside', VERDICT_SHAPES.above),
            { label: 'its uncertainty', place: 0, as: 'whisker' },
            { label: 'from the tightest to the widest place', place: 0, as: 'bar' },
            { label: 'allowed, from limit to limit', place: 0, as: 'shade' },
          ],
          width,
        ),
        note(
          'The mark is the clearance that is judged, and its value stands at the end of its row. Each row has a scale of its own; an arrow points past its end. A broken line is a service limit.',
          width,
        ),
        ...pairsOf(rows, columns, wide),
        ...notes.map((text) => note(text, width)),
      ],
    },
    drawn,
  );
}

/** Who set the limits: by letters, as the reports on whose pages the picture stands number theirs. */
function letteredNotes(units: UnitSystem) {
  const named: string[] = [];
  const nameBasis = (basis: Basis): string => {
    const note = describeBasis(basis);
    if (!named.includes(note)) named.push(note);
    return `[${letter(named.indexOf(note))}]`;
  };
  return { wording: { units, nameBasis }, named };
}

/** `a` to `z`, then `a1` on. */
const letter = (i: number): string =>
  `${String.fromCharCode(97 + (i % 26))}${i < 26 ? '' : Math.floor(i / 26)}`;

function guardShown(at: string, clearance: ShownClearance): ShownClearance {
  guardFields(at, clearance, SHOWN);
  const { name, finding, span, readAgain } = clearance;
  guardText(`${at}.name`, name);
  if (finding !== undefined) guardLengths(`${at}.finding`, guardFinding(`${at}.finding`, finding));
  if (readAgain !== undefined && readAgain !== true) {
    throw new RebuildInputError({
      parameter: `${at}.readAgain`,
      value: readAgain,
      expected: 'true, or left out',
      hint: 'It says that a reading does not fit the others.',
    });
  }
  return {
    ...clearance,
    ...(span !== undefined && { span: guardSpan<'length'>(`${at}.span`, span, guardSize) }),
  };
}

function guardLengths(at: string, { dimension }: NonNullable<ShownClearance['finding']>): void {
  if (dimension === 'length') return;
  throw new RebuildInputError({
    parameter: `${at}.dimension`,
    value: dimension,
    expected: 'length',
    hint: 'A clearance is a length: pass on a finding of one.',
  });
}

const guardSize = (parameter: string, value: Length): Length =>
  guardQuantity(parameter, value, 'length');

/** Rows side by side, as many as there are columns. */
function pairsOf(rows: readonly ClearanceRow[], columns: number, wide: number): readonly Strip[] {
  return Array.from({ length: Math.ceil(rows.length / columns) }, (_, i) => {
    const beside = rows.slice(i * columns, (i + 1) * columns);
    return {
      height: largestOf(beside.map(({ height }) => height)),
      draw: (top: number) =>
        beside.map((row, k) => row.draw(EDGE + k * (wide + BETWEEN), top)).join(''),
    };
  });
}
