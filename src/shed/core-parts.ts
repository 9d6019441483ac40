import type { NeededPart } from '../reading/index.js';
import { needsOf } from './needs.js';
import type { Core, Part } from './part.js';
import { sectionWords, wordFor } from './section-words.js';
import { SECTIONS, type Section } from './sections.js';
import type { Shed } from './shed.js';

/** A part that a core holds, or should. */
export interface CorePart {
  readonly section: Section;
  readonly part: Part;
}

/** What a core is called in the list of what it lacks: a section, or the kind of another part. */
const isLacking = ({ lacks = [] }: Core, ...words: readonly string[]): boolean =>
  lacks.some((each) => words.includes(each));

/**
 * The parts that a core holds, of which nothing was measured: one of every part that an engine needs, but for those it
 * lacks, and those that the shed lists on their own as being from it.
 */
export function partsOfCore(core: Core, shed: Shed): readonly CorePart[] {
  const { engine } = shed;
  const isListed = (section: Section, isSame: (part: never) => boolean = () => true) =>
    ((shed[section] ?? []) as readonly Part[]).some(
      (part) => part.from === core.name && isSame(part as never),
    );
  const needed = needsOf(shed);
  const has = (section: Section) =>
    !isListed(section) && !isLacking(core, ...sectionWords(section));
  const one = (section: Section, what: string, more: object = {}): CorePart => ({
    section,
    part: { ...ofCore(core), name: `${what} of ${core.name}`, ...more },
  });
  const isNeeded = (what: string) => needed.some(({ part }) => part === what);
  const shells = (['rods', 'mains'] as const).flatMap((fits) => {
    const pairs = fits === 'rods' ? engine.cylinders : engine.mains;
    const isThere = isListed('shells', (part: { readonly fits?: string }) => part.fits === fits);
    return pairs === 0 || isThere || isLacking(core, ...sectionWords('shells'))
      ? []
      : [one('shells', `${fits === 'rods' ? 'rod' : 'main'} shells`, { fits, pairs })];
  });
  const whole = (['blocks', 'crankshafts', 'rods', 'pistonSets', 'ringSets'] as const).filter(has);
  return [
    ...whole.map((section) => one(section, wordFor(section, section === 'rods' ? 2 : 1))),
    ...shells,
    ...(engine.endPlay && has('thrustWashers') ? [one('thrustWashers', 'thrust washer')] : []),
    ...(isNeeded('head') && has('heads') ? [one('heads', 'head')] : []),
    ...(isNeeded('valve set') && has('valveSets') ? [one('valveSets', 'valve set')] : []),
    ...needed.flatMap(({ part: kind, count }: NeededPart) =>
      ['head', 'valve set'].includes(kind) ||
      isLacking(core, kind) ||
      isListed('otherParts', (part: { readonly kind: string }) => part.kind === kind)
        ? []
        : [one('otherParts', kind, { kind, count })],
    ),
  ];
}

/** What every part of a core takes over from it. What happened to the core counts for all that is from it, listed or not. */
function ofCore({ name: from, interchange, condition, odds, reserved, builtInto }: Core) {
  return {
    from,
    ...(interchange && { interchange }),
    ...(condition && { condition }),
    ...(odds !== undefined && { odds }),
    ...(reserved !== undefined && { reserved }),
    ...(builtInto !== undefined && { builtInto }),
  };
}

/** A shed with the parts of its cores among the others, and the core that each of those is in, by its name. */
export interface TakenApart {
  readonly shed: Shed;
  readonly inCore: ReadonlyMap<string, Core>;
}

/** Takes the cores of a shed apart, on paper. */
export function withCoreParts(shed: Shed): TakenApart {
  const { cores = [] } = shed;
  const all = cores.flatMap((core) => partsOfCore(core, shed).map((each) => ({ ...each, core })));
  const inCore = new Map(all.map(({ part, core }) => [part.name, core]));
  if (inCore.size === 0) return { shed, inCore };
  const sections = SECTIONS.map((section) => {
    const its = all.filter((each) => each.section === section).map(({ part }) => part);
    return [section, [...((shed[section] ?? []) as readonly Part[]), ...its]];
  });
  return { shed: { ...shed, ...Object.fromEntries(sections) }, inCore };
}
