import { type Given, isObject, rawItems } from '../reading/index.js';
import { nameOf } from './checks/names.js';
import { undoneBy } from './record/undone.js';
import { WORKS } from './works.js';

/** What was measured: of a place in a list of a part, or of the part as a whole. */
export interface MeasuredPlace {
  readonly list?: string;
  readonly name?: string;
  readonly field: string;
}

/**
 * The last work in the history of a raw part after which a reading no longer holds; undefined if there is none, or the
 * reading is surely of later. On the day of the work itself it may have been read before it.
 */
export function workAfter(part: Given, place: MeasuredPlace, date: string): Given | undefined {
  return rawItems(part['history'])
    .filter((entry) => undoes(entry, place) && !isLater(date, entry['on']))
    .at(-1);
}

/** Whether work on a part undoes a measurement: by its kind, or because the history says that it was another before. */
export function undoes({ done, before }: Given, { list, name, field }: MeasuredPlace): boolean {
  const byWork = rawItems(done).some(({ work, places }) => {
    const known = WORKS.find((each) => each === work);
    const undone = known ? undoneBy(known) : [];
    const isOnIt = name === undefined || !Array.isArray(places) || places.includes(name);
    return isOnIt && undone.some((each) => each.list === list && each.fields.includes(field));
  });
  if (byWork || !isObject(before)) return byWork;
  if (list === undefined) return Object.hasOwn(before, field);
  return rawItems(before[list]).some((was) => nameOf(was) === name && Object.hasOwn(was, field));
}

/** Whether a date is later than that of the work, whichever day a year or a month of them stands for. */
function isLater(date: string, on: unknown): boolean {
  return (
    /^\d{4}(?:-\d\d){0,2}$/.test(date) &&
    typeof on === 'string' &&
    date > on.trim() &&
    !date.startsWith(on.trim())
  );
}

/** Says that a reading is of before some work. */
export function sayBefore({ what, on }: Given, part: string, date: string): string {
  const work = `"${what}"${on === undefined ? '' : ` of ${on}`} in the history of "${part}"`;
  return date === ''
    ? `counts as read before ${work}, because no date says that it is of after it`
    : `is dated ${date}, which is not after ${work}`;
}
