import type { RawPart } from '../checks/names.js';
import { type Feature, featuresOf } from '../features.js';
import { type Moved, notThere, type Refuse } from './change-part.js';
import type { Box, CamePart } from './work-file.js';

/** A box with its place in its file. */
export interface PlacedBox extends Box {
  readonly path: string;
}

/** The readings in the boxes of one part, as the fields that the part has in the shed file. */
export function partOfBoxes(
  part: RawPart,
  name: string,
  boxes: readonly PlacedBox[],
  refuse: Refuse,
  moved: Moved,
): CamePart {
  const { byName } = featuresOf(part);
  const whole: Record<string, unknown> = {};
  const lists: Record<string, Record<string, unknown>[]> = {};
  for (const box of boxes) {
    const feature = byName.get(box.feature);
    if (feature === undefined) {
      const message = notThere(box.feature, [...byName.keys()], `a feature of "${name}"`);
      refuse(`${box.path}.feature`, message);
      continue;
    }
    const inPart = feature.path.slice(part.path.length);
    const [, list] = /^\.(\w+)\[\d+\]$/.exec(inPart) ?? [];
    const holder = list === undefined ? whole : placeOf(lists, list, box.feature);
    const at = `${inPart}.${feature.field}`;
    add(holder, feature, box, at, refuse, moved);
  }
  return { name, fields: { ...whole, ...lists } };
}

function placeOf(
  lists: Record<string, Record<string, unknown>[]>,
  list: string,
  name: string,
): Record<string, unknown> {
  lists[list] ??= [];
  const known = lists[list].find((place) => place['name'] === name);
  if (known) return known;
  const place = { name };
  lists[list].push(place);
  return place;
}

function add(
  holder: Record<string, unknown>,
  { field, holds }: Feature,
  { path, station, angle, reading, feature }: PlacedBox,
  at: string,
  refuse: Refuse,
  moved: Moved,
): void {
  const before = holder[field];
  if (holds === 'size') {
    if (before !== undefined) {
      refuse(`${path}.reading`, `is a second reading of "${feature}"; give the mean of the two`);
    }
    holder[field] = reading;
    moved(at, `${path}.reading`);
    return;
  }
  const all = Array.isArray(before) ? before : [];
  const item = holds === 'span' ? reading : { station, angle, diameter: reading };
  holder[field] = [...all, item];
  const here = `${at}[${all.length}]`;
  if (all.length === 0) moved(at, `${path}.reading`);
  if (holds === 'span') {
    moved(here, `${path}.reading`);
    return;
  }
  moved(`${here}.diameter`, `${path}.reading`);
  moved(`${here}.station`, `${path}.station`);
  moved(`${here}.angle`, `${path}.angle`);
}
