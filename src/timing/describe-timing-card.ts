import type { Wording } from '../judging/index.js';
import {
  guardLayout,
  guardWording,
  noteOf,
  sayFinding,
  sayWithDoubt,
} from '../judging/internal.js';
import { degree, format, inch, type Length, mm } from '../quantities/index.js';
import { timingCardLayout } from './layouts.js';
import type { TimingCard, TimingCaution, TimingRow } from './timing-card.js';

/**
 * Describes a timing card in sentences, to be printed and hung over the bench: what to mind first, then every event,
 * then what is not known.
 *
 * @param card - what `timingCard` gave
 * @param wording - the units to print in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the card is not what `timingCard` gives, or the unit system is
 * unknown
 * @example
 * ```ts
 * const card = timingCard({
 *   rimDiameter: inch(10),
 *   crank: { stroke: inch(3.25), rodLength: inch(6) },
 *   spark: { advance: degree(18), speedRatio: ratio(0.5), lag: degree(10) },
 * });
 * describeTimingCard(card, { units: 'inch' })[4];
 * // "spark, running: 18.0 deg before top dead centre; 1.57 in along the rim from the top mark, 1.56 in straight across; piston 0.101 in below the top"
 * ```
 */
export function describeTimingCard(card: TimingCard, wording: Wording): readonly string[] {
  guardLayout('card', card, timingCardLayout, 'timingCard');
  guardWording(wording);
  const { rows, notKnown, notGiven, cautions, starting, basis } = card;
  const inInches = wording.units === 'inch';
  const onRim = (length: Length) => (inInches ? format(length, inch, 2) : format(length, mm, 1));
  const inBore = (length: Length) => (inInches ? format(length, inch, 3) : format(length, mm, 2));
  return [
    ...cautions.map((caution) => CAUTIONS[caution]),
    ...(starting ? [sayFinding(starting, wording)] : []),
    ...rows.map((row) => describeRow(row, onRim, inBore)),
    ...(notKnown.length > 0 ? [`not known: ${notKnown.map(unlisted).join('; ')}`] : []),
    ...notGiven.map((lacking) => LACKING[lacking]),
    ...(rows.some(({ side, rim }) => rim && side !== 'at') ? [WHICH_WAY] : []),
    `whose figures: ${noteOf(basis, wording).replace(/^\((.*)\)$/, '$1')}`,
  ];
}

const CAUTIONS: Readonly<Record<TimingCaution, string>> = {
  'earth the magneto':
    'before the crank is turned by hand: ignition off, magneto lead earthed, plugs out',
  'starting spark not known':
    'where the spark comes for starting is not known: if it comes before the top, it throws the starting handle back',
  'kicks back':
    'take care: the spark for starting comes too early, and throws the starting handle back',
  'may kick back':
    'take care: the spark for starting may come too early, and throw the starting handle back',
};
const LACKING = {
  'rim diameter': 'no distances on the rim: its diameter was not given',
  'stroke and rod': 'no travel of the piston: stroke and rod were not given',
} as const;
const WHICH_WAY =
  'a mark before a dead centre comes to the pointer before the mark of that dead centre, the engine turning forwards';

/** A name with a comma in it, made fit for a list. */
const unlisted = (event: string) => event.replace(',', '');

function describeRow(
  { event, angle, side, centre, rim, travel, within }: TimingRow,
  onRim: (length: Length) => string,
  inBore: (length: Length) => string,
): string {
  const off = within === undefined ? '' : ` ± ${format(within, degree)}`;
  const piston = travel === undefined ? '' : `; piston ${inBore(travel)} below the top`;
  if (event === 'top dead centre')
    return `${event}: the top mark; the bottom mark is half a turn from it`;
  if (side === 'at') return `${event}: at ${centre} dead centre${off}${piston}`;
  const marks =
    rim === undefined
      ? ''
      : `; ${onRim(rim.arc)} along the rim from the ${centre} mark, ${onRim(rim.chord)} straight across`;
  const place =
    within === undefined ? format(angle, degree) : sayWithDoubt(angle, within, 'angle', degree);
  return `${event}: ${place} ${side} ${centre} dead centre${marks}${piston}`;
}
