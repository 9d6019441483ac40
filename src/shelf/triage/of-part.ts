import { namedFrom } from '../../judging/named-from.js';
import { type Part, SECTIONS, type Shelf } from '../shelf.js';

/** Works on one part of a shelf; what is refused of the `part` or the `engine` is named from the shelf on. */
export function ofPart<T>(shelf: Shelf, part: Part, run: () => T): T {
  return namedFrom(() => ({ part: placeOf(shelf, part), engine: 'shelf.engine' }), run);
}

function placeOf(shelf: Shelf, part: Part): string {
  const lists = SECTIONS.flatMap((section) => [
    { path: `shelf.${section}`, parts: shelf[section] as readonly Part[] | undefined },
    { path: `shelf.toBuy.${section}`, parts: shelf.toBuy?.[section] as typeof shelf.heads },
  ]);
  const list = lists.find(({ parts }) => parts?.includes(part));
  return `${list?.path}[${list?.parts?.indexOf(part)}]`;
}
