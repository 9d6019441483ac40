import { printable } from '../../pages/index.js';
import type { Condition, Owned } from '../part.js';

/** What is said of the states a part or an engine was found in. */
const SAID = {
  ran: 'it ran',
  turns: 'it turns',
  seized: 'it has seized',
  'not seen': 'not seen yet',
} as const;

/** `it turns (2024-06)`. */
export const sayCondition = ({ is, on }: Condition): string =>
  `${SAID[is]}${on === undefined ? '' : ` (${on})`}`;

/** The most characters of notes beside a part: about a line. */
const BRIEF = 100;

/** What the owner of a part says of it, briefly: `owner: it turns; "weak spark"`; nothing if nothing is said. */
export function sayOwner({
  condition,
  notes = [],
}: Pick<Owned, 'condition' | 'notes'>): readonly string[] {
  const said = [
    ...(condition ? [sayCondition(condition)] : []),
    ...(notes.length > 0 ? [`"${briefly(notes.map(printable).join(' / '))}"`] : []),
  ];
  return said.length === 0 ? [] : [`owner: ${said.join('; ')}`];
}

/** A text cut after a word, if it is long. */
function briefly(text: string): string {
  const letters = [...text];
  if (letters.length <= BRIEF) return text;
  const start = letters.slice(0, BRIEF).join('');
  return `${start.replace(/ [^ ]*$/, '')} …`;
}
