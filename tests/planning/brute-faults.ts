import type { EngineKind } from '../../src/reading/engine-kind.js';
import type { Fault } from '../../src/shed/faults.js';
import type { PartTest } from '../../src/shed/history.js';
import type { Part } from '../../src/shed/part.js';
import { SECTIONS, type Section } from '../../src/shed/sections.js';
import type { ValveSetPart } from '../../src/shed/shed.js';
import type { Work } from '../../src/shed/works.js';
import type { JournalPlace, Shed } from './full.js';

// The rules of the shed once more, part by part, written without its table.

/** What a part may say beyond what every part says. */
interface Said extends Part {
  readonly tested?: readonly PartTest[];
  readonly mainJournals?: readonly JournalPlace[];
  readonly rodJournals?: readonly JournalPlace[];
}

const results = ({ tested = [] }: Said, of: PartTest['for']) =>
  tested.filter((test) => test.for === of).map(({ found }) => found);
const isFree = (part: Said, of: PartTest['for']) =>
  results(part, of).length > 0 && !results(part, of).includes('some');
const has = ({ faults = [] }: Part, ...any: readonly Fault[]) =>
  any.some((fault) => faults.includes(fault));

const isCracked = (part: Said) =>
  has(part, 'cracked', 'frost-cracked') || results(part, 'cracks').includes('some');
const isSoft = (part: Said) =>
  results(part, 'softening').includes('some') ||
  (has(part, 'overheated') && !(isFree(part, 'softening') && isFree(part, 'cracks')));

const isCleared = (part: Said) => isFree(part, 'softening') && isFree(part, 'cracks');

/** Whether a rod may be the one whose bearing seized: nobody has said which of its donor it was. */
export function mayHaveSeized(part: Said, history: Shed): boolean {
  const { from } = part;
  const all = [history, history.toBuy ?? {}];
  const seizedIn = (sections: readonly Section[]) =>
    all
      .flatMap((shed) => sections.flatMap((each): readonly Said[] => shed[each] ?? []))
      .some((each) => each.from === from && each.happened?.includes('seized bearing'));
  return from !== undefined && seizedIn(SECTIONS) && !seizedIn(['rods']) && !isCleared(part);
}

/** Whether nothing can be made of a part. */
export function isScrap(section: Section, part: Said, { valveMargin }: EngineKind): boolean {
  const { faults = [], happened = [] } = part;
  switch (section) {
    case 'blocks':
    case 'heads':
      return false;
    case 'crankshafts':
      return isCracked(part) || isSoft(part);
    case 'rods': {
      const suspect = has(part, 'bent', 'spun');
      const wasHot = happened.includes('seized bearing') && !isCleared(part);
      return isCracked(part) || isSoft(part) || wasHot || (suspect && !isFree(part, 'cracks'));
    }
    case 'valveSets': {
      const { margin } = part as ValveSetPart;
      const { min = -Infinity, max = Infinity } = valveMargin ?? {};
      const isOff = margin !== undefined && (margin < min - 1e-9 || margin > max + 1e-9);
      return has(part, 'cracked', 'bent') || isOff;
    }
    default:
      return faults.length > 0;
  }
}

/** A work, or `mend`, which is either stitching or welding. */
export type Repair = Work | 'mend';

/** The repairs that the faults of a part ask for, each once. */
export function repairsOf(section: Section, part: Said): ReadonlySet<Repair> {
  const casting = section === 'blocks' || section === 'heads';
  return new Set<Repair>([
    ...(casting && isCracked(part) ? (['mend'] as const) : []),
    ...(!casting && has(part, 'bent') ? (['straighten'] as const) : []),
    ...(section !== 'crankshafts' && has(part, 'spun') ? (['resize housings'] as const) : []),
    ...(section === 'heads' && has(part, 'bent') ? (['skim head'] as const) : []),
    ...(section === 'heads' && has(part, 'pitted') ? (['recut seats'] as const) : []),
    ...(section === 'valveSets' && has(part, 'pitted') ? (['reface valves'] as const) : []),
  ]);
}

/** The faults of a part that all its journals or bores must be machined for. */
export function surfaceFaults(section: 'blocks' | 'crankshafts', part: Part): readonly Fault[] {
  const surface: readonly Fault[] =
    section === 'blocks' ? ['scored', 'pitted'] : ['scored', 'pitted', 'spun'];
  return surface.filter((fault) => has(part, fault));
}

/** How often a part is tested for cracks, and how often under pressure. */
export function testsOf(
  section: 'blocks' | 'crankshafts' | 'rods' | 'heads',
  part: Said,
  isWorkedOn: boolean,
  history: Shed,
): readonly (readonly ['crack test' | 'pressure test', number])[] {
  const repairs = repairsOf(section, part);
  const because =
    section === 'crankshafts' ||
    isWorkedOn ||
    (section !== 'heads' && hadAccident(part, history, section === 'blocks'));
  const before = because && !isFree(part, 'cracks') ? 1 : 0;
  return [
    ['crack test', before + (repairs.has('straighten') ? 1 : 0)],
    ['pressure test', repairs.has('mend') ? 1 : 0],
  ];
}

/** Whether something broke in the engine a part is from; of a block, something that hits it. */
function hadAccident(part: Part, history: Shed, ofBlock: boolean): boolean {
  const all = [history, history.toBuy ?? {}].flatMap((from) =>
    SECTIONS.flatMap((section): readonly Said[] => from[section] ?? []),
  );
  return all
    .filter(({ name, from }) => name === part.name || (from !== undefined && from === part.from))
    .some((each) => {
      const { happened = [], mainJournals = [], rodJournals = [] } = each;
      if (ofBlock) return happened.includes('thrown rod') || happened.includes('broken piston');
      const spun = [each, ...mainJournals, ...rodJournals].some(({ faults = [] }) =>
        faults.includes('spun'),
      );
      return happened.length > 0 || spun;
    });
}
