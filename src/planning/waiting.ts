import type { BuildJob } from './job-types.js';
import type { PartToMeasure } from './measure-types.js';
import type { Build } from './plan-types.js';

/** A better plan that there may be: the parts that are not known in it, and its work. */
export interface Instead {
  readonly parts: readonly PartToMeasure[];
  readonly jobs: readonly Pick<BuildJob, 'part' | 'work' | 'step'>[];
}

/** Marks the work that a better plan does without, where that plan hangs on readings that are to be taken again. */
export function waiting(
  builds: readonly Build[],
  instead: readonly Instead[] = [],
): readonly Build[] {
  return builds.map((build) => ({
    ...build,
    jobs: build.jobs.map((job) => {
      const readFirst = instead
        .filter(({ jobs }) => !jobs.some((each) => isSame(each, job)))
        .flatMap(({ parts }) => parts.filter(isDoubtful).map(({ name }) => name));
      return readFirst.length === 0 ? job : { ...job, readFirst: [...new Set(readFirst)] };
    }),
  }));
}

const isDoubtful = ({ until }: PartToMeasure): boolean =>
  until === 'the odd reading is taken again';

const isSame = (one: Instead['jobs'][number], other: Instead['jobs'][number]): boolean =>
  one.part === other.part && one.work === other.work && one.step === other.step;
