import type { Wording } from '../judging/index.js';
import { type PageSection, section } from '../pages/index.js';
import { largestOf } from '../quantities/internal.js';
import { sayFreeReadings } from './describe-measure-first.js';
import { firstLines } from './first-lines.js';
import type { Plan } from './plan-types.js';
import {
  buyLines,
  countLines,
  engineLines,
  makeLines,
  measureLines,
  nextLines,
  testLines,
  unbuiltLines,
} from './to-do-lines.js';
import { fitting, type Line, type Topic } from './topic.js';
import { shopLines } from './work-lines.js';

/** The lines that it takes at the most. */
const MOST_LINES = 10;

/** Its topics in the order of doing; no more than it has lines, as each may need one. */
const TOPICS: readonly ((plan: Plan, wording: Wording) => Topic)[] = [
  countLines,
  unbuiltLines,
  testLines,
  firstLines,
  measureLines,
  buyLines,
  shopLines,
  makeLines,
  engineLines,
  nextLines,
];

/** A reading that costs nothing to take again comes before a test that is paid for. */
function inOrder(plan: Plan): typeof TOPICS {
  if (sayFreeReadings(plan, { units: plan.units }).length === 0) return TOPICS;
  const others = TOPICS.filter((topic) => topic !== firstLines);
  const at = others.indexOf(testLines);
  return [...others.slice(0, at), firstLines, ...others.slice(at)];
}

/** What to do, in ten lines at the most: the first thing that a plan says. */
export function whatToDo(plan: Plan, wording: Wording): PageSection {
  const topics = inOrder(plan).map((topic) => topic(plan, wording));
  return section('WHAT TO DO', inRoom(topics).map(fitting));
}

/** The lines of all topics. Those with the most lines are summed up until there is room for all, the count last. */
function inRoom(topics: readonly Topic[]): readonly Line[] {
  const told = topics.map(({ lines }) => lines);
  while (told.flat().length > MOST_LINES) {
    const most = largestOf(told.map(({ length }) => length));
    const at = Math.max(
      0,
      told.findIndex(({ length }, i) => i > 0 && length === most),
    );
    told[at] = [topics[at]?.summed ?? []];
  }
  return told.flat();
}
