import type { Happening } from '../../reading/index.js';
import { everyFault } from '../every-fault.js';
import type { Part } from '../part.js';
import { SECTIONS } from '../sections.js';
import type { Shed } from '../shed.js';

/** Something that happened to a part of the shed. */
export interface Trouble {
  /** What happened. */
  readonly what: Happening | 'spun shells';
  /** The part that says so. */
  readonly part: string;
  /** Where that part came from, if that is known. */
  readonly from?: string;
}

/** Everything that happened to the parts and cores of a shed. Shells that spun are a bearing failure too. */
export function troublesIn(shed: Shed): readonly Trouble[] {
  const parts = [shed, shed.toBuy ?? {}].flatMap((all) =>
    SECTIONS.flatMap((section): readonly Part[] => all[section] ?? []),
  );
  const cores = (shed.cores ?? []).flatMap(({ name, happened = [] }) =>
    happened.map((what): Trouble => ({ what, part: name, from: name })),
  );
  return [
    ...parts.flatMap((part) => {
      const { name, from, happened = [] } = part;
      const all = [
        ...happened,
        ...(everyFault(part).includes('spun') ? (['spun shells'] as const) : []),
      ];
      return all.map((what) => ({ what, part: name, ...(from !== undefined && { from }) }));
    }),
    ...cores,
  ];
}

/** What happened to a part, or to another one from the same donor; the part itself first. */
export function troublesOf({ name, from }: Part, troubles: readonly Trouble[]): readonly Trouble[] {
  return [
    ...troubles.filter((each) => each.part === name),
    ...troubles.filter((each) => each.part !== name && from !== undefined && each.from === from),
  ];
}
