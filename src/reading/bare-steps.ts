import type { FileProblem } from './file-problem.js';
import { isObject } from './given.js';

/** An undersize or oversize from the raw file, and its path. */
interface PlacedStep {
  readonly path: string;
  readonly step: unknown;
}

/** Undersizes and oversizes without a unit on a metric engine: they cannot be thou. */
export function bareSteps(units: unknown, steps: readonly PlacedStep[]): readonly FileProblem[] {
  if (units !== 'metric') return [];
  return steps.flatMap(({ path, step }) => {
    const way = typeof step === 'string' ? /^\s*\d+\s*(under|over)/i.exec(step)?.[1] : undefined;
    if (way === undefined) return [];
    const example = `0.25 mm ${way.toLowerCase()}`;
    const message = `"${step}" has no unit, but this engine is metric; write it in mm, e.g. "${example}"`;
    return [{ path, message }];
  });
}

/** The `steps` of an object, each with its path. */
export function stepsIn(of: unknown, path: string): readonly PlacedStep[] {
  const steps: unknown = isObject(of) ? of['steps'] : undefined;
  if (!Array.isArray(steps)) return [];
  return steps.map((step: unknown, i) => ({ path: `${path}.steps[${i}]`, step }));
}
