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
import { judgeSpan } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import {
  type Accuracy,
  certaintyOf,
  type EngineKind,
  gapOf,
  type JournalKind,
  own,
  type StatedLimits,
} from '../reading/index.js';
import type { Assembly } from './assembly.js';
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
  { crankshaft, rodWay, rods }: Assembly,
  { rodJournals, rodsPerJournal = 1 }: EngineKind,
  { accuracy, fits }: JudgedWith,
): readonly BuildBearing[] {
  const { from } = crankshaft.member;
  return rods.map(({ rods: set, rod, journal, shells }) => {
    const isOwn = from !== undefined && set.member.from === from && set.member.places.length > 1;
    const crossed = isOwn && journal !== Math.floor(rod / rodsPerJournal);

    const journalSize = rodWay.sizes[journal] as Span<Length>;
    const housingBore = set.kind.ready.housings[rod] as Span<Length>;
    return bearingOf('rods', rodJournals, accuracy, {
      journal: crankshaft.kind.ready.rodPlaces[journal] ?? '',
      journalSize,
      undersize: rodWay.step,
      housing: { part: set.member.name, place: set.member.places[rod] ?? '' },
      ...(crossed && { crossed }),
      housingBore,
      shells: shells.member.name,
      ...walls(fits.wallOf('rods', journalSize, housingBore, shells.kind), shells.kind),
    });
  });
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
