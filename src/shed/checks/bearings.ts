import type { SizeOrSpan, Span } from '../../judging/index.js';
import { spanOf } from '../../judging/internal.js';
import { kindestShape } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import {
  type Check,
  checkIfGiven,
  guardClearanceLimits,
  guardHousing,
  guardJournal,
  guardMinimum,
  guardWall,
  placeIn,
} from '../../reading/index.js';
import type { HousingPlace, JournalPlace } from '../shed.js';
import { type Placed, partsIn, placed, type SoundShed } from './sound-shed.js';

/** Checks that the journals, housings and shells of one kind have sizes that could run together. */
export function bearingChecks(shed: SoundShed, kind: 'rods' | 'mains'): readonly Check[] {
  const [journals, housing] =
    kind === 'rods'
      ? (['rodJournals', 'rodHousing'] as const)
      : (['mainJournals', 'mainHousing'] as const);
  const { [journals]: maker = {}, [housing]: resized = {} } = shed.engine ?? {};
  const { standard, minimum, oilClearance } = maker;
  if (standard === undefined) return [];

  const bounds = [resized.min, resized.max].flatMap((bound) => bound ?? []);
  const housings = housingsOf(shed, kind);
  const sizes = distinct([...bounds, ...housings.flatMap(({ part }) => part.housingBore ?? [])]);
  const inHousing = (bore: SizeOrSpan<Length>) => guardHousing(spanOf(bore), standard);
  return [
    ...checkIfGiven(`engine.${journals}.minimum`, minimum, (least) =>
      guardMinimum({ standard, minimum: least }),
    ),
    ...checkIfGiven(`engine.${journals}.oilClearance`, oilClearance, (limits) =>
      guardClearanceLimits({ standard, oilClearance: limits }),
    ),
    ...bounds.flatMap((bound) => checkIfGiven(`engine.${housing}`, bound, inHousing)),
    ...partsIn(shed, 'crankshafts')
      .flatMap(({ path, part }) => placed(part[journals] ?? [], `${path}.${journals}`))
      .flatMap(({ path, part }) =>
        part === undefined ? [] : [journalCheck(path, part, standard)],
      ),
    ...housings.flatMap(({ path, part }) =>
      checkIfGiven(`${path}.housingBore`, part.housingBore, inHousing),
    ),
    ...partsIn(shed, 'shells').flatMap(({ path, part: { fits, wall, undersize = 0 as Length } }) =>
      checkIfGiven(`${path}.wall`, fits === kind ? wall : undefined, (measured) =>
        guardWall({ wall: measured, undersize }, sizes, { standard }),
      ),
    ),
  ];
}

function journalCheck(path: string, journal: JournalPlace, standard: Span<Length>): Check {
  const { name, readings = [] } = journal;
  return {
    path: (parameter) => placeIn(path, parameter, journal),
    run: () => {
      const shape = kindestShape(readings);
      if (shape) guardJournal({ name, ...shape, readings }, { standard });
    },
  };
}

function housingsOf(shed: SoundShed, kind: 'rods' | 'mains'): readonly Placed<HousingPlace>[] {
  return kind === 'rods'
    ? partsIn(shed, 'rods').flatMap(({ path, part }) => placed(part.rods ?? [], `${path}.rods`))
    : partsIn(shed, 'blocks').flatMap(({ path, part }) =>
        placed(part.mainHousings ?? [], `${path}.mainHousings`),
      );
}

/** Drops sizes within a tenth of a millimetre of another: thousands of housings become a few. */
function distinct(sizes: readonly SizeOrSpan<Length>[]): readonly SizeOrSpan<Length>[] {
  return [...new Map(sizes.map((size) => [Math.round(spanOf(size).max * 1e4), size])).values()];
}
