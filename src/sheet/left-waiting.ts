import { isObject, rawItems } from '../reading/index.js';

/** What stands for each list in a new sheet until it is filled in. */
export const WAITING = { rods: 'x-rods', mains: 'x-mains', cylinders: 'x-cylinders' } as const;

/** A place lies no deeper than this in a file. */
const DEEPEST = 8;

/** Fields of a table that hold something before anything is read. */
const GIVEN_BEFORE: readonly string[] = ['unit', 'angles'];

/**
 * What to say of each list of a raw sheet that was filled in under the name that nothing reads. Any other field that
 * begins with x- is the owner's.
 */
export function leftWaiting(sheet: unknown): readonly string[] {
  if (!isObject(sheet)) return [];
  return Object.entries(WAITING).flatMap(([list, waiting]) => {
    const isRead = rawItems(sheet[waiting]).some(({ journal, bore, housingBore }) =>
      [housingBore, readingsOf(journal), readingsOf(bore)].some((each) => holdsSize(each, 0)),
    );
    if (!isRead) return [];
    const cure = Object.hasOwn(sheet, list)
      ? `move them to ${list}`
      : 'take the x- from its name to have them judged';
    return [`${waiting} holds readings that nothing reads: ${cure}`];
  });
}

const readingsOf = (place: unknown): unknown => (isObject(place) ? place['readings'] : undefined);

/** Whether a number stands somewhere in it, alone or in text. */
function holdsSize(value: unknown, depth: number): boolean {
  if (typeof value === 'number') return true;
  if (typeof value === 'string') return /\d/.test(value);
  if (depth > DEEPEST) return false;
  if (Array.isArray(value)) return value.some((each) => holdsSize(each, depth + 1));
  return (
    isObject(value) &&
    Object.entries(value).some(
      ([field, each]) => !GIVEN_BEFORE.includes(field) && holdsSize(each, depth + 1),
    )
  );
}
