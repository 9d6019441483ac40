import type { Wording } from '../judging/index.js';
import { type Block, capital, caution, checks, paragraph, type TaskStep } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { describePartOf } from '../planning/internal.js';
import { cautionsFor, describeJob } from '../shed/internal.js';

/** The parts of the engine. */
export function layOutStep({ parts }: Build): TaskStep {
  return {
    title: 'Lay out the parts',
    blocks: [
      paragraph('Label each part with the name of this engine.'),
      checks(parts.map((part) => describePartOf(part))),
    ],
  };
}

/** The work for each shop, with its sizes. */
export function sendOutStep({ parts, jobs }: Build, wording: Wording): TaskStep {
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
      ...(jobs.length === 0 ? [paragraph('No part of this engine needs a shop.')] : []),
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
