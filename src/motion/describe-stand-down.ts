import type { Span, Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardWording,
  NANOMETRE,
  say,
  sayFinding,
} from '../judging/internal.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import { pistonStandDownLayout } from './layouts.js';
import type { PistonStandDown } from './stand-down.js';

/**
 * Describes where a piston stops in sentences: first that it stands proud of the deck, if it does or may.
 *
 * @param standDown - what `pistonStandDown` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the stand-down is not what `pistonStandDown` gives, or the unit
 * system is unknown
 * @example
 * ```ts
 * const standDown = pistonStandDown({
 *   deckHeight: inch(9.02), stroke: inch(3.48), rodLength: inch(5.7), pinHeight: inch(1.6),
 * });
 * describeStandDown(standDown, { units: 'inch' });
 * // [
 * //   "the piston stands proud of the deck by 0.0200 in: check its clearance to the head, with the gasket as it is pressed, before the engine is turned",
 * //   "by the sizes of the parts the piston stops 0.0200 in above the deck at top dead centre",
 * // ]
 * ```
 */
export function describeStandDown(standDown: PistonStandDown, wording: Wording): readonly string[] {
  guardLayout('standDown', standDown, pistonStandDownLayout, 'pistonStandDown');
  guardWording(wording);
  const { calculated, measured = calculated, finding } = standDown;
  return [
    ...sayProud(measured, wording.units),
    sayStandDown(standDown, wording.units),
    ...(finding ? [sayFinding(finding, wording)] : []),
  ];
}

/** What a piston above the deck asks for; nothing of one that stops below it. */
export function sayProud({ min, max }: Span<Length>, units: UnitSystem): readonly string[] {
  if (min > -NANOMETRE) return [];
  const most = -min as Length;
  const stands =
    max > -NANOMETRE
      ? `may stand proud of the deck by up to ${say(most, 'length', units)}`
      : `stands proud of the deck by ${describeSpan({ min: -max as Length, max: most }, 'length', units)}`;
  return [
    `the piston ${stands}: check its clearance to the head, with the gasket as it is pressed, before the engine is turned`,
  ];
}

/** Where the sizes stop a piston, and how it was read. */
export function sayStandDown(
  { calculated, measured, stands }: PistonStandDown,
  units: UnitSystem,
): string {
  const read =
    measured && stands ? `; it was read ${sayFromDeck(measured, units)}, ${READ[stands]}` : '';
  return `by the sizes of the parts the piston stops ${sayFromDeck(calculated, units)} at top dead centre${read}`;
}

const READ = {
  'as the sizes say': 'as the sizes say',
  'too low': 'too low for them: look for a bent rod or another crankshaft or piston',
  'too high': 'too high for them: look for a planed block, or carbon under the dial',
} as const;

/** `0.0200 in below the deck`: no one reads a negative depth aloud. */
function sayFromDeck({ min, max }: Span<Length>, units: UnitSystem): string {
  if (min > -NANOMETRE) return `${describeSpan({ min, max }, 'length', units)} below the deck`;
  const above = -min as Length;
  if (max > NANOMETRE) {
    return `between ${say(above, 'length', units)} above the deck and ${say(max, 'length', units)} below it`;
  }
  return `${describeSpan({ min: -max as Length, max: above }, 'length', units)} above the deck`;
}
