import type { Part, Shed } from '../shed/index.js';
import { SECTIONS } from '../shed/internal.js';

/** The origins of engines that ran when they were last seen, as any of their parts or the engine itself says. */
export function originsThatRan(shed: Shed): ReadonlySet<string> {
  const parts = SECTIONS.flatMap((section): readonly Part[] => shed[section] ?? []);
  return new Set([
    ...parts.flatMap(({ from, condition }) => (from && condition?.is === 'ran' ? [from] : [])),
    ...(shed.cores ?? []).flatMap(({ name, condition }) => (condition?.is === 'ran' ? [name] : [])),
  ]);
}
