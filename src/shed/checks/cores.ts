import { didYouMean, type FileProblem, isSlipOf } from '../../reading/index.js';
import { sectionWords } from '../section-words.js';
import { SECTIONS } from '../sections.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/** What is wrong with engines not taken apart, and with the names that parts know them by. */
export function coreProblems(shed: SoundShed): readonly FileProblem[] {
  return [...repeatedCores(shed), ...lackingProblems(shed), ...originProblems(shed)];
}

function repeatedCores({ cores = [] }: SoundShed): readonly FileProblem[] {
  const names = cores.map((core) => core?.name);
  return names.flatMap((name, i): readonly FileProblem[] => {
    const first = names.indexOf(name);
    if (name === undefined || first === i) return [];
    const message = `"${name}" is also the name of cores[${first}]; give each core its own name`;
    return [{ path: `cores[${i}].name`, message }];
  });
}

/** What a core lacks under a word that means nothing: the core would count as having it. */
function lackingProblems(shed: SoundShed): readonly FileProblem[] {
  const kinds = [
    ...partsIn(shed, 'otherParts').flatMap(({ part }) => part.kind ?? []),
    ...(shed.engine?.alsoNeeds ?? []).flatMap((each) => each?.part ?? []),
  ];
  const sections = SECTIONS.filter((section) => section !== 'otherParts');
  const ofSections = sections.flatMap(sectionWords);
  const known = [...new Set([...ofSections, ...kinds])];
  const listed = known.filter((kind) => !ofSections.includes(kind));
  return (shed.cores ?? []).flatMap((core, i) =>
    (core?.lacks ?? []).flatMap((word, k): readonly FileProblem[] => {
      if (word === undefined || known.includes(word)) return [];
      const question = didYouMean(word, known);
      const all = [...sections, ...listed].join(', ');
      const message = `"${word}" is no part that an engine of this shed needs; ${question ?? `known are ${all}; if an engine needs it, list it in engine.alsoNeeds`}`;
      return [{ path: `cores[${i}].lacks[${k}]`, message }];
    }),
  );
}

/** Parts that seem to come from a core, but for a slip in its name: the core would count as having them still. */
function originProblems(shed: SoundShed): readonly FileProblem[] {
  const cores = (shed.cores ?? []).flatMap((core) => core?.name ?? []);
  if (cores.length === 0) return [];
  return SECTIONS.flatMap((section) =>
    partsIn(shed, section).flatMap(({ path, part }): readonly FileProblem[] => {
      const { from } = part as { readonly from?: string };
      if (from === undefined || cores.includes(from)) return [];
      const core = cores.find((name) => isSlipOf(from, name));
      if (core === undefined) return [];
      const message = `is "${from}", which is no core; did you mean "${core}"? If it is another place, give it a name less like that one`;
      return [{ path: `${path}.from`, message }];
    }),
  );
}
