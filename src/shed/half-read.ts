import { isObject } from '../reading/index.js';

/**
 * Whether readings of a journal or bore in a shed file, valid or not, lack a second station or a second angle: what is
 * still to read may then come from a CSV.
 */
export function isHalfRead(readings: unknown): readings is readonly unknown[] {
  if (!Array.isArray(readings)) return false;
  const all = readings.filter(isObject);
  const isOne = (field: string) => new Set(all.map((each) => String(each[field]).trim())).size < 2;
  return isOne('station') || isOne('angle');
}

/**
 * Which readings a CSV may still give of a place, beside those that stand in the shed file itself. Readings of before a
 * regrind in one file and those of after it in the other are not one journal.
 */
export function mayStillRead(inFile: unknown): (station: string, angle: string) => boolean {
  if (!isHalfRead(inFile)) return () => !isObject(inFile) && !Array.isArray(inFile);
  const taken = new Set(
    inFile.filter(isObject).map(({ station, angle }) => placeOf(station, angle)),
  );
  return (station, angle) => !taken.has(placeOf(station, angle));
}

/** A place on a part as it is written, but for blanks around it. */
const placeOf = (...place: readonly unknown[]): string =>
  JSON.stringify(place.map((each) => (typeof each === 'string' ? each.trim() : each)));
