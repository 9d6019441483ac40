import type { ValveSetting } from '../assembly/index.js';
import { type Finding, judge } from '../judging/index.js';
import { type Accuracy, certaintyOf, own } from '../reading/index.js';
import {
  guideClearance,
  type SpringTest,
  type StemWork,
  seatFindings,
  springTest,
  stemToGrind,
} from '../valves/index.js';
import type { ValveLimits, ValveSheet } from './valve-sheet.js';

/** What of a valve is judged. */
export type ValveTopic = 'guide' | 'seat' | 'margin' | 'recession' | 'spring' | 'lash';

/** Findings on one valve. */
export interface ValveReport {
  /** Its name on the bench. */
  readonly name: string;
  /** Whether it is an inlet or an exhaust valve. */
  readonly kind: 'inlet' | 'exhaust';
  /** Guide clearance, seat width, margin, recession and lash, as far as they were read and have limits. */
  readonly findings: readonly Finding<'length'>[];
  /** Its spring, if it was tested: its rate, and what it lost where only a share of it is known to be allowed. */
  readonly spring?: SpringTest;
  /** The force of its spring against the maker's, at each height that he gives. */
  readonly springForces: readonly Finding<'force'>[];
  /** What to do with the end of its stem, where nothing else adjusts its lash. */
  readonly stem?: StemWork;
  /** What was not read, or was read and has no limit. */
  readonly notJudged: readonly ValveTopic[];
  /** What of that was read. */
  readonly withoutLimit: readonly ValveTopic[];
}

/** Inspects one valve by the limits of the sheet, and by what its lash is to be. */
export function inspectValve(
  valve: ValveSheet,
  accuracy: Accuracy,
  limits: ValveLimits = {},
  settings: readonly ValveSetting[] = [],
): ValveReport {
  const { name, kind } = valve;
  const setting = settings.find((each) => each.valve === kind);
  const seats = seatFindings(
    {
      ...(valve.seatWidth !== undefined && { seatWidth: valve.seatWidth }),
      ...(valve.margin !== undefined && { margin: valve.margin }),
      ...(valve.recession !== undefined && { recession: valve.recession }),
    },
    {
      ...(limits.seatWidth && { seatWidth: own(limits.seatWidth) }),
      ...(limits.margin && {
        margin: { ...own(limits.margin), ...certaintyOf('margin', accuracy) },
      }),
      ...(limits.recession && { recession: own(limits.recession) }),
    },
  );
  const guide = guideOf(valve, limits, accuracy);
  const spring = springOf(valve);
  const springForces = springForcesOf(valve, setting);
  const stem = stemOf(valve, setting);
  const lash = stem ? undefined : lashOf(valve, setting);
  const notJudged: readonly ValveTopic[] = [
    ...(guide ? [] : (['guide'] as const)),
    ...(seats.seatWidth ? [] : (['seat'] as const)),
    ...(seats.margin ? [] : (['margin'] as const)),
    ...(seats.recession ? [] : (['recession'] as const)),
    ...(springForces.length > 0 ? [] : (['spring'] as const)),
    ...(lash || stem ? [] : (['lash'] as const)),
  ];
  return {
    name,
    kind,
    findings: [guide, seats.seatWidth, seats.margin, seats.recession, lash].filter(
      (finding) => finding !== undefined,
    ),
    ...(spring && { spring }),
    springForces,
    ...(stem && { stem }),
    notJudged,
    withoutLimit: notJudged.filter((what) => wasRead(valve, what)),
  };
}

/** Whether it was read: then only its limit is lacking. */
function wasRead(valve: ValveSheet, what: ValveTopic): boolean {
  switch (what) {
    case 'guide':
      return valve.guide !== undefined && valve.stem !== undefined;
    case 'seat':
      return valve.seatWidth !== undefined;
    default:
      return valve[what] !== undefined;
  }
}

function guideOf(
  { guide, stem }: ValveSheet,
  limits: ValveLimits,
  accuracy: Accuracy,
): Finding<'length'> | undefined {
  if (guide === undefined || stem === undefined) return undefined;
  const certainty = certaintyOf('guide clearance', accuracy);
  return guideClearance({ guide, stem, ...own(limits.guideClearance), ...certainty }).finding;
}

/** The lash as it was found; a hot figure says nothing of a cold reading. */
function lashOf(
  { lash }: ValveSheet,
  setting: ValveSetting | undefined,
): Finding<'length'> | undefined {
  if (lash === undefined || setting?.lash === undefined) return undefined;
  if (setting.set !== 'cold') return undefined;
  return judge({ feature: 'lash', dimension: 'length', value: lash, ...setting.lash });
}

function stemOf(
  { lash, length, leastLength }: ValveSheet,
  setting: ValveSetting | undefined,
): StemWork | undefined {
  const { min, max } = setting?.lash?.limits ?? {};
  if (lash === undefined || min === undefined || max === undefined) return undefined;
  if (setting?.set !== 'cold' || setting.setBy !== 'stem') return undefined;
  return stemToGrind({
    lash,
    wanted: { min, max },
    ...(length !== undefined && { length }),
    ...(leastLength !== undefined && { leastLength }),
  });
}

/** What the tester read. The maker's force at the same height judges it elsewhere. */
function springOf({ spring }: ValveSheet): SpringTest | undefined {
  return spring && springTest(spring);
}

/** The force of a spring against the maker's, at each of his heights that it was tested at. */
function springForcesOf(
  { spring }: ValveSheet,
  setting: ValveSetting | undefined,
): readonly Finding<'force'>[] {
  if (spring === undefined) return [];
  return (['closed', 'open'] as const).flatMap((at) => {
    const wanted = setting?.springs.find((each) => each.at === at);
    const { height, force } = spring[at];
    if (wanted === undefined || Math.abs(wanted.height - height) > NEAR) return [];
    return [
      judge({
        feature: `spring, valve ${at},`,
        dimension: 'force',
        value: force,
        ...wanted.force,
        ...(spring.forceWithin !== undefined && { uncertainty: spring.forceWithin }),
      }),
    ];
  });
}

/** Nobody sets a spring tester nearer to a height than a ten-thousandth of an inch [m]. */
const NEAR = 2.54e-6;
