import type { BoltGrade, TorqueWording } from '../fasteners/index.js';
import { describeTighteningPlan } from '../fasteners/index.js';
import { sayOverload, torqueWords, type WrenchScale } from '../fasteners/internal.js';
import type { Span, Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import type { Torque } from '../quantities/index.js';
import type { FastenersData } from '../reading/index.js';
import type { FastenerSetting } from './fastener-setting.js';

/** What each kind of fastener is called. */
export const FASTENER_NAMES: Readonly<Record<keyof FastenersData, string>> = {
  mainCaps: 'Main bearing caps',
  rodCaps: 'Rod caps',
  head: 'Cylinder head',
  flywheel: 'Flywheel',
};

/** What to tighten bolts to, and what to mind with them. */
export interface FastenerWords {
  /** The torque and in what state of the thread; absent if none is known. */
  readonly torque?: string;
  /** What to read before a wrench is set to that torque: sentences without full stops, the first of the notes. */
  readonly cautions: readonly string[];
  /** All there is to mind, the cautions first: sentences without full stops. */
  readonly notes: readonly string[];
}

/** Describes what the bolts of one part are tightened to, in the units of the wrench. */
export function describeFastener(
  setting: FastenerSetting,
  wording: Wording,
  wrench: WrenchScale | undefined,
): FastenerWords {
  const { torque, basis, wrench: onWrench, plan, missing } = setting;
  const torqueWording: TorqueWording = { ...wording, ...(wrench && { wrench }) };
  const { say } = torqueWords(torqueWording);
  if (torque === undefined || basis === undefined) {
    return {
      cautions: [],
      notes: [
        `no torque is stated, and none can be reckoned: ${lacking(missing)} not stated`,
        ...(missing.includes('grade') ? [NO_GRADE] : []),
      ],
    };
  }
  const { setting: known } = setting;
  const isReckoned = known?.outcome === 'reckoned';
  const set: Span<Torque> = onWrench ?? torque;
  const shown = (end: Torque) =>
    `${say({ min: end, max: end })}${onWrench ? ' on the wrench' : ''}`;
  const condition = known && `, thread and face ${known.nutFactor.condition}`;
  const cautions = [
    ...(isReckoned
      ? [
          `the torque is reckoned for want of the maker's figure, for a sound bolt of its grade in steel: threads in iron or aluminium may strip at less${TRUST[setting.holds] ?? ''}`,
        ]
      : []),
    ...(isReckoned &&
    setting.holds === 'rodCaps' &&
    setting.grade !== undefined &&
    !ROD_GRADES.includes(setting.grade)
      ? [
          'bolts of that grade are softer than rod bolts mostly are (grade 5 or class 8.8, a rule of thumb): ask what the maker fitted before you trust rods to them',
        ]
      : []),
    ...(missing.includes('condition')
      ? [
          'the file does not say whether thread and face are dry or oiled: look it up first, as the same torque pulls an oiled bolt much harder',
        ]
      : []),
    ...(known ? sayOverload(known, wording) : []),
  ];
  return {
    torque: `${say(torque)} at the fastener${condition ?? ''} ${noteOf(basis, wording)}`,
    cautions,
    notes: [
      ...cautions,
      ...(onWrench ? [`set the wrench to ${say(onWrench)} for that`] : []),
      ...(plan && onWrench ? ['the rounds are what to set the wrench to'] : []),
      ...(plan ? describeTighteningPlan(plan, torqueWording) : []),
      ...(setting.locking === 'pins'
        ? [`find the slot: ${slotBetween(shown(set.min), shown(set.max))}`]
        : []),
    ],
  };
}

/** How the slot of a castle nut is found between two torques. */
function slotBetween(least: string, most: string): string {
  const fallback = 'take another nut or washer, and never slacken it to a slot';
  return least === most
    ? `if none meets its hole at ${most}, ${fallback}`
    : `tighten to ${least}, then on to the next slot, at most to ${most}; if none comes by then, ${fallback}`;
}

/** Where a life hangs on the bolts. */
const TRUST: Readonly<Partial<Record<keyof FastenersData, string>>> = {
  rodCaps: "; find the maker's figure before you trust rods to it",
  flywheel: "; find the maker's figure before you trust a flywheel to it",
};

const NO_GRADE =
  'look for marks on the heads, or have the hardness read; where a life hangs on them, fit new bolts of a known grade';

/** What rod bolts mostly are. */
const ROD_GRADES: readonly BoltGrade[] = [
  'SAE 5',
  'SAE 5.2',
  'SAE 7',
  'SAE 8',
  'SAE 8.2',
  'ISO 8.8',
  'ISO 9.8',
  'ISO 10.9',
  'ISO 12.9',
];

const LACKING = {
  thread: 'thread',
  grade: 'grade of the bolts',
  condition: 'state of the thread (dry or oiled)',
} as const;

function lacking(missing: FastenerSetting['missing']): string {
  const names = missing.map((each) => LACKING[each]);
  const all = [names.slice(0, -1).join(', '), ...names.slice(-1)].filter((each) => each !== '');
  return `${all.join(' and ')} ${names.length === 1 ? 'is' : 'are'}`;
}
