import type { Job, NeededTest, Part, Section, Shed } from '../shed/index.js';
import { testsFor, troublesIn, withTests } from '../shed/internal.js';
import type { BuildJob, BuildTest } from './job-types.js';
import type { BuildPart } from './plan-types.js';

/** The tests that a part needs when these jobs are done on it. */
export type Testing = (
  section: Section,
  part: Part,
  jobs: readonly Pick<Job, 'work'>[],
) => readonly NeededTest[];

/** The tests that the parts of a shed need. */
export function testingOf(shed: Shed): Testing {
  const troubles = troublesIn(shed);
  return (section, part, jobs) =>
    testsFor(
      section,
      part,
      jobs.map(({ work }) => work),
      troubles,
      shed.engine,
    );
}

/** The jobs of one way for a part, with the tests that its repairs do not already ask for. */
export function withOwnTests(
  testing: Testing,
  section: Section,
  part: Part,
  repairs: readonly Job[],
  jobs: readonly Job[],
): readonly Job[] {
  const before = testing(section, part, repairs).map(({ when }) => when);
  const tests = testing(section, part, [...repairs, ...jobs]);
  return withTests(
    jobs,
    tests.filter(({ when }) => when === 'first' && !before.includes('first')),
  );
}

/** The tests that the parts of an engine need, with the work that is done on them. */
export function buildTests(
  shed: Shed,
  parts: readonly BuildPart[],
  jobs: readonly Pick<BuildJob, 'part' | 'work'>[],
): readonly BuildTest[] {
  const testing = testingOf(shed);
  return parts.flatMap(({ section, name }) => {
    const all: readonly Part[] = [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])];
    const part = all.find((each) => each.name === name);
    // What is made to suit is new, and not on the shelf.
    if (part === undefined) return [];
    const its = jobs.filter((job) => job.part === name);
    return testing(section, part, its).map((test) => ({ section, part: name, ...test }));
  });
}
