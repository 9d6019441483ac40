import type { Wording } from '../judging/index.js';
import { type Block, capital, caution, checks, paragraph, type TaskStep } from '../pages/index.js';
import type { Build, BuildBearing } from '../planning/index.js';
import { besideOrder, describePartOf, sayHomeMade, sayWalls } from '../planning/internal.js';
import { cautionsFor, describeJob, describeTest } from '../shed/internal.js';
import { groundBy, isBored, isMadeToSuit } from './machined.js';
import { laterJobs } from './test-first.js';

/** The parts of the engine. */
export function layOutStep({ parts }: Build): TaskStep {
  return {
    title: 'Lay out the parts',
    blocks: [
      paragraph(
        'Label each part with the name of this engine. If a rod or a main housing and its cap carry no marks, mark both on the same side before you take them apart: a cap fits no other.',
      ),
      checks(parts.map((part) => describePartOf(part))),
      ...sayHomeMade({ parts }).map(caution),
    ],
  };
}

/** The work for each shop, with its sizes. */
export function sendOutStep(build: Build, wording: Wording): TaskStep {
  const { parts, tests } = build;
  const jobs = laterJobs(build);
  const shops = [...new Set(jobs.map(({ shop }) => shop))];
  const warnings = parts.flatMap(({ section, name }) =>
    cautionsFor(
      section,
      name,
      jobs.filter((job) => job.part === name),
      tests.filter((test) => test.part === name),
    ),
  );
  const order = (test: Build['tests'][number]) =>
    `${test.part}: ${describeTest(test, { section: test.section, name: test.part }, wording)}`;
  const after = tests.filter(({ when }) => when === 'again' || when === 'after').map(order);
  return {
    title: 'Send out',
    blocks: [
      ...(jobs.length === 0 ? [paragraph('No part of this engine needs a shop.')] : []),
      ...sayWalls(jobs).map((warning) => caution(`${capital(warning)}.`)),
      ...warnings.map((warning) => caution(`${capital(warning)}.`)),
      ...waits(build).map(caution),
      ...shops.flatMap((shop): Block[] => [
        paragraph(`To ${shop}:`),
        checks(
          jobs
            .filter((job) => job.shop === shop)
            .map((job) => `${job.part}: ${describeJob(job, wording)}${besideOrder(job, wording)}`),
        ),
      ]),
      ...(after.length === 0 ? [] : [paragraph('When it comes back:'), checks(after)]),
    ],
  };
}

/** What must be measured before a part goes out, and what goes out first. */
function waits(build: Build): readonly string[] {
  const { jobs } = build;
  const bored = [...new Set(jobs.filter(isBored).map(({ part }) => part))];
  const lines = jobs.flatMap((job) => {
    const ground = groundBy(job, build);
    const [made, inHand] = [
      ground.filter(isMadeToSuit),
      ground.filter((each) => !isMadeToSuit(each)),
    ];
    return [
      ...shellsOf(inHand).map(
        ({ shells, journals }) =>
          `Do not send ${job.part} out before its ${shells} are in hand and measured: the ${journals} are ground to them.`,
      ),
      ...shellsOf(made).map(
        ({ shells, journals }) =>
          `Send ${job.part} out first. Its ${shells} are made afterwards, to suit: have the ${journals} ground to their sizes, then measure them and their housings.`,
      ),
    ];
  });
  return [
    ...(bored.length === 0
      ? []
      : [
          `Do not send ${bored.join(', ')} out before its pistons are in hand and measured: the bores are finished to the pistons.`,
        ]),
    ...new Set(lines),
  ];
}

/** Shells and journals of some bearings in words, kind by kind. */
function shellsOf(bearings: readonly BuildBearing[]) {
  const kinds = new Set(bearings.map(({ kind }) => (kind === 'rods' ? 'rod' : 'main')));
  return [...kinds].map((kind) => ({ shells: `${kind} shells`, journals: `${kind} journals` }));
}
