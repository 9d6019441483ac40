import type { Wording } from '../judging/index.js';
import { caution, checks, type TaskStep } from '../pages/index.js';
import type { Build, BuildJob } from '../planning/index.js';
import { describeTest } from '../shed/internal.js';

/** The tests that come before any money is spent: before buying, measuring and cutting. */
export function testFirstStep(build: Build, wording: Wording): readonly TaskStep[] {
  const tests = firstTests(build);
  if (tests.length === 0) return [];
  return [
    {
      title: 'Test before anything is bought or cut',
      blocks: [
        caution(
          'Test these before anything else. If a crack shows, stop, list the part as cracked and plan again. If a test fails in another way, list that.',
        ),
        checks(
          tests.map((test) => {
            const part = { section: test.section, name: test.part };
            const job = test.test === 'crack test' ? firstTestJob(build, test.part) : undefined;
            const by = job ? `; by ${job.shop}` : '';
            return `${test.part}: ${describeTest(test, part, wording)}${by}`;
          }),
        ),
      ],
    },
  ];
}

/** The tests of an engine that come before everything else. */
export const firstTests = ({ tests }: Build): Build['tests'] =>
  tests.filter(({ when }) => when === 'first' || when === 'before use');

/** The work of a build without its first tests, which have a step of their own. */
export function laterJobs(build: Build): readonly BuildJob[] {
  const first = firstTests(build)
    .filter(({ test }) => test === 'crack test')
    .flatMap(({ part }) => firstTestJob(build, part) ?? []);
  return build.jobs.filter((job) => !first.includes(job));
}

/** The first crack test of a part, if a shop on the list does it. */
const firstTestJob = ({ jobs }: Build, name: string): BuildJob | undefined =>
  jobs.find(({ part, work }) => part === name && work === 'crack test');
