import { guardLayout, guardText } from '../../judging/internal.js';
import { guardSystem } from '../../quantities/internal.js';
import { shedLayout } from '../layouts.js';
import { SECTIONS, type Section } from '../sections.js';
import type { Part, Parts, Shed } from '../shed.js';
import { ofPart } from './of-part.js';
import { readyBlock } from './ready-block.js';
import { readyCrankshaft } from './ready-crankshaft.js';
import { readyHead, readyRods, readyWhole } from './ready-others.js';
import type { Disposition, Job, Triage, TriagedPart, TriageReason } from './triage-types.js';
import { type Unmatched, unmatchedIn } from './unmatched.js';
import type { Readiness } from './ways.js';

/**
 * Says of every part of a shed what is to become of it: use as it is, machine, repair, keep as a
 * spare or scrap, with what was seen and judged.
 *
 * @param shed - the parts, as `readShed` gives them
 * @returns every part, section by section, with its disposition and why
 * @throws {RebuildInputError} when the shed is not what `readShed` gives
 * @example
 * ```ts
 * const shed = readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 *   heads: [{ name: 'head A', faults: ['cracked'] }],
 * });
 * triage(shed).parts.map(({ name, disposition }) => `${name}: ${disposition}`); // ["head A: scrap"]
 * ```
 */
export function triage(shed: Shed): Triage {
  guardLayout('shed', shed, shedLayout, 'readShed');
  guardSystem('shed.units', shed.units);
  return {
    shed: guardText('shed.shed', shed.shed),
    units: shed.units,
    parts: dispositionsOf(shed),
  };
}

/** Every part of a shed with its disposition, section by section. */
export function dispositionsOf(shed: Shed): readonly TriagedPart[] {
  const unmatched = unmatchedIn(shed);
  return SECTIONS.flatMap((section) =>
    (shed[section] ?? []).map((part) =>
      ofPart(shed, part, () => triaged(shed, section, part, unmatched)),
    ),
  );
}

function triaged(shed: Shed, section: Section, part: Part, unmatched: Unmatched): TriagedPart {
  const { jobs, findings, because } = readinessOf(shed, section, part);
  const without = jobs && unmatched(section, part);
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
      ...noShop(shed, jobs ?? []),
    ],
  };
}

function dispositionOf(jobs: readonly Job[] | undefined, isUnmatched: boolean): Disposition {
  if (jobs === undefined) return 'scrap';
  if (isUnmatched) return 'spare';
  // What is ground or bored has a step; anything else is a repair.
  if (jobs.some(({ step }) => step === undefined)) return 'use after';
  return jobs.length > 0 ? 'machine' : 'use as it is';
}

/** What is done to a part at the smallest step that serves; no jobs at all if it is past use. */
function readinessOf(
  { engine, units }: Shed,
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
function noShop({ machining = [] }: Shed, jobs: readonly Job[]): readonly TriageReason[] {
  const works = [...new Set(jobs.map(({ work }) => work))];
  return works
    .filter((work) => machining.every((offer) => offer.work !== work))
    .map((work) => ({ kind: 'no shop', work }));
}

function countOf(part: Part & { readonly count?: number; readonly pairs?: number }): number {
  return part.pairs ?? part.count ?? 1;
}
