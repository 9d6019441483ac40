import {
  type AssemblySettings,
  type CompressionSetting,
  describeDipper,
  describeSpaces,
} from '../assembly/index.js';
import { nameUndersize } from '../crankshaft/internal.js';
import { nameOversize } from '../cylinders/internal.js';
import type { Wording } from '../judging/index.js';
import {
  type Block,
  blank,
  bulletList,
  caution,
  checks,
  type Entry,
  paragraph,
  type TaskStep,
  table,
} from '../pages/index.js';
import type { Build, BuildBearing, BuildCylinder } from '../planning/index.js';
import { sayCrossed, spanNumber } from '../planning/internal.js';
import type { EngineKind } from '../reading/index.js';
import { based } from './allowed-sizes.js';
import { lashByStem } from './lash.js';
import { limitCells, NOT_JUDGED, NOT_STATED } from './limit-cells.js';
import { hasGuides } from './part-sizes.js';

/** Which shells, caps and pistons go where. */
export function fitStep(
  build: Build,
  { lubrication }: EngineKind,
  settings: AssemblySettings,
  wording: Wording,
): TaskStep {
  const { bearings, cylinders, parts } = build;
  const crossed = sayCrossed(build);
  const pistons = parts.find(({ section }) => section === 'pistonSets')?.name ?? 'the pistons';
  const isSplash = lubrication === 'splash';
  const bearing = ({ kind, journal, housing, shells, undersize }: BuildBearing) => {
    const dipper =
      isSplash && kind === 'rods' ? ', its dipper facing the way it moves at the bottom' : '';
    return `${journal}: ${housing.part}, ${housing.place}, with ${shells} (${nameUndersize(undersize, wording)}) and its own cap, mark to mark${dipper}`;
  };
  return {
    title: 'Assemble dry',
    blocks: [
      caution(
        'Every cap goes on its own rod or housing, marks together on the same side: a swapped or turned cap makes a bore that is not round, and the bearing seizes.',
      ),
      paragraph(
        'Wipe housings and the backs of the shells clean and dry. Each half must spring into its place, its tang in the notch and its oil hole over that of the housing, and stand a little proud at the joint: that is what grips it.',
      ),
      ...(crossed === '' ? [] : [paragraph(crossed)]),
      ...(settings.dipper ? describeDipper(settings.dipper, wording).dangers.map(caution) : []),
      checks([
        ...(parts.some(({ section }) => section === 'heads' || section === 'valveSets')
          ? ['Valves ground in and tested for leaks, and every trace of the paste washed out']
          : []),
        ...(isSplash
          ? [
              { write: 'Way the crankshaft turns, seen from the flywheel' },
              'Oil hole of every dipper, cap and rod open right through',
            ]
          : []),
        ...bearings.map(bearing),
        ...cylinders.map(
          ({ bore, piston, oversize }) =>
            `${bore}: ${piston} of ${pistons} (${nameOversize(oversize, wording)})`,
        ),
        "Pistons and rods the way round that the maker's manual shows, pin clips seated in their grooves",
        ...lashByStem(settings, wording),
        { write: "Side play of every big end, by the maker's manual" },
      ]),
    ],
  };
}

/** Every clearance that the plan relies on. */
export function clearanceStep(
  build: Build,
  engine: EngineKind,
  { compression }: AssemblySettings,
  wording: Wording,
): TaskStep {
  const { bearings, cylinders } = build;
  const row = (
    place: string,
    { clearance, finding }: Pick<BuildCylinder, 'clearance' | 'finding'>,
  ): readonly Entry[] => [
    place,
    spanNumber(clearance, wording),
    blank,
    ...(finding ? limitCells(finding, wording) : NOT_JUDGED),
  ];
  return {
    title: 'Check the clearances',
    blocks: [
      paragraph(
        'Work each clearance out from your measurements. Gauging thread checks an oil clearance: lay it at the crown, torque the cap, and do not turn the crankshaft while it is in place. If a clearance is outside its limits, measure again; if it stays so, plan again with the sizes you measured.',
      ),
      table(
        ['clearance', 'expected', 'measured', 'limits', 'limits by'],
        [
          ...bearings.map((bearing) => row(`oil, ${bearing.journal}`, bearing)),
          ...cylinders.map((cylinder) => row(`piston, ${cylinder.bore}`, cylinder)),
          ...guideRow(build, engine, wording),
        ],
        1,
      ),
      ...spacesAbovePistons(compression, wording),
    ],
  };
}

/** The ratio and where the pistons stop: they can be mended only while the head is off. */
function spacesAbovePistons(
  compression: CompressionSetting | undefined,
  wording: Wording,
): readonly Block[] {
  return compression
    ? [
        paragraph('Before the head goes on:'),
        bulletList(describeSpaces(compression, wording)),
        checks([{ write: 'Piston below the deck at top dead centre, or above it; found' }]),
      ]
    : [];
}

/** The clearance of the stems in their guides, planned or not. */
function guideRow(
  build: Build,
  { guideClearance }: EngineKind,
  wording: Wording,
): readonly (readonly Entry[])[] {
  if (!hasGuides(build)) return [];
  const { guides } = build;
  const [limits] = guides?.finding ? [guides.finding] : based(guideClearance);
  return [
    [
      'guide clearance',
      guides ? spanNumber(guides.clearance, wording) : 'not measured',
      blank,
      ...(limits ? limitCells(limits, wording) : NOT_STATED),
    ],
  ];
}
