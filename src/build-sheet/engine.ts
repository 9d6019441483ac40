import { assemblySettings } from '../assembly/index.js';
import {
  type Block,
  bulletList,
  checks,
  heading,
  numberedNotes,
  paragraph,
} from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { sayInterchange } from '../planning/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import type { EngineKind } from '../reading/index.js';
import { endPlayStep, ringGapStep } from './assembly.js';
import { clearanceStep, fitStep } from './dry-assembly.js';
import { torqueStep } from './fastening.js';
import { haveMadeStep } from './have-made.js';
import { measureFirstStep } from './measure-first.js';
import { measureStep } from './measuring.js';
import { layOutStep, sendOutStep } from './parts.js';
import { compressionStep, fillStep, startStep, timingStep } from './starting.js';
import { testFirstStep } from './test-first.js';

/** The pages of one engine, in the order of the work. They can be used alone: their end names who set the limits. */
export function enginePages(
  build: Build,
  engine: EngineKind,
  title: string,
  units: UnitSystem,
): readonly Block[] {
  const interchange = sayInterchange(build);
  const { wording, named } = numberedNotes({ units });
  const bores = build.cylinders.map(({ boreSize }) => boreSize);
  const settings = assemblySettings(engine.assembly ?? {}, {
    bore: {
      min: smallestOf(bores.map(({ min }) => min)),
      max: largestOf(bores.map(({ max }) => max)),
    },
    ...(engine.bores.stroke !== undefined && { stroke: engine.bores.stroke }),
  });
  const steps = [
    layOutStep(build),
    ...testFirstStep(build, wording),
    ...measureFirstStep(build, wording),
    sendOutStep(build, wording),
    measureStep(build, engine, settings, wording),
    ...haveMadeStep(build, wording),
    fitStep(build, engine, settings, wording),
    clearanceStep(build, engine, settings, wording),
    ringGapStep(build, engine, wording),
    endPlayStep(build, wording),
    torqueStep(build, settings, wording),
    timingStep(engine, settings, wording),
    fillStep(engine, settings, wording),
    startStep(build, engine, settings, wording),
    compressionStep(build, settings, wording),
  ];
  return [
    heading(1, title),
    paragraph(
      `Sizes are diameters in ${units === 'inch' ? 'inches' : 'millimetres'}, clearances on the diameter.`,
    ),
    ...(interchange === undefined ? [] : [paragraph(interchange)]),
    bulletList([{ write: 'Begun on' }, { write: 'Built by' }, { write: 'Engine number' }]),
    ...steps.flatMap((step, i) => [heading(2, `${i + 1}. ${step.title}`), ...step.blocks]),
    ...(named.length === 0
      ? []
      : [
          heading(2, 'Who set the limits'),
          bulletList(named.map((note, i) => `[${i + 1}] ${note}`)),
        ]),
    heading(2, 'Done'),
    checks([{ write: 'Finished on' }, { write: 'Hours run' }]),
  ];
}
