import {
  type DiameterReading,
  type Length,
  type Limits,
  recommendedOilClearance,
  type Span,
} from 'crankwright';
import type { Build, BuildBearing, BuildCylinder } from 'crankwright/planning';
import type { Shed as AnyShed, JournalKind, Section, Work } from 'crankwright/shed';
import { spanOf } from './brute-rods.js';
import type { Parts, Shed } from './full.js';

/** A clearance as the plan states it, and as it comes out of the sizes of the parts that it names. */
export interface WorkedAgain {
  readonly what: string;
  readonly stated: Span<Length>;
  readonly worked: Span<Length>;
  /** What it must lie between, if that is limited. */
  readonly limits?: Limits<Length>;
  /** The margin that the plan states. */
  readonly margin?: Length;
}

/** Every clearance of an engine, worked out again from the parts by their names. */
export function workedAgain(given: AnyShed, build: Build): readonly WorkedAgain[] {
  const { guides, endPlay } = build;
  // Every part of it was measured.
  const shed = given as Shed;
  return [
    ...build.bearings.map((bearing) => bearingAgain(shed, build, bearing)),
    ...build.cylinders.map((cylinder) => cylinderAgain(shed, build, cylinder)),
    ...(guides ? [guidesAgain(shed, build, guides)] : []),
    ...(endPlay ? [endPlayAgain(shed, build, endPlay)] : []),
  ];
}

/** A part by its name, in the shed or on the list of what can be bought. */
export function partNamed<S extends Section>(given: AnyShed, section: S, name: string) {
  const shed = given as Shed;
  const all: readonly Parts[Section][number][] = [
    ...(shed[section] ?? []),
    ...(shed.toBuy?.[section] ?? []),
  ];
  const part = all.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no ${name} among ${section}`);
  return part as Parts[S][number];
}

/** The one part of a section that an engine takes. */
export function onlyPart<S extends Section>(shed: Shed, build: Build, section: S) {
  const [first, ...more] = build.parts.filter((part) => part.section === section);
  if (first === undefined || more.length > 0) throw new Error(`not one of ${section}`);
  return partNamed(shed, section, first.name);
}

const isDone = (build: Build, works: readonly Work[], part: string, place: string) =>
  build.jobs.some(
    (job) => works.includes(job.work) && job.part === part && job.places.includes(place),
  );

const named = <P extends { readonly name: string }>(
  all: readonly P[] | undefined,
  name: string,
) => {
  const one = all?.find((each) => each.name === name);
  if (one === undefined) throw new Error(`no ${name}`);
  return one;
};

/** The smallest and the largest reading. */
function measured(readings: readonly DiameterReading[]): Span<Length> {
  const sizes = readings.map(({ diameter }) => diameter);
  return { min: Math.min(...sizes) as Length, max: Math.max(...sizes) as Length };
}

const moved = ({ min, max }: Span<Length>, by: number) =>
  ({ min: min + by, max: max + by }) as Span<Length>;

function bearingAgain(shed: Shed, build: Build, bearing: BuildBearing): WorkedAgain {
  const { kind, undersize, housing } = bearing;
  const { engine } = shed;
  const rods = kind === 'rods';
  const sheet = (rods ? engine.rodJournals : engine.mainJournals) as JournalKind;
  const crankshaft = onlyPart(shed, build, 'crankshafts');
  const place = named(rods ? crankshaft.rodJournals : crankshaft.mainJournals, bearing.journal);
  const grind: Work = rods ? 'grind rod journals' : 'grind main journals';
  const journal = isDone(build, [grind], crankshaft.name, place.name)
    ? moved(sheet.standard, -undersize)
    : measured(place.readings);
  const housings = rods
    ? partNamed(shed, 'rods', housing.part).rods
    : partNamed(shed, 'blocks', housing.part).mainHousings;
  const bore = isDone(build, ['resize housings'], housing.part, housing.place)
    ? ((rods ? engine.rodHousing : engine.mainHousing) as Span<Length>)
    : spanOf(named(housings, housing.place).housingBore);
  const shells = partNamed(shed, 'shells', bearing.shells);
  if (shells.fits !== kind || Math.abs(shells.undersize - undersize) >= 1e-5) {
    throw new Error(`${shells.name} is not made for ${place.name}`);
  }
  const wall = spanOf(shells.wall);
  return {
    what: `oil clearance of ${place.name}`,
    stated: bearing.clearance,
    worked: {
      min: (bore.min - 2 * wall.max - journal.max) as Length,
      max: (bore.max - 2 * wall.min - journal.min) as Length,
    },
    limits: sheet.oilClearance ?? recommendedOilClearance(journal.max).limits,
    margin: bearing.finding.margin,
  };
}

function cylinderAgain(shed: Shed, build: Build, cylinder: BuildCylinder): WorkedAgain {
  const { standard, pistonClearance } = shed.engine.bores;
  const block = onlyPart(shed, build, 'blocks');
  const { name, readings, ringTravel } = named(block.bores, cylinder.bore);
  if (ringTravel !== undefined) throw new Error('random sheds have no ring travel');
  const bore = isDone(build, ['bore', 'sleeve'], block.name, name)
    ? moved(standard, cylinder.oversize)
    : measured(readings);
  const set = onlyPart(shed, build, 'pistonSets');
  const piston = spanOf(named(set.pistons, cylinder.piston).diameter);
  for (const { oversize } of [set, onlyPart(shed, build, 'ringSets')]) {
    if (Math.abs(oversize - cylinder.oversize) >= 1e-5)
      throw new Error(`${name} is of another step`);
  }
  return {
    what: `piston clearance in ${name}`,
    stated: cylinder.clearance,
    worked: { min: (bore.min - piston.max) as Length, max: (bore.max - piston.min) as Length },
    ...(pistonClearance && { limits: pistonClearance }),
    ...(cylinder.finding && { margin: cylinder.finding.margin }),
  };
}

function guidesAgain(
  shed: Shed,
  build: Build,
  { clearance, finding }: NonNullable<Build['guides']>,
): WorkedAgain {
  const { guideClearance } = shed.engine;
  const bore = spanOf(onlyPart(shed, build, 'heads').guideBore as Length);
  const stem = spanOf(onlyPart(shed, build, 'valveSets').stem as Length);
  return {
    what: 'guide clearance',
    stated: clearance,
    worked: { min: (bore.min - stem.max) as Length, max: (bore.max - stem.min) as Length },
    ...(guideClearance && { limits: guideClearance }),
    ...(finding && { margin: finding.margin }),
  };
}

function endPlayAgain(
  shed: Shed,
  build: Build,
  { washers, play, finding }: NonNullable<Build['endPlay']>,
): WorkedAgain {
  const [block, crankshaft] = [
    onlyPart(shed, build, 'blocks'),
    onlyPart(shed, build, 'crankshafts'),
  ];
  const float = (crankshaft.thrustWidth as Length) - (block.thrustWidth as Length);
  const left = washers.reduce(
    (rest, name) => rest - partNamed(shed, 'thrustWashers', name).thickness,
    float,
  ) as Length;
  return {
    what: 'end play',
    stated: { min: play, max: play },
    worked: { min: left, max: left },
    limits: shed.engine.endPlay as Limits<Length>,
    margin: finding.margin,
  };
}
