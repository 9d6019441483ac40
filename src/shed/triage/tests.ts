import { type EngineKind, HITS_THE_BLOCK } from '../../reading/index.js';
import { isClear, type Testable } from '../history.js';
import type { Part } from '../part.js';
import type { Section } from '../sections.js';
import type { ValveSetPart } from '../shed.js';
import { isTest, type Work } from '../works.js';
import type { NeededTest } from './needed-test.js';
import type { Job } from './triage-types.js';
import { type Trouble, troublesOf } from './troubles.js';

/** The tests that a part needs when this work is done on it. */
export function testsFor(
  section: Section,
  part: Part & Testable & Pick<ValveSetPart, 'margin'>,
  works: readonly Work[],
  troubles: readonly Trouble[],
  { valveMargin }: EngineKind,
): readonly NeededTest[] {
  const because = accidentsOf(section, part, troubles);
  const isCrackFree = isClear(part.tested ?? [], 'cracks');
  const isWorkedOn = works.some((work) => !isTest(work));
  const first =
    !isCrackFree &&
    (section === 'crankshafts' ||
      because.length > 0 ||
      (isWorkedOn && CRACK_TESTED.includes(section)));
  const after = (test: NeededTest['test']) => ({ test, when: 'after', because: [] }) as const;
  const least = valveMargin?.min;
  return [
    ...(first ? [{ test: 'crack test', when: 'first', because } as const] : []),
    ...beforeUse(section, part, because, works),
    ...(works.includes('straighten')
      ? [
          { test: 'crack test', when: 'again', because: [] } as const,
          section === 'rods'
            ? after('check it for bend and twist')
            : ({ test: 'measure its journals', when: 'again', because: [] } as const),
        ]
      : []),
    ...(works.some((work) => MENDS.includes(work)) ? [after('pressure test')] : []),
    ...(works.includes('recut seats') ? [after('measure its seats')] : []),
    ...(works.includes('reface valves') && part.margin === undefined
      ? [{ ...after('measure its margins'), ...(least !== undefined && { least }) }]
      : []),
  ];
}

/** What heat asks for: a test of the journal of a seized bearing, and a look at a rod that only tests cleared. */
function beforeUse(
  section: Section,
  part: Part & Testable,
  because: readonly Trouble[],
  works: readonly Work[],
): readonly NeededTest[] {
  const { name, faults = [], happened = [], tested = [] } = part;
  const seized = because.filter(({ what }) => what === 'seized bearing');
  if (section === 'crankshafts' && seized.length > 0 && !isClear(tested, 'softening')) {
    return [{ test: 'softening test', when: 'before use', because: seized }];
  }
  const wasHot = faults.includes('overheated') || happened.includes('seized bearing');
  if (section !== 'rods' || !wasHot || works.includes('straighten')) return [];
  const own = because.filter((each) => each.part === name);
  return [{ test: 'check it for bend and twist', when: 'before use', because: own }];
}

/** Parts that are tested for cracks before they are worked on. */
export const CRACK_TESTED: readonly Section[] = ['blocks', 'crankshafts', 'rods', 'heads'];

/** Repairs of a cracked casting. */
export const MENDS: readonly Work[] = ['stitch', 'weld'];

function accidentsOf(section: Section, part: Part, all: readonly Trouble[]): readonly Trouble[] {
  const its = troublesOf(part, all);
  if (section === 'crankshafts' || section === 'rods') return its;
  return section === 'blocks'
    ? its.filter(({ what }) => HITS_THE_BLOCK.some((hit) => hit === what))
    : [];
}

/** The repairs of a part with the tests that a shop does before and after them, in their order. */
export function withTests(repairs: readonly Job[], tests: readonly NeededTest[]): readonly Job[] {
  const jobs = (first: boolean) =>
    tests.flatMap(({ test, when }): readonly Job[] =>
      (test === 'crack test' || test === 'pressure test') && (when === 'first') === first
        ? [{ work: test, places: [] }]
        : [],
    );
  return [...jobs(true), ...repairs, ...jobs(false)];
}
