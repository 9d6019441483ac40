import type { FileProblem } from '../../reading/index.js';
import type { PartTest } from '../history.js';
import type { Part } from '../part.js';
import { SECTIONS } from '../sections.js';
import type { CrankshaftPart } from '../shed.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/** What parts may say of their history, as far as it could be read. */
type Said = Partial<Pick<Part, 'name' | 'faults'>> & {
  readonly tested?: readonly PartTest[] | undefined;
} & Partial<Pick<CrankshaftPart, 'runoutOnceStraight'>>;

/** Tests that contradict the faults of a part, and a promise for a crankshaft that is not bent. */
export function historyProblems(shed: SoundShed): readonly FileProblem[] {
  return SECTIONS.flatMap((section) =>
    partsIn(shed, section).flatMap(({ path, part }): readonly FileProblem[] => {
      const { name = 'it', faults = [], tested = [], runoutOnceStraight } = part as Said;
      const crack = faults.find((fault) => fault === 'cracked' || fault === 'frost-cracked');
      const isClear = tested.some((test) => test.for === 'cracks' && test.found === 'none');
      return [
        ...(crack && isClear
          ? [
              {
                path: `${path}.tested`,
                message: `says that no crack was found, but "${name}" is listed as ${crack}; keep one of the two`,
              },
            ]
          : []),
        ...(runoutOnceStraight !== undefined && !faults.includes('bent')
          ? [
              {
                path: `${path}.runoutOnceStraight`,
                message: `is given, but "${name}" is not listed as bent; give the runout of each journal instead`,
              },
            ]
          : []),
      ];
    }),
  );
}
