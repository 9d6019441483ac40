import { type PageSection, section, wrap } from '../../pages/index.js';
import { HAPPENED } from '../../reading/index.js';
import type { TriagedCore } from './core-types.js';
import { unlessTested } from './describe-tests.js';
import { sayCondition } from './say-owner.js';
import type { TestedPart } from './test-first.js';

/** The engines that are not taken apart: a section of the report, if there are any. */
export function notTakenApart(cores: readonly TriagedCore[]): readonly PageSection[] {
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

function sayCore(core: TriagedCore): string {
  const { name, condition, happened = [], holds } = core;
  const state = condition ? sayCondition(condition) : 'its state is not known';
  const accidents = happened.map((what) => `it ${HAPPENED[what]}`);
  return `${name}: ${[state, ...accidents].join('; ')}; should hold: ${holds.join(', ')}${sayTests(core)}`;
}

/** The tests that come before anything of it is used. */
function sayTests({ name, tests }: TriagedCore): string {
  const of = (whole: string) => whole.slice(0, -` of ${name}`.length);
  const first = tests.filter(({ test }) => test.when === 'first').map((each) => of(each.name));
  const soften = tests.some(({ test }) => test.test === 'softening test');
  return [
    ...(first.length > 0 ? [`; have crack-tested first: ${first.join(', ')}`] : []),
    ...(soften ? ['; have tested for softening: the journal of the bearing that seized'] : []),
  ].join('');
}

/** The parts to test first, of engines that had an accident: whatever becomes of the engine, these must not be used untested. */
export const testedOnceApart = (cores: readonly TriagedCore[]): readonly TestedPart[] =>
  cores.flatMap(({ name, tests }) =>
    tests
      .filter(({ test }) => test.because.length > 0)
      .map((each) => ({
        ...each,
        more: `${unlessTested(each.section, each.test)}; once ${name} is apart`,
      })),
  );
