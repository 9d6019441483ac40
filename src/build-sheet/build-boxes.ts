import type { Wording } from '../judging/index.js';
import { guardLayout } from '../judging/internal.js';
import type { DiameterReading } from '../measuring/index.js';
import type { Build, Plan } from '../planning/index.js';
import { spanNumber } from '../planning/internal.js';
import { planLayout } from '../planning/layouts.js';
import { tradeUnit } from '../quantities/index.js';
import { type StatedLimits, writeQuantity } from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { shedLayout } from '../shed/layouts.js';
import {
  type AllowedSize,
  allowedBore,
  allowedHousing,
  allowedJournal,
  based,
} from './allowed-sizes.js';
import type { CheckBox, EngineBoxes, SizeBox } from './boxes.js';
import { sizeText } from './limit-cells.js';
import { isMadeToSuit } from './machined.js';
import { partBoxes } from './part-boxes.js';
import { hasGuides } from './part-sizes.js';
import { pistonLimits, wallLimits } from './size-limits.js';

/**
 * The boxes of the build sheet as files to fill in at the bench, one for each engine of a plan. Filled in, a file goes to
 * `afterMachining`: what was measured comes into the shed file, and so the record of an engine is one file. Journals
 * and bores are to be read where they were read before. Where that is not known, at two stations and three angles.
 *
 * @param plan - what `planBuilds` gave
 * @param shed - the shed it was planned for
 * @returns a file for each engine; `JSON.stringify` it
 * @throws {RebuildInputError} when the plan is not what `planBuilds` gives, or the shed is not what `readShed` gives
 * @example
 * ```ts
 * const shed = readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * });
 * buildBoxes(await planBuilds(shed), shed).length; // 0
 * ```
 */
export function buildBoxes(plan: Plan, shed: Shed): readonly EngineBoxes[] {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  guardLayout('shed', shed, shedLayout, 'readShed');
  return plan.builds.map((build) => ({
    $schema: 'work.schema.json',
    version: 1,
    shed: plan.shed,
    engine: build.name,
    on: '',
    by: '',
    builtInto: '',
    takes: build.parts.map(({ name, count }) => ({ name, count })),
    boxes: sizesOf(build, plan, shed),
    checks: checksOf(build, plan),
  }));
}

const HOUSING_WAYS = [
  'at right angles to the joint',
  'at 45° to one side of that',
  'at 45° to the other side',
] as const;

function sizesOf(build: Build, { engine, units }: Plan, shed: Shed): readonly SizeBox[] {
  const wording: Wording = { units };
  const unit = ` ${tradeUnit('length', units).symbol}`;
  const nameIn = (section: Build['parts'][number]['section']) =>
    build.parts.find((part) => part.section === section)?.name ?? '';
  const [shaft, block, pistons] = [nameIn('crankshafts'), nameIn('blocks'), nameIn('pistonSets')];
  const cells = (
    size: Parameters<typeof spanNumber>[0],
    { limits }: Pick<AllowedSize, 'limits'>,
  ) => ({
    shouldBe: spanNumber(size, wording) + unit,
    mayBe: sizeText(limits, wording),
  });
  const all = [
    ...build.bearings.flatMap((bearing) =>
      placesRead(readingsOf(shed, shaft, bearing.journal), shed, 2).map((place) => ({
        part: shaft,
        feature: bearing.journal,
        ...place,
        ...cells(bearing.journalSize, allowedJournal(bearing, engine)),
        reading: '',
      })),
    ),
    ...build.bearings.flatMap((bearing) =>
      HOUSING_WAYS.map((at) => ({
        part: bearing.housing.part,
        feature: bearing.housing.place,
        at,
        ...cells(bearing.housingBore, allowedHousing(bearing, engine)),
        reading: '',
      })),
    ),
    ...build.bearings.flatMap((bearing) =>
      ['thinnest, at the crown', 'thickest, at the crown'].map((at) => ({
        part: bearing.shells,
        feature: 'wall',
        // Each pair that is made to suit has a wall of its own.
        at: isMadeToSuit(bearing) ? `${at}, ${bearing.journal}` : at,
        ...cells(bearing.wall, { limits: wallLimits(bearing) }),
        reading: '',
      })),
    ),
    ...build.cylinders.flatMap((cylinder) =>
      placesRead(readingsOf(shed, block, cylinder.bore), shed, 3).map((place) => ({
        part: block,
        feature: cylinder.bore,
        ...place,
        ...cells(cylinder.boreSize, allowedBore(cylinder, engine)),
        reading: '',
      })),
    ),
    ...build.cylinders.map((cylinder) => {
      const { boreSize, piston, pistonSize, finding } = cylinder;
      const limits = finding ? pistonLimits(boreSize, finding.limits) : {};
      return { part: pistons, feature: piston, ...cells(pistonSize, { limits }), reading: '' };
    }),
    ...partBoxes(build, engine, shed, wording),
  ];
  // Two rods on one journal, or two bearings with one kind of shells, ask for the same box.
  return [...new Map(all.map((box) => [keyOf(box), box])).values()];
}

const keyOf = ({ part, feature, station = '', angle = '', at = '' }: Partial<SizeBox>): string =>
  [part, feature, station, angle, at].join('\n');

function checksOf(build: Build, { engine, units }: Plan): readonly CheckBox[] {
  const { bearings, cylinders, guides, endPlay } = build;
  const wording: Wording = { units };
  const check = (what: string, limits: AllowedSize['limits'] | undefined): CheckBox => ({
    what,
    limits: limits ? sizeText(limits, wording) : 'no limit stated',
    reading: '',
  });
  const stated = (limits: StatedLimits<'length'> | undefined) => based(limits)[0]?.limits;
  return [
    ...bearings.map(({ journal, finding }) => check(`oil clearance, ${journal}`, finding.limits)),
    ...cylinders.map(({ bore, finding }) => check(`piston clearance, ${bore}`, finding?.limits)),
    ...cylinders.map(({ bore, ringGap }) => check(`top ring gap, ${bore}`, ringGap.limits)),
    ...cylinders.map(({ bore }) => check(`ring side clearance, ${bore}`, undefined)),
    ...(hasGuides(build)
      ? [check('guide clearance', guides?.finding?.limits ?? stated(engine.guideClearance))]
      : []),
    check('end play', endPlay?.finding.limits ?? stated(engine.endPlay)),
  ];
}

/** What was read at a place of a part, in the shed or to buy. */
function readingsOf(shed: Shed, part: string, place: string): readonly DiameterReading[] {
  const parts = [shed, shed.toBuy ?? {}].flatMap(({ crankshafts = [], blocks = [] }) => [
    ...crankshafts.map((each) => ({
      name: each.name,
      places: [...(each.rodJournals ?? []), ...(each.mainJournals ?? [])],
    })),
    ...blocks.map((each) => ({ name: each.name, places: [...(each.bores ?? [])] })),
  ]);
  const places = parts.find(({ name }) => name === part)?.places ?? [];
  return places.find(({ name }) => name === place)?.readings ?? [];
}

/** Where to read: where it was read before, or at so many stations, and 0, 60 and 120 degrees. */
function placesRead(readings: readonly DiameterReading[], { units }: Shed, stations: number) {
  const places = readings.map(({ station, angle }) => ({
    station: writeQuantity(station, 'length', units),
    angle: writeQuantity(angle, 'angle', units),
  }));
  if (places.length === 0) {
    return Array.from({ length: stations }, (_, i) =>
      ['0 deg', '60 deg', '120 deg'].map((angle) => ({
        station: '',
        angle,
        at: `station ${i + 1}`,
      })),
    ).flat();
  }
  return [...new Map(places.map((place) => [`${place.station} ${place.angle}`, place])).values()];
}
