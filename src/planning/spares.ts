import { clearanceLeft } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import { judgeSpan, spanOf } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import {
  type Accuracy,
  at20C,
  certaintyOf,
  gapOf,
  pistonsInBores,
  sameStep,
} from '../reading/index.js';
import type { Part, Parts, Section, Shed } from '../shed/index.js';
import { groupsIn } from '../shed/internal.js';
import type { Judged } from './clearances.js';
import { isNear } from './is-near.js';
import type { LeftOver } from './left-over-types.js';
import type { Build } from './plan-types.js';

/** A clearance, and what lies spare in the shed. */
export interface Wanting {
  readonly shed: Shed;
  readonly build: Build;
  readonly one: Judged;
  readonly leftOver: readonly LeftOver[];
  readonly accuracy: Accuracy;
}

/**
 * The spare, without faults, that would bring a clearance clear of its limits: other shells, pistons, washer or
 * valves. What would bring another clearance near its limits does not count.
 */
export function spareFor(wanting: Wanting): string | undefined {
  switch (wanting.one.of) {
    case 'rods':
    case 'mains':
      return shellsInstead(wanting);
    case 'cylinder':
      return pistonsInstead(wanting);
    case 'guides':
      return valvesInstead(wanting);
    case 'end play':
      return washerInstead(wanting);
  }
}

/** The spares of a section that fit an engine. */
function sparesOf<S extends Section>(
  { shed, build, leftOver }: Wanting,
  section: S,
): readonly Parts[S][number][] {
  const names = leftOver
    .filter((left) => left.section === section && left.why === 'spare' && !left.faults)
    .map(({ name }) => name);
  const groupsOf = groupsIn(shed);
  const there = build.parts.map(({ name }) => name);
  const fits = (part: Part) => {
    const groups = groupsOf(section, part);
    return (
      names.includes(part.name) &&
      (groups === undefined || groups.includes(build.interchange ?? '')) &&
      (part.onlyWith?.some((mate) => there.includes(mate)) ?? true)
    );
  };
  return ((shed[section] ?? []) as readonly Parts[S][number][]).filter(fits);
}

/** Whether another clearance in the place of one would be clear of its limits. */
function isClear({ one, accuracy }: Wanting, clearance: Span<Length>, ofSize: number): boolean {
  const { feature, dimension, limits, basis } = one.finding;
  const certainty = certaintyOf(one.feature, accuracy, ofSize);
  const finding = judgeSpan({
    feature,
    dimension,
    value: clearance,
    limits,
    basis,
    ...certainty,
  });
  return finding.verdict === 'within' && !isNear({ clearance, finding });
}

function shellsInstead(wanting: Wanting): string | undefined {
  const { build, one } = wanting;
  return sparesOf(wanting, 'shells').find(({ fits, undersize, wall }) =>
    build.bearings.some(
      ({ kind, journal, journalSize, housingBore, undersize: step }) =>
        kind === one.of &&
        journal === one.place &&
        fits === kind &&
        undersize !== undefined &&
        wall !== undefined &&
        sameStep(undersize, step) &&
        isClear(wanting, clearanceLeft(housingBore, spanOf(wall), journalSize), journalSize.max),
    ),
  )?.name;
}

function pistonsInstead(wanting: Wanting): string | undefined {
  const { build, one, accuracy } = wanting;
  const bores = build.cylinders.map(({ boreSize }) => boreSize);
  const step = build.cylinders[0]?.oversize ?? (0 as Length);
  return sparesOf(wanting, 'pistonSets').find(({ oversize, pistons = [] }) => {
    if (oversize === undefined || !sameStep(oversize, step)) return false;
    const sizes = pistons.flatMap(({ diameter }) =>
      diameter === undefined ? [] : [spanOf(at20C(diameter, 'pistons', accuracy))],
    );
    const order = pistonsInBores(bores, sizes, one.finding.limits, -Infinity);
    return order?.every((piston, i) => {
      const bore = bores[i] as Span<Length>;
      return isClear(wanting, gapOf(bore, sizes[piston] as Span<Length>), bore.max);
    });
  })?.name;
}

function valvesInstead(wanting: Wanting): string | undefined {
  const { shed, build } = wanting;
  const head = build.parts.find(({ section }) => section === 'heads')?.name;
  const heads = [...(shed.heads ?? []), ...(shed.toBuy?.heads ?? [])];
  const guide = heads.find(({ name }) => name === head)?.guideBore;
  if (guide === undefined) return undefined;
  const bore = spanOf(guide);
  return sparesOf(wanting, 'valveSets').find(
    ({ stem }) => stem !== undefined && isClear(wanting, gapOf(bore, spanOf(stem)), bore.max),
  )?.name;
}

/** A washer in the place of one of the stack. */
function washerInstead(wanting: Wanting): string | undefined {
  const { shed, build } = wanting;
  const { play = 0, washers = [] } = build.endPlay ?? {};
  const all = [...(shed.thrustWashers ?? []), ...(shed.toBuy?.thrustWashers ?? [])];
  const out = all.filter(({ name }) => washers.includes(name));
  return sparesOf(wanting, 'thrustWashers').find(({ thickness }) =>
    out.some((washer) => {
      if (washer.thickness === undefined || thickness === undefined) return false;
      const left = (play + washer.thickness - thickness) as Length;
      return isClear(wanting, { min: left, max: left }, 0);
    }),
  )?.name;
}
