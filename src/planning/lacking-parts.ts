import type { Length } from '../quantities/index.js';
import type { Known } from '../reading/index.js';
import { SECTIONS } from '../shed/internal.js';
import { assemble } from './assemble.js';
import type { Assembly } from './assembly.js';
import type { Kind } from './kinds.js';
import type { LackingPart } from './left-over-types.js';
import { sumOfTerms } from './model.js';
import type { Solved } from './one-by-one.js';
import type { Taken } from './pile.js';

/** The missing parts that an answer uses. */
export function lackingIn({ brief, draft, values }: Omit<Solved, 'found'>): readonly LackingPart[] {
  const sized = assemble(brief, draft, values).flatMap(sizedIn);
  const others = draft.lacking.flatMap(([term, { section, ready }]): readonly LackingPart[] => {
    const { of: kind, step } = ready as { readonly of?: string; readonly step?: Length };
    const count = sumOfTerms([term], values);
    if (count === 0 || step !== undefined) return [];
    return [{ section, ...(kind !== undefined && { kind }), count }];
  });
  const all = new Map<string, LackingPart>();
  for (const part of [...sized, ...others]) {
    const { count, ...what } = part;
    const key = JSON.stringify(what);
    all.set(key, { ...part, count: count + (all.get(key)?.count ?? 0) });
  }
  return [...all.values()].sort(
    (a, b) =>
      SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section) ||
      Number(a.fits === 'rods') - Number(b.fits === 'rods') ||
      (a.step ?? 0) - (b.step ?? 0),
  );
}

/** The shells, pistons and rings that one engine lacks, each by itself. */
function sizedIn(assembly: Assembly): readonly LackingPart[] {
  const { crankshaft, mainWay, rodWay, block, boreWay, pistons, rings, mains, rods } = assembly;
  const onCrankshaft = (fits: 'rods' | 'mains', way: Way, shells: readonly Part[]) =>
    lackingOf(shells, { ...way, on: crankshaft, all: [...mainWay.sizes, ...rodWay.sizes] }).map(
      (part): LackingPart => ({ ...part, section: 'shells', fits }),
    );
  return [
    ...onCrankshaft('mains', mainWay, mains),
    ...onCrankshaft(
      'rods',
      rodWay,
      rods.map(({ shells }) => shells),
    ),
    ...lackingOf([pistons, rings], {
      ...boreWay,
      on: block,
      all: [...boreWay.sizes, ...block.kind.ready.housings],
    }),
  ];
}

/** A part of an engine; one that is missing has no name. */
type Part = Taken<Kind<unknown>>;

interface Way {
  readonly step: Length;
  readonly sizes: readonly Known[];
}

/** The parts of a size that are missing, and their size, or what must be measured before it is known. */
function lackingOf(
  parts: readonly Part[],
  { step, sizes, on, all }: Way & { readonly on: Part; readonly all: readonly Known[] },
): readonly Omit<LackingPart, 'fits'>[] {
  const there = parts.filter(({ kind }) => !kind.lacking);
  const isOpen = (size: Known) => size === undefined;
  // What was measured to the end of a part and still does not count was misread, or is near a limit.
  const isUnsized = on.kind.unknown !== undefined && (sizes.some(isOpen) || !all.some(isOpen));
  const unsized = [
    ...(isUnsized ? [on] : []),
    ...there.filter(
      ({ kind }) => kind.unknown !== undefined && !('step' in (kind.ready as object)),
    ),
  ];
  const sizedBy = [...new Set(unsized.map(({ member }) => member.name))];
  const isAny = on.kind.lacking && there.length === 0;
  const size = isAny ? {} : sizedBy.length > 0 ? { sizedBy } : { step };
  return parts
    .filter(({ kind }) => kind.lacking)
    .map(({ kind: { section } }) => ({ section, ...size, count: 1 }));
}
