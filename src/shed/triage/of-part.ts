import { namedFrom } from '../../judging/internal.js';
import type { Part } from '../part.js';
import { SECTIONS } from '../sections.js';
import type { Shed } from '../shed.js';

/** Runs a calculation on one part of a shed. A refusal of `part` or `engine` names its path from the shed on. */
export function ofPart<T>(shed: Shed, part: Part, run: () => T): T {
  return namedFrom(() => ({ part: placeOf(shed, part), engine: 'shed.engine' }), run);
}

function placeOf(shed: Shed, part: Part): string {
  const lists = SECTIONS.flatMap((section) => [
    { path: `shed.${section}`, parts: shed[section] as readonly Part[] | undefined },
    { path: `shed.toBuy.${section}`, parts: shed.toBuy?.[section] as typeof shed.heads },
  ]);
  const list = lists.find(({ parts }) => parts?.includes(part));
  return `${list?.path}[${list?.parts?.indexOf(part)}]`;
}
