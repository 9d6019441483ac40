import type { FitSetting } from '../assembly/index.js';
import type { EndPlay } from '../crankshaft/index.js';
import type { BorePlan } from '../cylinders/index.js';
import type { Finding } from '../judging/index.js';
import { holds } from '../judging/internal.js';
import { type Settling, whatSettles } from '../measuring/index.js';
import { type Accuracy, budgetOf, type ReadFeature } from '../reading/index.js';
import { boredIn } from './bored.js';
import type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
import type { CylinderReport } from './inspect-cylinder.js';
import type { ValveReport } from './inspect-valve.js';

/** A finding that the readings do not decide, and what would. */
export interface Unsettled {
  /** The journal, cylinder or part that it is of. */
  readonly part: string;
  /** The size against its limits. */
  readonly finding: Finding<'length'>;
  /** What would settle it. */
  readonly settling: Settling<'length'>;
  /** It is of a journal that is ground first. */
  readonly onceGround?: true;
}

/** What was inspected, and how well it is known. */
interface Inspected {
  readonly groups: readonly BearingGroupReport[];
  readonly endPlay: EndPlay | undefined;
  readonly cylinders: readonly CylinderReport[];
  readonly boring: BorePlan | undefined;
  readonly valves: readonly ValveReport[];
  readonly fits: readonly FitSetting[];
  readonly accuracy: Accuracy;
}

/** Every finding that better readings would decide, as far as something hangs on it. */
export function unsettledIn({
  groups,
  endPlay,
  cylinders,
  boring,
  valves,
  fits,
  accuracy,
}: Inspected): readonly Unsettled[] {
  const settle = (
    part: string,
    feature: ReadFeature,
    finding: Finding<'length'> | undefined,
    ofSize = 0,
  ): readonly Unsettled[] => {
    if (finding?.verdict !== 'undecided' || finding.uncertainty === undefined) return [];
    // It may stay whatever a better reading says.
    if (holds(finding)) return [];
    const settling = whatSettles(finding, budgetOf(feature, accuracy, ofSize));
    return [{ part, finding, settling }];
  };
  const bored = boredIn({ cylinders, ...(boring && { boring }) });
  return [
    ...settle('crankshaft', 'end play', endPlay?.finding),
    ...groups.flatMap(({ plan, bearings }) =>
      bearings.filter(isSound).flatMap((bearing) => {
        const { name, shape, bent, mayFit } = bearing;
        return [
          ...settle(name, 'runout', bent),
          ...doubtfulShapes(bearing, plan).flatMap((one) => settle(name, 'journal shape', one)),
          ...settle(name, 'oil clearance', asFound(bearing, plan), shape.largest),
          ...settle(
            `${name}${isGround(plan, name) ? ', once it is ground,' : ''} with "${mayFit?.shell.name}"`,
            'oil clearance',
            mayFit?.shell.name === bearing.fitted?.shells ? undefined : mayFit?.finding,
            shape.largest,
          ).map((each) => (isGround(plan, name) ? { ...each, onceGround: true as const } : each)),
        ];
      }),
    ),
    ...cylinders
      .filter(isSound)
      .flatMap(({ name, shape, findings, piston, rings }) => [
        ...findings.flatMap((one) => settle(name, 'bore shape', one)),
        ...(bored.includes(name)
          ? []
          : [
              ...settle(name, 'piston clearance', piston?.finding, shape.largest),
              ...rings.flatMap((ring) =>
                settle(`${name}, ${ring.name}`, 'ring gap', ring.filing.finding),
              ),
            ]),
      ]),
    ...valves.flatMap(({ name, findings }) =>
      findings.flatMap((one) => {
        const feature = VALVE_FEATURES[one.feature];
        return feature ? settle(name, feature, one) : [];
      }),
    ),
    ...fits.flatMap(({ name, finding }) => settle(name, 'fit clearance', finding)),
  ];
}

/** What a finding on a valve is read with, where the sheet can tell. */
const VALVE_FEATURES: Readonly<Partial<Record<string, ReadFeature>>> = {
  'guide clearance': 'guide clearance',
  margin: 'margin',
};

/** Whether nothing of it is to be read again first. */
const isSound = ({ readAgain }: { readonly readAgain?: unknown }): boolean =>
  readAgain === undefined;

type GroupPlan = BearingGroupReport['plan'];

/** Whether a journal is to be ground. */
const isGround = (plan: GroupPlan, name: string): boolean =>
  plan.outcome === 'grind' &&
  plan.journals.some((journal) => journal.name === name && journal.work === 'grind');

/** The shape of a journal, where nothing else has it ground. */
function doubtfulShapes(
  { name, findings }: BearingReport,
  plan: GroupPlan,
): BearingReport['findings'] {
  const doubts = plan.outcome === 'none' ? [] : (plan.inDoubt?.journals ?? []);
  return doubts.some((doubt) => doubt.name === name) ? findings : [];
}

/** The clearance that a bearing was found with, where its journal stays as it is. */
function asFound({ fitted }: BearingReport, plan: GroupPlan): Finding<'length'> | undefined {
  const mayStay =
    plan.outcome === 'use as it is' ||
    plan.nearly !== undefined ||
    (plan.outcome === 'grind' && plan.inDoubt !== undefined);
  return mayStay ? fitted?.explanation.finding : undefined;
}
