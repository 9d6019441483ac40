import { rawItems } from '../reading/index.js';
import { nameOf, type RawPart } from './checks/names.js';
import { MEASURED, type Measurement, PLACES } from './checks/places.js';

/** Something that is measured: a place of a part, or the part as a whole. */
export interface Feature extends Measurement {
  readonly path: string;
  readonly holder: Record<string, unknown>;
}

/** What can be measured of one part. */
export interface Features {
  readonly byName: ReadonlyMap<string, Feature>;
  /** Their names, to be told. */
  readonly names: string;
}

/** More names of features are not listed. */
const MOST_NAMES = 30;

/** Everything that can be measured of a part, by the name that a row of readings gives it. */
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
  return { byName, names: names || 'nothing that is measured' };
}

/** Fields that the rows of a file of readings fill. */
export const FILLED: ReadonlySet<string> = /* @__PURE__ */ new Set(
  [...Object.values(PLACES), ...Object.values(MEASURED)].flat().map(({ field }) => field),
);
