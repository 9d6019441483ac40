import { type Given, rawItems } from '../reading/index.js';
import { nameOf, type RawPart } from './checks/names.js';
import { MEASURED, type MeasuredField, PLACES } from './checks/places.js';
import { isNumbered, unlistedIn } from './places-of.js';

/** Something to measure: a place on a part, or the part as a whole. */
export interface Feature extends MeasuredField {
  readonly path: string;
  /** The list of places it is in; absent for the part as a whole. */
  readonly list?: string;
  readonly holder: Record<string, unknown>;
  /** Lists the places of the part, if they are not listed yet. */
  readonly listed?: () => void;
}

/** Everything to measure on one part. */
export interface Features {
  readonly byName: ReadonlyMap<string, Feature>;
  /** Their names, for messages. */
  readonly names: string;
}

/** The most names of features in a message. */
const MOST_NAMES = 30;

/**
 * Everything to measure on a part, by the name a row of readings uses. Places that the part does not list have a number
 * for a name, as many as the raw engine has; without an engine they have none.
 */
export function featuresOf({ section, path, part }: RawPart, engine: Given = {}): Features {
  const holder = part as Record<string, unknown>;
  const byName = new Map<string, Feature>(
    MEASURED[section].map((measured) => [measured.field, { ...measured, path, holder }]),
  );
  for (const { list, field, holds } of PLACES[section]) {
    const isListed = part[list] !== undefined;
    const places = isListed ? rawItems(part[list]) : unlisted(list, engine);
    const listed = () => {
      if (!isListed) holder[list] = places;
    };
    places.forEach((place, i) => {
      const at = `${path}.${list}[${i}]`;
      const its = { field, holds, list, listed };
      const feature = { ...its, path: at, holder: place as Record<string, unknown> };
      const name = nameOf(place);
      if (name !== undefined) byName.set(name, feature);
    });
  }
  const names = [...byName.keys()].slice(0, MOST_NAMES).join(', ');
  return { byName, names: names || 'nothing to measure' };
}

/** The places of a part that does not list them, if the raw engine says how many there are. */
function unlisted(list: string, { cylinders, mains, rodsPerJournal = 1 }: Given): readonly Given[] {
  const counts = [cylinders, mains, rodsPerJournal].map(Number);
  if (!isNumbered(list) || counts.some((count) => !(count >= 0 && count <= MOST_PLACES))) return [];
  const [cylinderCount = 0, mainCount = 0, perJournal = 1] = counts;
  return unlistedIn(list, {
    cylinders: cylinderCount,
    mains: mainCount,
    rodsPerJournal: perJournal === 2 ? 2 : 1,
  });
}

/** No engine has more of anything. */
const MOST_PLACES = 25;

/** Fields that the rows of a CSV of readings can fill. */
export const FILLED: ReadonlySet<string> = /* @__PURE__ */ new Set(
  [...Object.values(PLACES), ...Object.values(MEASURED)].flat().map(({ field }) => field),
);
