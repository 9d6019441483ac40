import { oilClearanceSpan, recommendedOilClearance } from '../bearings/index.js';
import { recommendedRingGap } from '../cylinders/index.js';
import { type BasedLimits, type Finding, judge, type Limits, type Span } from '../judging/index.js';
import { judgeSpan } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import {
  type EngineKind,
  gapOf,
  type JournalKind,
  own,
  pistonsInBores,
  type StatedLimits,
} from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { SECTIONS } from '../shed/internal.js';
import { type Assembly, assemblyCost } from './assembly.js';
import type { Kind } from './kinds.js';
import { costOf, type PricedJob } from './money.js';
import type { Taken } from './pile.js';
import type { Build, BuildBearing, BuildCylinder, BuildJob, BuildPart } from './plan-types.js';
import { buildTests } from './testing.js';

/** Describes one engine as data: its parts, clearances, work and cost. */
export function buildOf(
  assembly: Assembly,
  shed: Shed,
  least: number,
  currency: string | undefined,
): Build {
  const { engine } = shed;
  const jobs = jobsOf(assembly);
  const parts = counted(partsOf(assembly));
  const { interchange } = assembly.batch;
  const endPlay = endPlayOf(assembly, engine);
  const guides = guidesOf(assembly, engine);
  return {
    name: assembly.block.member.name,
    ...(interchange !== undefined && { interchange }),
    parts,
    bearings: [...mainBearings(assembly, engine), ...rodBearings(assembly, engine)],
    cylinders: cylindersOf(assembly, engine, least),
    ...(endPlay && { endPlay }),
    ...(guides && { guides }),
    jobs: jobs.map(({ cost, ...job }) => ({ ...job, cost: costOf(cost, currency) })),
    tests: buildTests(shed, parts, jobs),
    cost: costOf(assemblyCost(assembly), currency),
  };
}

function partsOf(assembly: Assembly): readonly Taken<Kind<unknown>>[] {
  const { block, crankshaft, rods, pistons, rings, mains, washers, head, valves } = assembly;
  return [
    block,
    crankshaft,
    ...rodParts(rods),
    pistons,
    rings,
    ...mains,
    ...rods.map(({ shells }) => shells),
    ...(washers ?? []),
    ...(head ? [head] : []),
    ...(valves ? [valves] : []),
  ];
}

/** The rods as parts; a set is one part. */
function rodParts(rods: Assembly['rods']) {
  return [...new Map(rods.map((each) => [each.rods.member, each.rods])).values()];
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
      ...(from !== undefined && { from }),
      count,
      bought,
    });
  }
  return [...parts.values()].sort(
    (a, b) => SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section),
  );
}

function jobsOf({
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

function mainBearings(
  { block, crankshaft, mainWay, mains }: Assembly,
  { mainJournals }: EngineKind,
): readonly BuildBearing[] {
  return mains.map((shells, i) =>
    bearingOf('mains', mainJournals as JournalKind, {
      journal: crankshaft.kind.ready.mainPlaces[i] ?? '',
      journalSize: mainWay.sizes[i] as Span<Length>,
      undersize: mainWay.step,
      housing: {
        part: block.member.name,
        place: block.kind.ready.housingPlaces[i] ?? '',
      },
      housingBore: block.kind.ready.housings[i] as Span<Length>,
      shells: shells.member.name,
      wall: shells.kind.ready.wall,
    }),
  );
}

function rodBearings(
  { crankshaft, rodWay, rods }: Assembly,
  { rodJournals }: EngineKind,
): readonly BuildBearing[] {
  return rods.map(({ rods: set, rod, journal, shells }) =>
    bearingOf('rods', rodJournals, {
      journal: crankshaft.kind.ready.rodPlaces[journal] ?? '',
      journalSize: rodWay.sizes[journal] as Span<Length>,
      undersize: rodWay.step,
      housing: { part: set.member.name, place: set.member.places[rod] ?? '' },
      housingBore: set.kind.ready.housings[rod] as Span<Length>,
      shells: shells.member.name,
      wall: shells.kind.ready.wall,
    }),
  );
}

function bearingOf(
  kind: BuildBearing['kind'],
  journals: JournalKind,
  bearing: Omit<BuildBearing, 'kind' | 'clearance' | 'finding'>,
): BuildBearing {
  const { housingBore, wall, journalSize } = bearing;
  const value = oilClearanceSpan({ housingBore, shellWall: wall, journal: journalSize });
  const allowed = basedOn(journals.oilClearance) ?? recommendedOilClearance(journalSize.max);
  const { limits, basis } = allowed;
  const finding = judgeSpan({
    feature: 'oil clearance',
    dimension: 'length',
    value,
    limits,
    basis,
  });
  return { kind, ...bearing, clearance: value, finding };
}

function cylindersOf(
  { block, boreWay, pistons }: Assembly,
  { bores }: EngineKind,
  least: number,
): readonly BuildCylinder[] {
  const allowed = basedOn(bores.pistonClearance);
  const { sizes } = pistons.kind.ready;
  const order = pistonsInBores(boreWay.sizes, sizes, allowed?.limits, least) ?? [];
  return boreWay.sizes.map((boreSize, i) => {
    const piston = order[i] ?? 0;
    const pistonSize = sizes[piston] as Span<Length>;
    const clearance = gapOf(boreSize, pistonSize);
    return {
      bore: block.kind.ready.places[i] ?? '',
      boreSize,
      oversize: boreWay.step,
      piston: pistons.member.places[piston] ?? '',
      pistonSize,
      clearance,
      ...(allowed && { finding: judgeGap('piston clearance', clearance, allowed) }),
      ringGap: basedOn(bores.ringGap) ?? recommendedRingGap(boreSize.min),
    };
  });
}

function endPlayOf(
  { block, crankshaft, washers }: Assembly,
  engine: EngineKind,
): Build['endPlay'] | undefined {
  const allowed = basedOn(engine.endPlay);
  const [inner, outer] = [block.kind.ready.thrustWidth, crankshaft.kind.ready.thrustWidth];
  if (!washers || !allowed || inner === undefined || outer === undefined) return undefined;
  const thickness = washers.reduce((sum, { kind }) => sum + kind.ready.thickness, 0);
  const play = (outer - inner - thickness) as Length;
  return {
    washers: washers.map(({ member }) => member.name),
    play,
    finding: judge({ feature: 'end play', dimension: 'length', value: play, ...allowed }),
  };
}

function guidesOf({ head, valves }: Assembly, engine: EngineKind): Build['guides'] | undefined {
  const { guide } = head?.kind.ready ?? {};
  const { stem } = valves?.kind.ready ?? {};
  if (guide === undefined || stem === undefined) return undefined;
  const allowed = basedOn(engine.guideClearance);
  const clearance = gapOf(guide, stem);
  return {
    clearance,
    ...(allowed && { finding: judgeGap('guide clearance', clearance, allowed) }),
  };
}

function judgeGap(
  feature: string,
  value: Span<Length>,
  allowed: BasedLimits<'length'>,
): Finding<'length'> {
  return judgeSpan({ feature, dimension: 'length', value, ...allowed });
}

function basedOn(stated: StatedLimits<'length'> | undefined): BasedLimits<'length'> | undefined {
  const { limits, basis } = own(stated);
  return limits && basis ? { limits: limits as Limits<Length>, basis } : undefined;
}
