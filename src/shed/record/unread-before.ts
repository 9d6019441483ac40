import { isObject } from '../../reading/index.js';
import { nameOf, rawParts } from '../checks/names.js';
import { featuresOf } from '../features.js';
import { undoes } from '../read-before.js';
import type { Shed } from '../shed.js';
import { rawShed } from '../write-shed.js';
import { readWork } from './work-file.js';

/** The most places of one part that a message names. */
const MOST_NAMES = 6;

/**
 * What work undoes though the shed file never had a reading of it, part by part: a CSV that was not given may have one
 * of before the work.
 */
export function unreadBefore(shed: Shed, work: unknown): readonly string[] {
  const { value } = rawShed(shed);
  const engine = isObject(value['engine']) ? value['engine'] : {};
  const parts = rawParts(value);
  return readWork(work).parts.flatMap(({ name, done = [] }) => {
    const part = parts.find((each) => nameOf(each.part) === name);
    if (part === undefined) return [];
    const unread = [...featuresOf(part, engine).byName].flatMap(([feature, its]) => {
      const { list, field, holder } = its;
      const place = { ...(list !== undefined && { list, name: feature }), field };
      return holder[field] === undefined && undoes({ done }, place) ? [feature] : [];
    });
    if (unread.length === 0) return [];
    const more = unread.length - MOST_NAMES;
    const named = unread.slice(0, MOST_NAMES).join(', ');
    return [`${named}${more > 0 ? ` and ${more} more` : ''} of "${name}"`];
  });
}
