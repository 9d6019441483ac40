import type { Wording } from '../judging/index.js';
import { sayDistance } from '../judging/internal.js';
import { INSTRUMENT_WORDS } from './bench.js';
import type { HiddenOval, HowRead } from './how-read.js';

/** How well the sizes were read, in sentences with full stops. */
export function describeHowRead(
  { within, undescribed, rule, notAt20C, ovalHidden }: HowRead,
  { units, why }: Wording,
): readonly string[] {
  const errors = within.map(
    ({ instrument, expanded }) =>
      `${INSTRUMENT_WORDS[instrument]} ${sayDistance(expanded, 'length', units)}`,
  );
  const once = ovalHidden.filter(({ oneAngle }) => oneAngle);
  const hidden = ovalHidden.filter(({ oneAngle }) => !oneAngle);
  const exact = undescribed.map((each) => INSTRUMENT_WORDS[each]);
  return [
    ...(errors.length > 0
      ? [
          `About 95 readings in 100 are right to within: ${errors.join(', ')}.${rule === 'simple acceptance' ? '' : ' A size too near to a limit for that is undecided.'}`,
        ]
      : []),
    ...(exact.length > 0
      ? [
          `Nobody said how well these measure, so their readings count as exact, which none is: ${exact.join(', ')}.`,
        ]
      : []),
    ...(rule ? [`Rule for verdicts: ${rule}.`] : []),
    ...(notAt20C.length > 0
      ? [
          `Nobody said what these are made of, so that their sizes at 20 °C are known less well: ${notAt20C.join(', ')}.`,
        ]
      : []),
    ...(once.length > 0
      ? [
          `These were read at one angle, where an oval is not seen; read them again 90° away, or better at 60 and 120° from there: ${sayHidden(once, false)}.`,
        ]
      : []),
    ...(hidden.length > 0
      ? [
          `The angles that these were read at may hide all of an oval, or most of it, and no two-point reading shows three lobes; read at 0, 60 and 120°: ${sayHidden(hidden, why === false)}.`,
        ]
      : []),
  ];
}

/** Where an oval may hide: `crankshaft A (rod 1, rod 2); rod 1`; in short, the parts alone. */
function sayHidden(hidden: readonly HiddenOval[], isShort: boolean): string {
  const parts = [...new Set(hidden.map(({ part }) => part))];
  const said = parts.map((part) => {
    const places = hidden.filter((each) => each.part === part).map(({ place }) => place);
    if (part === undefined) return places.join(', ');
    return isShort ? part : `${part} (${places.join(', ')})`;
  });
  return said.join(', ');
}
