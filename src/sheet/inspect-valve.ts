import type { ValveSetting } from '../assembly/index.js';
import { type Finding, judge } from '../judging/index.js';
import { type Accuracy, certaintyOf, own } from '../reading/index.js';
import {
  type ForceAtHeight,
  guideClearance,
  type SpringTest,
  type StemWork,
  seatFindings,
  springTest,
  stemToGrind,
} from '../valves/index.js';
import type { SpringReading, ValveLimits, ValveSheet } from './valve-sheet.js';

/** Findings on one valve. */
export interface ValveReport {
  /** Its name on the bench. */
  readonly name: string;
  /** Whether it is an inlet or an exhaust valve. */
  readonly kind: 'inlet' | 'exhaust';
  /** Guide clearance, seat width, margin, recession and lash, as far as they were read and have limits. */
  readonly findings: readonly Finding<'length'>[];
  /** Its spring, if it was tested. */
  readonly spring?: SpringTest;
  /** What to do with the end of its stem, where nothing else adjusts its lash. */
  readonly stem?: StemWork;
  /** What was not read, or was read and has no limit. */
  readonly notJudged: readonly string[];
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
  const spring = springOf(valve, setting);
  const stem = stemOf(valve, setting);
  const lash = stem ? undefined : lashOf(valve, setting);
  return {
    name,
    kind,
    findings: [guide, seats.seatWidth, seats.margin, seats.recession, lash].filter(
      (finding) => finding !== undefined,
    ),
    ...(spring && { spring }),
    ...(stem && { stem }),
    notJudged: [
      ...(guide ? [] : ['guide']),
      ...(seats.seatWidth ? [] : ['seat']),
      ...(seats.margin ? [] : ['margin']),
      ...(seats.recession ? [] : ['recession']),
      ...(spring?.closed || spring?.open ? [] : ['spring']),
      ...(lash || stem ? [] : ['lash']),
    ],
  };
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

function springOf(
  { spring }: ValveSheet,
  setting: ValveSetting | undefined,
): SpringTest | undefined {
  if (spring === undefined) return undefined;
  const { closed, open, forceWithin } = spring;
  return springTest({
    closed: specified('closed', closed, setting),
    open: specified('open', open, setting),
    ...(forceWithin !== undefined && { forceWithin }),
  });
}

/** A reading with the least force that the maker wants, if it is at the maker's height. */
function specified(
  at: 'closed' | 'open',
  { height, force }: SpringReading,
  setting: ValveSetting | undefined,
): ForceAtHeight {
  const wanted = setting?.springs.find(
    (each) => each.at === at && Math.abs(each.height - height) <= NEAR,
  );
  // What a used spring may come down to is no force to count its loss from.
  const least = wanted?.force.limitsOf === 'new parts' ? wanted.force.limits.min : undefined;
  return { height, force, ...(least !== undefined && { specified: least }) };
}

/** Nobody sets a spring tester nearer to a height than a ten-thousandth of an inch [m]. */
const NEAR = 2.54e-6;
