import { undersizeSteps } from '../../crankshaft/index.js';
import { oversizeSteps } from '../../cylinders/index.js';
import { say } from '../../judging/internal.js';
import { withStandard } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { type FileProblem, type Gaps, isLost, sameStep } from '../../reading/index.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/**
 * Finds shells, pistons and rings for a step that the engine does not have. Steps written without
 * a unit are not compared.
 */
export function stepProblems(
  shed: SoundShed,
  bare: readonly FileProblem[],
): readonly FileProblem[] {
  const { engine = {}, units } = shed;
  if (units === undefined) return [];
  const unread = new Set(bare.map(({ path }) => path));
  const under = undersizeSteps(units);
  const rods = stepsOf('engine.rodJournals', engine.rodJournals, under, unread);
  const mains = stepsOf('engine.mainJournals', engine.mainJournals, under, unread);
  const over = stepsOf('engine.bores', engine.bores, oversizeSteps(units), unread);
  const print = (step: Length) => say(step, 'length', units);
  const compare = (
    path: string,
    name: string | undefined,
    step: Length | undefined,
    known: Steps | undefined,
  ): readonly FileProblem[] => {
    if (step === undefined || known === undefined || unread.has(path)) return [];
    if (known.steps.some((each) => sameStep(each, step))) return [];
    const there = known.steps.map(print).join(', ');
    const message = `"${name ?? 'it'}" is for ${print(step)}, but the engine has ${there}; if that step exists, add it to ${known.path}`;
    return [{ path, message }];
  };
  return [
    ...partsIn(shed, 'shells').flatMap(({ path, part: { name, fits, undersize } }) =>
      compare(`${path}.undersize`, name, undersize, fits === 'mains' ? mains : rods),
    ),
    ...(['pistonSets', 'ringSets'] as const).flatMap((section) =>
      partsIn(shed, section).flatMap(({ path, part: { name, oversize } }) =>
        compare(`${path}.oversize`, name, oversize, over),
      ),
    ),
  ];
}

/** The steps that journals or bores may be machined to, and their path in the file. */
interface Steps {
  readonly path: string;
  readonly steps: readonly Length[];
}

/** The engine's own steps, or those of the trade; undefined if any of them could not be read. */
function stepsOf(
  of: string,
  stated: { readonly steps?: Gaps<Length> | undefined } | undefined,
  usual: readonly Length[],
  unread: ReadonlySet<string>,
): Steps | undefined {
  if (stated === undefined || isLost(stated, 'steps')) return undefined;
  const path = `${of}.steps`;
  const all = stated.steps ?? usual;
  const steps = all.filter((step) => step !== undefined);
  const lost = steps.length < all.length || steps.some((_, i) => unread.has(`${path}[${i}]`));
  return lost ? undefined : { path, steps: withStandard(steps) };
}
