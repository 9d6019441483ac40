import type { Section, Shed } from '../shed/index.js';

/** How hard a part is to get, in pairs of shells: a rule of thumb of ours, for what the owner gives no weight of. */
const USUAL: Readonly<Record<Section, number>> = {
  shells: 1,
  thrustWashers: 1,
  ringSets: 2,
  valveSets: 3,
  pistonSets: 4,
  rods: 5,
  heads: 6,
  crankshafts: 7,
  blocks: 8,
  otherParts: 3,
};

/** How hard a part is to get, in thousandths: as the owner says, or else by the rule of thumb. */
export function hardToGet(
  { hardToGet: said = {} }: Shed,
  section: Section,
  kind: string | undefined,
): number {
  const its = kind === undefined ? undefined : said[kind];
  return Math.round(1000 * (its ?? said[section] ?? USUAL[section]));
}

/** Parts with the hardest to get first, by the rule of thumb. */
export const hardestFirst = <P extends { readonly section: Section }>(
  parts: readonly P[],
): readonly P[] => [...parts].sort((a, b) => USUAL[b.section] - USUAL[a.section]);
