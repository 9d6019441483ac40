import {
  type AssemblySettings,
  describeFastener,
  FASTENER_NAMES,
  FASTENERS,
  type FastenerSetting,
} from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import { caution, checks, type Entry, paragraph, type TaskStep } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import type { FastenersData, Locking } from '../reading/index.js';

/** The fasteners, each with its torque and its lock. A torque that the file does not give is the manual's. */
export function torqueStep(
  { bearings, parts }: Build,
  settings: AssemblySettings,
  wording: Wording,
): TaskStep {
  const settingOf = (fastener: keyof FastenersData) =>
    settings.fasteners.find(({ holds }) => holds === fastener);
  const lacks: readonly (keyof FastenersData)[] = [
    ...(bearings.some(({ kind }) => kind === 'mains') ? [] : ['mainCaps' as const]),
    ...(parts.some(({ section }) => section === 'heads') ? [] : ['head' as const]),
  ];
  // What the file gives a figure of is there, whatever the plan knows of.
  const fasteners = FASTENERS.filter((each) => !lacks.includes(each) || settingOf(each));
  return {
    title: 'Oil, assemble and torque',
    blocks: [
      paragraph(
        "Oil every bearing, pin and bore. Mains come first, then rods, each cap mark to mark. After each cap, turn the crankshaft by hand: if it binds, stop and measure. Leave the spark plugs and the ignition off until all of this is done. The maker's manual wins over every torque here.",
      ),
      ...(fasteners.some((fastener) => isBent(settingOf(fastener)?.locking))
        ? [
            caution(
              'Use new pins, tabs and wire: what was bent once breaks. Never slacken a nut to bring its slot to the hole; take another nut or washer.',
            ),
          ]
        : []),
      checks([
        ...fasteners.flatMap((fastener): readonly Entry[] => [
          ...torqueOf(fastener, settingOf(fastener), settings.wrench, wording),
          lockOf(fastener, settingOf(fastener)?.locking),
          ...(fastener === 'rodCaps' ? [TIMING_MARKS] : []),
        ]),
      ]),
    ],
  };
}

/** The torque of one kind of fastener, with what to mind. */
function torqueOf(
  fastener: keyof FastenersData,
  setting: FastenerSetting | undefined,
  wrench: AssemblySettings['wrench'],
  wording: Wording,
): readonly Entry[] {
  const name = FASTENER_NAMES[fastener];
  const said = setting && describeFastener(setting, wording, wrench);
  const { torque, notes = [], cautions = [] } = said ?? {};
  // What is ticked last is the torque that was reached: the rounds and the slot come before it.
  return [
    ...cautions.map((each) => `${name}: CAUTION: ${each}`),
    ...(torque ? [`${name}: ${torque}`] : []),
    ...notes.filter((note) => !cautions.includes(note)).map((note) => `${name}: ${note}`),
    { write: torque ? `${name} torqued to` : `${name} torqued, by the maker's manual` },
  ];
}

const TIMING_MARKS = 'Timing marks of crankshaft and camshaft together, before their cover goes on';

const isBent = (way: Locking | undefined): boolean =>
  way === 'pins' || way === 'tabs' || way === 'wire';

const isOne = (fastener: keyof FastenersData): boolean =>
  fastener === 'head' || fastener === 'flywheel';

const LOCKS: { readonly [L in Exclude<Locking, 'torque alone'>]: string } = {
  pins: 'a new split pin through every nut, both legs bent',
  tabs: 'a new tab washer under every nut, a tab up against its flat',
  wire: 'new wire through every head, laid so that it pulls tight',
  locknuts: 'a locknut on every thread, tightened against its nut',
};

function lockOf(fastener: keyof FastenersData, way: Locking | undefined): Entry {
  const name = FASTENER_NAMES[fastener];
  if (way === undefined) {
    const they = isOne(fastener) ? 'it is' : 'they are';
    return { write: `${name}: whether and how ${they} locked is not stated; locked by` };
  }
  if (way === 'torque alone')
    return `${name} held by torque alone: every nut marked once it is tight`;
  return `${name} locked: ${LOCKS[way]}`;
}
