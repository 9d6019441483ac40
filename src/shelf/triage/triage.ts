import { guardText } from '../../judging/guards.js';
import { guardLayout } from '../../judging/layout.js';
import { guardSystem } from '../../quantities/systems.js';
import { shelfLayout } from '../layouts.js';
import type { Part, Parts, Section, Shelf } from '../shelf.js';
import { SECTIONS } from '../shelf.js';
import { type Lonely, lonelyOn } from './lonely.js';
import { ofPart } from './of-part.js';
import { readyBlock } from './ready-block.js';
import { readyCrankshaft } from './ready-crankshaft.js';
import { readyHead, readyRods, readyWhole } from './ready-others.js';
import type { Disposition, Job, Triage, TriagedPart, TriageReason } from './triage-types.js';
import type { Readiness } from './ways.js';

/**
 * Says of every part of a shelf what is to become of it: use as it is, machine, repair, keep as a
 * spare or scrap, with what was seen and judged.
 *
 * @param shelf - the parts, as `readShelf` gives them
 * @returns every part, section by section, with its disposition and why
 * @throws {RebuildInputError} when the shelf is not one
 * @example
 * ```ts
 * const shelf = readShelf({
 *   version: 1, shelf: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 *   heads: [{ name: 'head A', faults: ['cracked'] }],
 * });
 * triage(shelf).parts.map(({ name, disposition }) => `${name}: ${disposition}`); // ["head A: scrap"]
 * ```
 */
export function triage(shelf: Shelf): Triage {
  guardLayout('shelf', shelf, shelfLayout, 'readShelf');
  guardSystem('shelf.units', shelf.units);
  return {
    shelf: guardText('shelf.shelf', shelf.shelf),
    units: shelf.units,
    parts: dispositionsOf(shelf),
  };
}

/** Every part of a shelf with its disposition, section by section. */
export function dispositionsOf(shelf: Shelf): readonly TriagedPart[] {
  const lonely = lonelyOn(shelf);
  return SECTIONS.flatMap((section) =>
    (shelf[section] ?? []).map((part) =>
      ofPart(shelf, part, () => triaged(shelf, section, part, lonely)),
    ),
  );
}

function triaged(shelf: Shelf, section: Section, part: Part, lonely: Lonely): TriagedPart {
  const { jobs, findings, because } = readinessOf(shelf, section, part);
  const without = jobs && lonely(section, part);
  const { name, from } = part;
  return {
    section,
    name,
    ...(from !== undefined && { from }),
    count: countOf(part),
    disposition: dispositionOf(jobs, without !== undefined),
    jobs: jobs ?? [],
    findings,
    because: [
      ...because,
      ...(without ? [{ kind: 'fits nothing' as const, section: without }] : []),
      ...noShop(shelf, jobs ?? []),
    ],
  };
}

function dispositionOf(jobs: readonly Job[] | undefined, isLonely: boolean): Disposition {
  if (jobs === undefined) return 'scrap';
  if (isLonely) return 'spare';
  // What is ground or bored has a step; anything else is a repair.
  if (jobs.some(({ step }) => step === undefined)) return 'use after';
  return jobs.length > 0 ? 'machine' : 'use as it is';
}

/** What is done to a part at the smallest step that serves; no jobs at all if it is past use. */
function readinessOf(
  { engine, units }: Shelf,
  section: Section,
  part: Part,
): Omit<Readiness<unknown>, 'ready'> & { readonly jobs?: readonly Job[] } {
  switch (section) {
    case 'blocks': {
      const { ready, ...why } = readyBlock(part as Parts['blocks'][number], engine, units);
      return {
        ...why,
        ...(ready && { jobs: [...ready.repairs, ...(ready.bores[0]?.jobs ?? [])] }),
      };
    }
    case 'crankshafts': {
      const { ready, ...why } = readyCrankshaft(
        part as Parts['crankshafts'][number],
        engine,
        units,
      );
      const ways = [ready?.mains[0], ready?.rods[0]].flatMap((way) => way?.jobs ?? []);
      return { ...why, ...(ready && { jobs: [...ready.repairs, ...ways] }) };
    }
    case 'rods': {
      const { ready, ...why } = readyRods(part as Parts['rods'][number], engine);
      return { ...why, ...(ready && { jobs: ready.repairs }) };
    }
    case 'heads': {
      const { ready, ...why } = readyHead(part, engine);
      return { ...why, ...(ready && { jobs: ready.repairs }) };
    }
    default: {
      const { ready, ...why } = readyWhole(section, part);
      return { ...why, ...(ready && { jobs: ready.repairs }) };
    }
  }
}

/** Work that a part needs and nobody on the list does. */
function noShop({ machining = [] }: Shelf, jobs: readonly Job[]): readonly TriageReason[] {
  const works = [...new Set(jobs.map(({ work }) => work))];
  return works
    .filter((work) => machining.every((offer) => offer.work !== work))
    .map((work) => ({ kind: 'no shop', work }));
}

function countOf(part: Part & { readonly count?: number; readonly pairs?: number }): number {
  return part.pairs ?? part.count ?? 1;
}
