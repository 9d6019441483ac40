import { isSameData } from '../../reading/index.js';
import type { Core, Part } from '../part.js';
import { SECTIONS } from '../sections.js';
import type { Shed } from '../shed.js';
import type { CoreDifference, PartDifference } from './diff-types.js';
import { doneSince, fieldsThatDiffer } from './fields-that-differ.js';

/** What became of the engines that are not taken apart. A part that came and is from one was in it. */
export function coreDifferences(
  older: Shed,
  newer: Shed,
  parts: readonly PartDifference[],
): readonly CoreDifference[] {
  const [was, is] = [older.cores ?? [], newer.cores ?? []];
  const named = (cores: readonly Core[], name: string) => cores.find((core) => core.name === name);
  const outOf = (name: string) => partsCome(newer, parts).filter(({ from }) => from === name);
  return [
    ...was.flatMap(({ name }): readonly CoreDifference[] => {
      if (named(is, name)) return [];
      const out = outOf(name).map((part) => part.name);
      return [
        out.length === 0 ? { kind: 'gone', name } : { kind: 'taken apart', name, parts: out },
      ];
    }),
    ...is.flatMap((core): readonly CoreDifference[] => {
      const before = named(was, core.name);
      if (before === undefined) return [{ kind: 'come', name: core.name }];
      const out = outOf(core.name).map(({ name }) => name);
      return out.length === 0 && isSameData(before, core) ? [] : [changed(before, core, out)];
    }),
  ];
}

function partsCome(newer: Shed, parts: readonly PartDifference[]): readonly Part[] {
  return SECTIONS.flatMap((section) =>
    ((newer[section] ?? []) as readonly Part[]).filter(({ name }) =>
      parts.some(
        (part) =>
          part.kind === 'come' && !part.toBuy && part.section === section && part.name === name,
      ),
    ),
  );
}

function changed(before: Core, core: Core, parts: readonly string[]): CoreDifference {
  const { condition: was, history: _, ...old } = before;
  const { condition: now, history: __, ...rest } = core;
  return {
    kind: 'changed',
    name: core.name,
    parts,
    ...(!isSameData(was, now) && {
      condition: { ...(was && { before: was }), ...(now && { after: now }) },
    }),
    done: doneSince(before, core),
    fields: fieldsThatDiffer(old, rest),
  };
}
