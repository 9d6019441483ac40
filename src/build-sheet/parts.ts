import type { Wording } from '../judging/index.js';
import { type Block, capital, caution, checks, paragraph, type Step } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { describePartOf } from '../planning/internal.js';
import { cautionsFor, describeJob } from '../shed/internal.js';

/** Everything that the engine is made of. */
export function layOutStep({ parts }: Build): Step {
  return {
    title: 'Lay out the parts',
    blocks: [
      paragraph('Tie a label with the name of this engine to each.'),
      checks(parts.map((part) => describePartOf(part))),
    ],
  };
}

/** What goes to which shop, and to what size. */
export function sendOutStep({ parts, jobs }: Build, wording: Wording): Step {
  const shops = [...new Set(jobs.map(({ shop }) => shop))];
  const warnings = parts.flatMap(({ section, name }) =>
    cautionsFor(
      section,
      name,
      jobs.filter((job) => job.part === name),
    ),
  );
  return {
    title: 'Send out',
    blocks: [
      ...(jobs.length === 0 ? [paragraph('Nothing of this engine goes to a shop.')] : []),
      ...warnings.map((warning) => caution(`${capital(warning)}.`)),
      ...shops.flatMap((shop): Block[] => [
        paragraph(`To ${shop}:`),
        checks(
          jobs
            .filter((job) => job.shop === shop)
            .map((job) => `${job.part}: ${describeJob(job, wording)}`),
        ),
      ]),
    ],
  };
}
