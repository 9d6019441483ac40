import { caution, checks, type Entry, paragraph, type TaskStep } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import type { EngineKind, FastenerLocking, Locking } from '../reading/index.js';

/** The fasteners, each with its torque and its lock. Only the maker's manual gives their torques. */
export function torqueStep({ bearings, parts }: Build, { locking = {} }: EngineKind): TaskStep {
  const fasteners: readonly (keyof FastenerLocking)[] = [
    ...(bearings.some(({ kind }) => kind === 'mains') ? ['mainCaps' as const] : []),
    'rodCaps',
    ...(parts.some(({ section }) => section === 'heads') ? ['head' as const] : []),
    'flywheel',
  ];
  const ways = fasteners.map((fastener) => locking[fastener]);
  return {
    title: 'Oil, assemble and torque',
    blocks: [
      paragraph(
        "Oil every bearing, pin and bore. Mains come first, then rods, each cap mark to mark. After each cap, turn the crankshaft by hand: if it binds, stop and measure. Leave the spark plugs and the ignition off until all of this is done. Take the torques from the maker's manual.",
      ),
      ...(ways.some(isBent)
        ? [
            caution(
              'Use new pins, tabs and wire: what was bent once breaks. Never slacken a nut to bring its slot to the hole; take another nut or washer.',
            ),
          ]
        : []),
      checks([
        ...(fasteners.includes('head')
          ? ['Valves ground in and tested for leaks before the head goes on']
          : []),
        ...fasteners.flatMap((fastener): readonly Entry[] => [
          { write: `${NAMES[fastener].name} torqued, by the maker's manual` },
          lockOf(fastener, locking[fastener]),
          ...(fastener === 'rodCaps' ? [TIMING_MARKS] : []),
        ]),
      ]),
    ],
  };
}

const TIMING_MARKS = 'Timing marks of crankshaft and camshaft together, before their cover goes on';

const isBent = (way: Locking | undefined): boolean =>
  way === 'pins' || way === 'tabs' || way === 'wire';

const NAMES: {
  readonly [F in keyof Required<FastenerLocking>]: {
    readonly name: string;
    readonly they: string;
  };
} = {
  mainCaps: { name: 'Main bearing caps', they: 'they are' },
  rodCaps: { name: 'Rod caps', they: 'they are' },
  head: { name: 'Cylinder head', they: 'it is' },
  flywheel: { name: 'Flywheel', they: 'it is' },
};

const LOCKS: { readonly [L in Exclude<Locking, 'torque alone'>]: string } = {
  pins: 'a new split pin through every nut, both legs bent',
  tabs: 'a new tab washer under every nut, a tab up against its flat',
  wire: 'new wire through every head, laid so that it pulls tight',
  locknuts: 'a locknut on every thread, tightened against its nut',
};

function lockOf(fastener: keyof FastenerLocking, way: Locking | undefined): Entry {
  const { name, they } = NAMES[fastener];
  if (way === undefined) {
    return { write: `${name}: whether and how ${they} locked is not stated; locked by` };
  }
  if (way === 'torque alone')
    return `${name} held by torque alone: every nut marked once it is tight`;
  return `${name} locked: ${LOCKS[way]}`;
}
