import { rawItems } from '../reading/index.js';
import { nameOf, type RawPart } from './checks/names.js';
import { MEASURED, type Measurement, PLACES } from './checks/places.js';

/** Something to measure: a place on a part, or the part as a whole. */
export interface Feature extends Measurement {
  readonly path: string;
  readonly holder: Record<string, unknown>;
}

/** Everything to measure on one part. */
export interface Features {
  readonly byName: ReadonlyMap<string, Feature>;
  /** Their names, for messages. */
  readonly names: string;
}

/** The most names of features in a message. */
const MOST_NAMES = 30;

/** Everything to measure on a part, by the name a row of readings uses. */
export function featuresOf({ section, path, part }: RawPart): Features {
  const holder = part as Record<string, unknown>;
  const byName = new Map<string, Feature>(
    MEASURED[section].map((measured) => [measured.field, { ...measured, path, holder }]),
  );
  for (const { list, field, holds } of PLACES[section]) {
    rawItems(part[list]).forEach((place, i) => {
      const at = `${path}.${list}[${i}]`;
      const feature = { field, holds, path: at, holder: place as Record<string, unknown> };
      const name = nameOf(place);
      if (name !== undefined) byName.set(name, feature);
    });
  }
  const names = [...byName.keys()].slice(0, MOST_NAMES).join(', ');
  return { byName, names: names || 'nothing to measure' };
}

/** Fields that the rows of a CSV of readings can fill. */
export const FILLED: ReadonlySet<string> = /* @__PURE__ */ new Set(
  [...Object.values(PLACES), ...Object.values(MEASURED)].flat().map(({ field }) => field),
);
