import type { Part } from '../../src/shed/part.js';
import { SECTIONS } from '../../src/shed/sections.js';
import type { Shed } from './full.js';

/** The same shed, in which every part names all groups it fits: those too that its own supersede. */
export function withAllGroups(shed: Shed): Shed {
  const all = (parts: readonly (Part & { readonly kind?: string })[], beside: typeof parts) =>
    parts.map((part): Part => {
      if (part.interchange === undefined) return part;
      const alike = [...parts, ...beside].filter(({ kind }) => kind === part.kind);
      let groups: readonly string[] = part.interchange;
      // Every round goes one step on; there are no more steps than parts.
      for (let i = 0; i <= alike.length; i++) {
        const older = alike.flatMap(({ interchange = [], supersedes = [], supersededBy = [] }) => [
          ...(interchange.some((each) => groups.includes(each)) ? supersedes : []),
          ...(supersededBy.some((each) => groups.includes(each)) ? interchange : []),
        ]);
        groups = [...new Set([...groups, ...older])];
      }
      return { ...part, interchange: groups };
    });
  const [own, bought] = [shed, shed.toBuy ?? {}];
  return {
    ...shed,
    ...Object.fromEntries(
      SECTIONS.map((section) => [section, all(own[section] ?? [], bought[section] ?? [])]),
    ),
    toBuy: Object.fromEntries(
      SECTIONS.map((section) => [section, all(bought[section] ?? [], own[section] ?? [])]),
    ),
  };
}
