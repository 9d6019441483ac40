import type { NeededTest, Part, Section, Shed, Testable } from '../shed/index.js';
import { CRACK_TESTED, notJudgedOf } from '../shed/internal.js';
import type { BuildPart } from './plan-types.js';

/** What is not known of a part of the shed or to buy, though it is used; nothing of one that is made to suit. */
export function openPointsOf(
  shed: Shed,
  section: Section,
  name: string,
  tests: readonly Pick<NeededTest, 'test'>[],
): Pick<BuildPart, 'untested' | 'notJudged'> {
  const all: readonly (Part & Testable)[] = [
    ...(shed[section] ?? []),
    ...(shed.toBuy?.[section] ?? []),
  ];
  const part = all.find((each) => each.name === name);
  if (part === undefined) return {};
  const notJudged = notJudgedOf(section, part, shed.engine, tests);
  return {
    ...(isUntested(section, part) && { untested: true as const }),
    ...(notJudged.length > 0 && { notJudged }),
  };
}

/** Whether no test of a part that cracks is listed. */
export const isUntested = (section: Section, { tested }: Testable = {}): boolean =>
  CRACK_TESTED.includes(section) && !tested?.some((test) => test.for === 'cracks');
