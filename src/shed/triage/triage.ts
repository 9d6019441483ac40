import { guardLayout, guardText } from '../../judging/internal.js';
import { guardSystem } from '../../quantities/internal.js';
import { guardKind } from '../../reading/index.js';
import { partsOfCore } from '../core-parts.js';
import { howShedWasRead } from '../how-read.js';
import { shedLayout } from '../layouts.js';
import type { Core, Part } from '../part.js';
import { SECTIONS, type Section } from '../sections.js';
import type { Parts, Shed } from '../shed.js';
import type { TriagedCore } from './core-types.js';
import { notJudgedOf } from './not-judged.js';
import { ofPart } from './of-part.js';
import { readyBlock } from './ready-block.js';
import { readyCrankshaft } from './ready-crankshaft.js';
import { readyHead, readyRods, readyValves, readyWhole } from './ready-others.js';
import { testsFor } from './tests.js';
import type { Disposition, Job, Triage, TriagedPart, TriageReason } from './triage-types.js';
import { type Trouble, troublesIn } from './troubles.js';
import { type Unmatched, unmatchedIn } from './unmatched.js';
import type { Readiness } from './ways.js';

/**
 * Decides what to do with every part of a shed: use as it is, machine, repair, keep as a spare, or
 * scrap. Each decision has its reasons. What was not measured is not judged.
 *
 * @param shed - the parts, as `readShed` gives them
 * @returns every part, section by section, with its disposition and the reasons
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
 *   pistonSets: [{
 *     name: 'pistons A', faults: ['cracked'], oversize: 'standard',
 *     pistons: [{ name: 'one', diameter: '2.9968 in' }, { name: 'two', diameter: '2.9967 in' }],
 *   }],
 * });
 * triage(shed).parts.map(({ name, disposition }) => `${name}: ${disposition}`); // ["pistons A: scrap"]
 * ```
 */
export function triage(shed: Shed): Triage {
  guardKind('shed', shed);
  guardLayout('shed', shed, shedLayout, 'readShed');
  guardSystem('shed.units', shed.units);
  return {
    shed: guardText('shed.shed', shed.shed),
    units: shed.units,
    parts: dispositionsOf(shed),
    cores: (shed.cores ?? []).map((core) => triagedCore(core, shed)),
    howRead: howShedWasRead(shed),
  };
}

function triagedCore(core: Core, shed: Shed): TriagedCore {
  const { name, condition, happened } = core;
  const parts = partsOfCore(core, shed);
  const troubles = troublesIn(shed);
  return {
    name,
    ...(condition && { condition }),
    ...(happened && { happened }),
    holds: parts.map(({ part }) => part.name.slice(0, -` of ${name}`.length)),
    tests: parts.flatMap(({ section, part }) =>
      testsFor(section, part, [], troubles, shed.engine).map((test) => ({
        section,
        name: part.name,
        test,
      })),
    ),
  };
}

/** Every part of a shed with its disposition, section by section. */
export function dispositionsOf(shed: Shed): readonly TriagedPart[] {
  const unmatched = unmatchedIn(shed);
  const troubles = troublesIn(shed);
  return SECTIONS.flatMap((section) =>
    (shed[section] ?? []).map((part) =>
      ofPart(shed, part, () => triaged(shed, section, part, unmatched, troubles)),
    ),
  );
}

function triaged(
  shed: Shed,
  section: Section,
  part: Part,
  unmatched: Unmatched,
  troubles: readonly Trouble[],
): TriagedPart {
  const { jobs, aside, findings, because } = readinessOf(shed, section, part);
  const without = jobs && unmatched(section, part);
  const { name, from, kind, condition, notes } = part as Part & { readonly kind?: string };
  const works = jobs?.map(({ work }) => work);
  const tests = works ? testsFor(section, part, works, troubles, shed.engine) : [];
  return {
    section,
    ...(kind !== undefined && { kind }),
    name,
    ...(from !== undefined && { from }),
    ...(condition && { condition }),
    ...(notes && { notes }),
    ...(part.homeMade && { homeMade: true as const }),
    count: countOf(part),
    disposition: dispositionOf(jobs, aside, without !== undefined),
    jobs: jobs ?? [],
    tests,
    findings,
    because: [
      ...because,
      ...(without ? [{ kind: 'fits nothing' as const, section: without }] : []),
      ...noShop(shed, jobs ?? []),
    ],
    notJudged: notJudgedOf(section, part, shed.engine, tests),
  };
}

function dispositionOf(
  jobs: readonly Job[] | undefined,
  aside: Readiness<unknown>['aside'],
  isUnmatched: boolean,
): Disposition {
  if (jobs === undefined) return 'scrap';
  if (aside) return aside;
  if (isUnmatched) return 'spare';
  // Grinding and boring have a step; other work is a repair.
  if (jobs.some(({ step }) => step === undefined)) return 'use after';
  return jobs.length > 0 ? 'machine' : 'use as it is';
}

/** What can be done with a part. */
interface Worked extends Pick<Readiness<unknown>, 'aside' | 'findings' | 'because'> {
  /** The work at the smallest step that serves; absent if it is scrap. */
  readonly jobs?: readonly Job[];
}

function readinessOf(shed: Shed, section: Section, part: Part): Worked {
  switch (section) {
    case 'blocks':
      return worked(readyBlock(part as Parts['blocks'][number], shed), ({ repairs, bores }) => [
        ...repairs,
        ...(bores[0]?.jobs ?? []),
      ]);
    case 'crankshafts':
      return worked(
        readyCrankshaft(part as Parts['crankshafts'][number], shed),
        ({ repairs, mains, rods }) => [
          ...repairs,
          ...[mains[0], rods[0]].flatMap((way) => way?.jobs ?? []),
        ],
      );
    case 'rods':
      return worked(readyRods(part as Parts['rods'][number], shed), repairsOf);
    case 'heads':
      return worked(readyHead(part, shed), repairsOf);
    case 'valveSets':
      return worked(readyValves(part, shed), repairsOf);
    default:
      return worked(readyWhole(section, part, shed), repairsOf);
  }
}

const repairsOf = ({ repairs }: { readonly repairs: readonly Job[] }) => repairs;

function worked<R extends { readonly repairs: readonly Job[] }>(
  { ready, atBest, ...why }: Readiness<R>,
  jobsOf: (ready: R) => readonly Job[],
): Worked {
  if (ready) return { ...why, jobs: jobsOf(ready) };
  // What would be machined after an uncertain repair is not an order yet.
  return atBest ? { ...why, jobs: atBest.repairs } : why;
}

/** Work that a part needs and no shop on the list offers. */
function noShop({ machining = [] }: Shed, jobs: readonly Job[]): readonly TriageReason[] {
  const works = [...new Set(jobs.map(({ work }) => work))];
  return works
    .filter((work) => machining.every((offer) => offer.work !== work))
    .map((work) => ({ kind: 'no shop', work }));
}

function countOf(part: Part & { readonly count?: number; readonly pairs?: number }): number {
  return part.pairs ?? part.count ?? 1;
}
