import { didYouMean, type FileProblem } from '../../reading/index.js';
import { wordFor } from '../section-words.js';
import { SECTIONS } from '../sections.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/** Needed parts that are also named as something else. */
const HEAD_AND_VALVES = ['head', 'valve set'];

/** Kinds of other parts that have a section of their own, or that name nothing. */
export function kindProblems(shed: SoundShed): readonly FileProblem[] {
  const others = partsIn(shed, 'otherParts');
  const kinds = [...new Set(others.flatMap(({ part }) => part.kind ?? []))];
  const known = [...HEAD_AND_VALVES, ...kinds];
  const own = new Map(
    SECTIONS.filter((section) => section !== 'otherParts').map((section) => [
      wordFor(section),
      section,
    ]),
  );
  const needed = shed.engine?.alsoNeeds ?? [];
  const weighed = new Set([...SECTIONS, ...known, ...needed.flatMap((each) => each?.part ?? [])]);
  return [
    ...others.flatMap(({ path, part: { kind } }): readonly FileProblem[] => {
      const section = own.get(kind ?? '');
      if (section === undefined) return [];
      return [{ path: `${path}.kind`, message: `is "${kind}": list it under ${section}` }];
    }),
    ...needed.flatMap((each, i): readonly FileProblem[] => {
      const { part = '' } = each ?? {};
      if (part === '' || known.includes(part)) return [];
      const path = `engine.alsoNeeds[${i}]`;
      if (own.has(part)) {
        return [{ path, message: `is "${part}", which is counted anyway; leave it out` }];
      }
      const question = didYouMean(part, known);
      if (question === undefined) return [];
      const message = `is "${part}", but no other part is of that kind; ${question} If it is a kind of its own, give it a name less like that one`;
      return [{ path, message }];
    }),
    ...Object.keys(shed.hardToGet ?? {}).flatMap((key): readonly FileProblem[] => {
      if (weighed.has(key)) return [];
      const question = didYouMean(key, [...weighed]);
      const message = `is neither a section of the shed nor a kind of other part that it lists or that the engine needs${question ? `; ${question}` : ''}`;
      return [{ path: `hardToGet.${key}`, message }];
    }),
  ];
}
