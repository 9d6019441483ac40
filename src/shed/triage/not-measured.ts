import type { Span } from '../../judging/index.js';
import { type ReadSoFar, readSoFar } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import type { MeasuredWhat, NotMeasured } from './not-measured-types.js';
import type { TriageReason } from './triage-types.js';

/** A place, and what was read of it so far. */
export interface PlaceSoFar {
  readonly name: string;
  readonly soFar: ReadSoFar;
}

/** What was read of a journal or bore so far. */
export const soFarOf = (
  {
    name,
    readings = [],
  }: { readonly name: string; readonly readings?: Parameters<typeof readSoFar>[0] },
  ringTravel?: Span<Length>,
): PlaceSoFar => ({ name, soFar: readSoFar(readings, ringTravel) });

/** That places were not measured, or not to the end; nothing if all were. */
export function unreadPlaces(
  what: MeasuredWhat,
  places: readonly PlaceSoFar[],
): readonly NotMeasured[] {
  const open = places.filter(({ soFar }) => soFar.lacks !== undefined);
  if (open.length === 0) return [];
  return [
    {
      kind: 'not measured',
      what,
      places: open.map(({ name }) => name),
      begun: open.flatMap(({ name: place, soFar: { size, lacks } }) =>
        size && typeof lacks === 'object' ? [{ place, read: size, lacks }] : [],
      ),
    },
  ];
}

/** That sizes of a part were not measured; nothing if they were. */
export function notSized(
  what: MeasuredWhat,
  places: readonly { readonly name: string; readonly size: unknown }[],
): readonly NotMeasured[] {
  const open = places.filter(({ size }) => size === undefined);
  return open.length === 0
    ? []
    : [{ kind: 'not measured', what, places: open.map(({ name }) => name), begun: [] }];
}

/** That one thing of a part is not known; nothing if it is. */
export const notKnown = (what: MeasuredWhat, value: unknown): readonly NotMeasured[] =>
  value === undefined ? [{ kind: 'not measured', what, places: [], begun: [] }] : [];

/** How many places or things of a part are to be measured, or read again, before it counts. */
export const thingsToMeasure = (because: readonly TriageReason[]): number =>
  Math.max(
    1,
    because.reduce(
      (sum, reason) =>
        reason.kind === 'not measured' ? sum + Math.max(1, reason.places.length) : sum,
      0,
    ),
  );
