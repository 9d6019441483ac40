import { section, wrap } from '../../pages/index.js';
import { HAPPENED } from '../../reading/index.js';
import { sayCondition } from './say-owner.js';
import type { TriagedCore } from './triage-types.js';

/** The engines that are not taken apart: a section of the report, if there are any. */
export function notTakenApart(cores: readonly TriagedCore[]): readonly string[] {
  if (cores.length === 0) return [];
  return [
    section('NOT TAKEN APART', [
      ...cores.flatMap((core) => wrap(sayCore(core), 4)),
      ...wrap(UNKNOWN, 0),
    ]),
  ];
}

const UNKNOWN =
  'Nothing of these was measured, so no plan that is proven counts on them; a plan tells what to take apart and measure first.';

function sayCore({ name, condition, happened = [], holds }: TriagedCore): string {
  const state = condition ? sayCondition(condition) : 'its state is not known';
  const accidents = happened.map((what) => `it ${HAPPENED[what]}`);
  return `${name}: ${[state, ...accidents].join('; ')}; should hold: ${holds.join(', ')}`;
}
