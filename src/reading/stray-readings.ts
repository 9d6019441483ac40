import { guardJournalOfKind, sizesOfKind } from '../crankshaft/internal.js';
import type { Span } from '../judging/index.js';
import { showIn, showLength } from '../judging/internal.js';
import type { DiameterReading } from '../measuring/index.js';
import { degree, type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';

/** The journal of `guardJournalOfKind`, and what was read of it. */
export interface ReadJournal {
  readonly name: string;
  readonly smallest: Length;
  readonly largest: Length;
  readonly outOfRound: Length;
  readonly taper: Length;
  readonly readings: readonly DiameterReading[];
}

/** Refuses a journal whose size does not fit its kind; by the one reading to take again, where the others agree. */
export function guardJournal(
  { name, smallest, largest, outOfRound, taper, readings }: ReadJournal,
  { standard }: { readonly standard: Span<Length> },
): void {
  guardNoStray(name, readings, standard);
  guardJournalOfKind('journal', { name, smallest, largest, outOfRound, taper }, standard);
}

/** Refuses one reading that no journal of the kind has, if the others lie closer together than it lies to any of them. */
function guardNoStray(
  name: string,
  readings: readonly DiameterReading[],
  standard: Span<Length>,
): void {
  const { min, max } = sizesOfKind(standard);
  const isStray = ({ diameter }: DiameterReading) => diameter < min || diameter > max;
  const [stray, ...more] = readings.filter(isStray);
  const others = readings.filter((each) => !isStray(each)).map(({ diameter }) => diameter);
  if (stray === undefined || more.length > 0 || others.length < 2) return;
  const [least, most] = [smallestOf(others), largestOf(others)];
  const { station, angle, diameter } = stray;
  if (Math.max(diameter - most, least - diameter) <= most - least) return;
  throw new RebuildInputError({
    parameter: `readings[${readings.indexOf(stray)}].diameter`,
    value: diameter,
    shown: `${name} at station ${showLength(station)}, angle ${showIn(angle, degree)}: ${showLength(diameter)}`,
    expected: `near its other readings, ${showLength(least)} … ${showLength(most)}`,
    hint: 'Read it again; two digits may have changed places.',
  });
}
