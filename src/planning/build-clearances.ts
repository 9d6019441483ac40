import { oilClearanceSpan, recommendedOilClearance } from '../bearings/index.js';
import { recommendedRingGap } from '../cylinders/index.js';
import {
  type BasedLimits,
  type Certainty,
  type Finding,
  judge,
  type Limits,
  type Span,
} from '../judging/index.js';
import { judgeSpan, NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import {
  type Accuracy,
  certaintyOf,
  type EngineKind,
  gapOf,
  type JournalKind,
  own,
  type StatedLimits,
} from '../reading/index.js';
import type { Assembly, RodBearing } from './assembly.js';
import type { FitTable } from './fit-table.js';
import type { Kind } from './kinds.js';
import { thicknessToMake } from './made-stock.js';
import type { Build, BuildBearing, BuildCylinder } from './plan-types.js';

/** What the engines of a plan are judged with. */
export interface JudgedWith {
  readonly accuracy: Accuracy;
  readonly fits: FitTable;
}

/** The main bearings of an engine. */
export function mainBearings(
  { block, crankshaft, mainWay, mains }: Assembly,
  { mainJournals }: EngineKind,
  { accuracy, fits }: JudgedWith,
): readonly BuildBearing[] {
  return mains.map((shells, i) => {
    const journalSize = mainWay.sizes[i] as Span<Length>;
    const housingBore = block.kind.ready.housings[i] as Span<Length>;
    return bearingOf('mains', mainJournals as JournalKind, accuracy, {
      journal: crankshaft.kind.ready.mainPlaces[i] ?? '',
      journalSize,
      undersize: mainWay.step,
      housing: {
        part: block.member.name,
        place: block.kind.ready.housingPlaces[i] ?? '',
      },
      housingBore,
      shells: shells.member.name,
      ...walls(fits.wallOf('mains', journalSize, housingBore, shells.kind), shells.kind),
    });
  });
}

/** The rod bearings of an engine. */
export function rodBearings(
  assembly: Assembly,
  engine: EngineKind,
  judged: JudgedWith,
): readonly BuildBearing[] {
  const { from } = assembly.crankshaft.member;
  return assembly.rods.map((each) => {
    const { member } = each.rods;
    const isOwn = from !== undefined && member.from === from && member.places.length > 1;
    const crossed = isOwn && each.journal !== ownJournal(each, engine);
    const bearing = rodBearing(each, assembly, engine, judged);
    return crossed ? { ...bearing, crossed } : bearing;
  });
}

/** The journal of a rod by the order of the file. */
const ownJournal = ({ rod }: RodBearing, { rodsPerJournal = 1 }: EngineKind): number =>
  Math.floor(rod / rodsPerJournal);

function rodBearing(
  { rods: set, rod, journal, shells }: RodBearing,
  { crankshaft, rodWay }: Assembly,
  { rodJournals }: EngineKind,
  { accuracy, fits }: JudgedWith,
): BuildBearing {
  const journalSize = rodWay.sizes[journal] as Span<Length>;
  const housingBore = set.kind.ready.housings[rod] as Span<Length>;
  return bearingOf('rods', rodJournals, accuracy, {
    journal: crankshaft.kind.ready.rodPlaces[journal] ?? '',
    journalSize,
    undersize: rodWay.step,
    housing: { part: set.member.name, place: set.member.places[rod] ?? '' },
    housingBore,
    shells: shells.member.name,
    ...walls(fits.wallOf('rods', journalSize, housingBore, shells.kind), shells.kind),
  });
}

/** What a micrometer tells at best, 0.0001 in, where nobody described one [m]. */
const TELLS_AT_BEST = 0.0001 * 0.0254;

/** Whether rods are crossed for less than the readings tell, and might stay on their own journals within all limits. */
export function mayStayUncrossed(
  assembly: Assembly,
  engine: EngineKind,
  judged: JudgedWith,
): boolean {
  const planned = rodBearings(assembly, engine, judged);
  if (!planned.some(({ crossed }) => crossed)) return false;
  const { rods } = assembly;
  const inOrder = rods.map((each) => {
    const journal = ownJournal(each, engine);
    const there = rods.find((other) => other.journal === journal) ?? each;
    return rodBearing({ ...each, journal, shells: there.shells }, assembly, engine, judged);
  });
  const least = (all: readonly BuildBearing[]) =>
    smallestOf(all.map(({ finding }) => finding.margin));
  const tellsTo = largestOf(inOrder.map(({ finding }) => finding.uncertainty ?? TELLS_AT_BEST));
  return (
    inOrder.every(({ finding }) => finding.verdict === 'within') &&
    least(planned) - least(inOrder) <= tellsTo + NANOMETRE
  );
}

/** The wall of shells, and whether they are made to it. */
function walls(
  wall: Span<Length> | undefined,
  { made }: Kind<unknown>,
): Pick<BuildBearing, 'wall' | 'madeTo'> {
  const known = wall as Span<Length>;
  return made ? { wall: known, madeTo: known.min } : { wall: known };
}

function bearingOf(
  kind: BuildBearing['kind'],
  journals: JournalKind,
  accuracy: Accuracy,
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
    ...certaintyOf('oil clearance', accuracy, journalSize.max),
  });
  return { kind, ...bearing, clearance: value, finding };
}

/** The cylinders of an engine. */
export function cylindersOf(
  { block, boreWay, pistons }: Assembly,
  { bores }: EngineKind,
  { accuracy, fits }: JudgedWith,
): readonly BuildCylinder[] {
  const allowed = basedOn(bores.pistonClearance);
  const { sizes } = pistons.kind.ready;
  const order = fits.pistons(boreWay.sizes, sizes)?.order ?? [];
  return boreWay.sizes.map((size, i) => {
    const boreSize = size as Span<Length>;
    const piston = order[i] ?? 0;
    const pistonSize = sizes[piston] as Span<Length>;
    const clearance = gapOf(boreSize, pistonSize);
    const certainty = certaintyOf('piston clearance', accuracy, boreSize.max);
    return {
      bore: block.kind.ready.places[i] ?? '',
      boreSize,
      oversize: boreWay.step,
      piston: pistons.member.places[piston] ?? '',
      pistonSize,
      clearance,
      ...(allowed && { finding: judgeGap('piston clearance', clearance, allowed, certainty) }),
      ringGap: basedOn(bores.ringGap) ?? recommendedRingGap(boreSize.min),
    };
  });
}

/** The end play of an engine and its washers; undefined if it is not judged. */
export function endPlayOf(
  { block, crankshaft, washers }: Assembly,
  engine: EngineKind,
  accuracy: Accuracy,
): Build['endPlay'] | undefined {
  const allowed = basedOn(engine.endPlay);
  const [inner, outer] = [block.kind.ready.thrustWidth, crankshaft.kind.ready.thrustWidth];
  if (!washers || !allowed || inner === undefined || outer === undefined) return undefined;
  const without = (outer - inner) as Length;
  const toSuit = washers.find(({ kind }) => kind.made)?.kind.ready.toSuit;
  const madeTo = toSuit && thicknessToMake(toSuit, without, allowed.limits);
  const thickness = washers.reduce(
    (sum, { kind }) => sum + (kind.ready.thickness ?? 0),
    madeTo ?? 0,
  );
  const play = (without - thickness) as Length;
  return {
    washers: washers.map(({ member }) => member.name),
    play,
    ...(madeTo !== undefined && { madeTo }),
    finding: judge({
      feature: 'end play',
      dimension: 'length',
      value: play,
      ...allowed,
      ...certaintyOf('end play by washers', accuracy),
    }),
  };
}

/** The clearance of the valve stems; undefined if it was not measured. */
export function guidesOf(
  { head, valves }: Assembly,
  engine: EngineKind,
  accuracy: Accuracy,
): Build['guides'] | undefined {
  const { guide } = head?.kind.ready ?? {};
  const { stem } = valves?.kind.ready ?? {};
  if (guide === undefined || stem === undefined) return undefined;
  const allowed = basedOn(engine.guideClearance);
  const clearance = gapOf(guide, stem);
  const certainty = certaintyOf('guide clearance', accuracy, guide.max);
  return {
    clearance,
    ...(allowed && { finding: judgeGap('guide clearance', clearance, allowed, certainty) }),
  };
}

function judgeGap(
  feature: string,
  value: Span<Length>,
  allowed: BasedLimits<'length'>,
  certainty: Certainty<'length'>,
): Finding<'length'> {
  return judgeSpan({ feature, dimension: 'length', value, ...allowed, ...certainty });
}

function basedOn(stated: StatedLimits<'length'> | undefined): BasedLimits<'length'> | undefined {
  const { limits, basis } = own(stated);
  return limits && basis ? { limits: limits as Limits<Length>, basis } : undefined;
}
