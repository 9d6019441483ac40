import type { Part, Shed, TriagedPart } from '../shed/index.js';
import { groupsIn, SECTIONS } from '../shed/internal.js';
import { type Assembly, assemblyCost, partsTaken, rodParts } from './assembly.js';
import {
  cylindersOf,
  endPlayOf,
  guidesOf,
  type JudgedWith,
  mainBearings,
  mayStayUncrossed,
  rodBearings,
} from './build-clearances.js';
import { doubtOf, restsOn, soundOf } from './job-doubts.js';
import type { BuildJob } from './job-types.js';
import type { Kind } from './kinds.js';
import { costOf, type PricedJob } from './money.js';
import { openPointsOf } from './open-points.js';
import type { Taken } from './pile.js';
import type { Build, BuildPart } from './plan-types.js';
import { buildTests } from './testing.js';
import { wallOf } from './walls.js';

/** Describes one engine as data: its parts, clearances, work and cost. */
export function buildOf(
  assembly: Assembly,
  shed: Shed,
  judged: JudgedWith,
  currency: string | undefined,
  triaged: readonly TriagedPart[],
): Build {
  const { engine } = shed;
  const { accuracy } = judged;
  const jobs = jobsOf(assembly);
  const taken = counted(partsTaken(assembly));
  const tests = buildTests(shed, taken, jobs);
  const parts = taken.map((part) => {
    const its = tests.filter((test) => test.part === part.name);
    return {
      ...part,
      ...homeMadeOf(shed, part),
      ...openPointsOf(shed, part.section, part.name, its),
    };
  });
  const { interchange } = assembly.batch;
  const endPlay = endPlayOf(assembly, engine, accuracy);
  const guides = guidesOf(assembly, engine, accuracy);
  return {
    name: assembly.block.member.name,
    ...(interchange !== undefined && { interchange }),
    ...blockGroupsOf(shed, assembly.block.member.name),
    parts,
    bearings: [...mainBearings(assembly, engine, judged), ...rodBearings(assembly, engine, judged)],
    cylinders: cylindersOf(assembly, engine, judged),
    ...(mayStayUncrossed(assembly, engine, judged) && { mayStayUncrossed: true as const }),
    ...(endPlay && { endPlay }),
    ...(guides && { guides }),
    jobs: jobs.map(({ cost, ...job }) => ({
      ...job,
      ...doubtOf(job, triaged),
      ...restsOn(job, triaged),
      ...wallOf(shed, job),
      ...soundOf(job, triaged),
      cost: costOf(cost, currency),
    })),
    tests,
    cost: costOf(assemblyCost(assembly), currency),
  };
}

/** That a part is home-made, and what its owner notes of it: its material is known to nobody else. */
function homeMadeOf(
  shed: Shed,
  { section, name }: BuildPart,
): Pick<BuildPart, 'homeMade' | 'notes'> {
  const all: readonly Part[] = [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])];
  const part = all.find((each) => each.name === name);
  if (!part?.homeMade) return {};
  return { homeMade: true, ...(part.notes && { notes: part.notes }) };
}

/** The groups of a block, its own and those that these supersede. */
function blockGroupsOf(shed: Shed, name: string): Pick<Build, 'blockGroups'> {
  const all = [...(shed.blocks ?? []), ...(shed.toBuy?.blocks ?? [])];
  const block = all.find((each) => each.name === name);
  if (block?.interchange === undefined) return {};
  const own = block.interchange;
  const fits = groupsIn(shed)('blocks', block) ?? own;
  return { blockGroups: { own, older: fits.filter((group) => !own.includes(group)) } };
}

/** Parts with their counts, section by section. */
function counted(taken: readonly Taken<Kind<unknown>>[]): readonly BuildPart[] {
  const parts = new Map<string, BuildPart>();
  for (const { kind, member } of taken) {
    const { name, from, price } = member;
    const count = (parts.get(name)?.count ?? 0) + 1;
    const bought = price !== undefined;
    parts.set(name, {
      section: kind.section,
      name,
      ...kindOf(kind),
      ...(kind.made && { made: true as const }),
      ...(from !== undefined && { from }),
      count,
      bought,
    });
  }
  return [...parts.values()].sort(
    (a, b) => SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section),
  );
}

/** What an other part is. */
function kindOf({ section, ready }: Kind<unknown>): { readonly kind?: string } {
  return section === 'otherParts' ? { kind: (ready as { readonly of: string }).of } : {};
}

/** The work on the parts of an engine. */
export function jobsOf({
  block,
  boreWay,
  crankshaft,
  mainWay,
  rodWay,
  rods,
  head,
  valves,
}: Assembly): readonly (Omit<BuildJob, 'cost'> & { readonly cost: number })[] {
  const on = ({ kind, member }: Taken<Kind<unknown>>, jobs: readonly PricedJob[] = []) =>
    [...kind.repairs, ...jobs].map((job) => ({ ...job, part: member.name }));
  return [
    ...on(block, boreWay.jobs),
    ...on(crankshaft, [...mainWay.jobs, ...rodWay.jobs]),
    ...rodParts(rods).flatMap((set) => on(set)),
    ...(head ? on(head) : []),
    ...(valves ? on(valves) : []),
  ];
}
