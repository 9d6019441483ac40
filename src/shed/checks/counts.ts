import { type EngineKind, type FileProblem, type Gaps, isLost } from '../../reading/index.js';
import type { Section } from '../sections.js';
import { partsIn, pricesIn, type Sound, type SoundShed } from './sound-shed.js';

/** How many places of a kind each part of a section must have. */
interface Wanted {
  readonly section: Section;
  readonly list: string;
  readonly count: number;
  /** The data of the engine that require this number. */
  readonly by: string;
}

/** Parts that have more or fewer places than the engine. */
export function countProblems(shed: SoundShed): readonly FileProblem[] {
  const { engine } = shed;
  if (engine === undefined) return [];
  const name = engine.name ?? 'the engine';
  const wrong = wantedBy(engine).flatMap(({ section, list, count, by }) =>
    partsIn(shed, section).flatMap(({ path, part }): readonly FileProblem[] => {
      const places = (part as unknown as Readonly<Record<string, Gaps<unknown> | undefined>>)[list];
      const has = places?.length ?? 0;
      const isRead = places !== undefined && !isLost(part, list);
      if (!isRead || has === count || (section === 'rods' && has === 1)) return [];
      const message = `"${part.name ?? 'it'}" has ${has} here, but "${name}" has ${by}`;
      return [{ path: `${path}.${list}`, message }];
    }),
  );
  return [...engineProblems(engine, name), ...wrong, ...mainShells(shed, name)];
}

function wantedBy(engine: Sound<EngineKind>): readonly Wanted[] {
  const { cylinders, mains, rodsPerJournal = 1 } = engine;
  const wanted: Wanted[] = [];
  if (cylinders !== undefined) {
    const by = `${cylinders} cylinders`;
    wanted.push(
      { section: 'blocks', list: 'bores', count: cylinders, by },
      { section: 'rods', list: 'rods', count: cylinders, by: `${by}; a single rod is a part too` },
      { section: 'pistonSets', list: 'pistons', count: cylinders, by },
    );
    const count = cylinders / rodsPerJournal;
    const each = rodsPerJournal === 1 ? by : `${by}, with ${rodsPerJournal} rods on each journal`;
    if (Number.isInteger(count) && !isLost(engine, 'rodsPerJournal')) {
      wanted.push({ section: 'crankshafts', list: 'rodJournals', count, by: each });
    }
  }
  if (mains !== undefined) {
    const by = `${mains} mains`;
    wanted.push(
      { section: 'blocks', list: 'mainHousings', count: mains, by },
      { section: 'crankshafts', list: 'mainJournals', count: mains, by },
    );
  }
  return wanted;
}

/** Contradictions in the data of the engine itself. */
function engineProblems(engine: Sound<EngineKind>, name: string): readonly FileProblem[] {
  const { cylinders = 0, mains, rodsPerJournal = 1 } = engine;
  const problems: FileProblem[] = [];
  const refuse = (field: string, message: string) =>
    problems.push({ path: `engine.${field}`, message });
  if (cylinders % rodsPerJournal !== 0) {
    refuse('rodsPerJournal', `"${name}" has ${cylinders} cylinders, which do not make pairs`);
  }
  if (mains !== undefined && mains > 0 && !Object.hasOwn(engine, 'mainJournals')) {
    refuse('mainJournals', `is missing: "${name}" has ${mains} mains`);
  }
  for (const field of ['mainJournals', 'mainHousing'] as const) {
    if (mains === 0 && engine[field] !== undefined) {
      refuse(field, `is given, but "${name}" has 0 mains`);
    }
  }
  return problems;
}

/** Shells for mains of an engine without main shells. */
function mainShells(shed: SoundShed, name: string): readonly FileProblem[] {
  if (shed.engine?.mains !== 0) return [];
  return partsIn(shed, 'shells').flatMap(({ path, part }) => {
    if (part.fits !== 'mains') return [];
    const message = `"${part.name ?? 'it'}" is for mains, but "${name}" has 0 mains with shells`;
    return [{ path: `${path}.fits`, message }];
  });
}

/** Prices in a currency other than the first one. */
export function currencyProblems(shed: SoundShed): readonly FileProblem[] {
  const [first, ...others] = pricesIn(shed);
  return others.flatMap(({ path, part: { currency } }) => {
    if (first === undefined || currency === first.part.currency) return [];
    const message = `is in ${currency}, but ${first.path} is in ${first.part.currency}; give all prices in one currency`;
    return [{ path, message }];
  });
}
