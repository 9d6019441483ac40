import {
  type BoltGrade,
  boltStrength,
  type ThreadSize,
  type TighteningPlan,
  type TorqueSetting,
  tighteningPlan,
  torqueSetting,
  wrenchSetting,
} from '../fasteners/index.js';
import type { Basis, Span } from '../judging/index.js';
import { spanOf } from '../judging/internal.js';
import type { Torque } from '../quantities/index.js';
import type { FastenerData, FastenersData, Locking } from '../reading/index.js';

/** All that is tightened, in the order of the work. */
export const FASTENERS = [
  'mainCaps',
  'rodCaps',
  'head',
  'flywheel',
] as const satisfies readonly (keyof FastenersData)[];

/** What the bolts of one part are tightened to. */
export interface FastenerSetting {
  /** What they hold. */
  readonly holds: keyof FastenersData;
  /** Torque at the fastener: the maker's, or reckoned for want of it; absent if neither is to be had [N·m]. */
  readonly torque?: Span<Torque>;
  /** Who set it. */
  readonly basis?: Basis;
  /** What that torque does to the bolt; absent unless thread, grade and condition are known. */
  readonly setting?: TorqueSetting;
  /** What the heads say, if that is known. */
  readonly grade?: BoltGrade;
  /** What to set the wrench to, where a locking nut or an adapter makes it another figure [N·m]. */
  readonly wrench?: Span<Torque>;
  /** In what sequence and in what rounds, in what the wrench is set to; absent if the places of the bolts are not known. */
  readonly plan?: TighteningPlan;
  /** How they are locked; absent if nobody knows. */
  readonly locking?: Locking;
  /** What would have to be known to reckon what the torque does, or the torque itself. */
  readonly missing: readonly ('thread' | 'grade' | 'condition')[];
}

/** What the bolts of one part are tightened to, as far as the file tells. */
export function fastenerSetting(holds: keyof FastenersData, data: FastenerData): FastenerSetting {
  const { prevailing, adapter, bolts, rounds, locking } = data;
  const setting = settingOf(data);
  const torque = data.torque === undefined ? setting?.torque : spanOf(data.torque);
  const basis = setting?.basis ?? (torque && statedBy(data));
  const missing = (['thread', 'grade', 'condition'] as const).filter(
    (field) => data[field] === undefined,
  );
  const isElsewhere = prevailing !== undefined || adapter !== undefined;
  const onWrench = (at: Torque) =>
    wrenchSetting({
      torque: at,
      ...(prevailing !== undefined && { prevailing }),
      ...(adapter !== undefined && { adapter }),
    });
  const last = torque && lastRound(torque, locking === 'pins');
  return {
    holds,
    ...(torque && { torque }),
    ...(basis && { basis }),
    ...(setting && { setting }),
    ...(data.grade && { grade: data.grade }),
    ...(torque &&
      isElsewhere && { wrench: { min: onWrench(torque.min), max: onWrench(torque.max) } }),
    ...(last !== undefined &&
      bolts && {
        plan: asSet(
          tighteningPlan({ bolts, torque: last, ...(rounds !== undefined && { rounds }) }),
          { at: last, wrench: isElsewhere ? onWrench(last) : last, prevailing },
        ),
      }),
    ...(locking && { locking }),
    missing,
  };
}

/** Half way between the ends, so that an error of the wrench stays within; where a slot has to be found, the least. */
function lastRound({ min, max }: Span<Torque>, findsSlot: boolean): Torque {
  return findsSlot ? min : (((min + max) / 2) as Torque);
}

/** The rounds in what the wrench shows: a locking nut drags in every one of them, and an adapter takes its share. */
function asSet(
  plan: TighteningPlan,
  last: { readonly at: Torque; readonly wrench: Torque; readonly prevailing: Torque | undefined },
): TighteningPlan {
  const drag = last.prevailing ?? 0;
  const shown = last.wrench / (last.at + drag);
  const rounds = plan.rounds.map(({ share, torque }) => ({
    share,
    torque: ((torque + drag) * shown) as Torque,
  }));
  return { ...plan, rounds };
}

function settingOf(data: FastenerData): TorqueSetting | undefined {
  const { thread, grade, condition, leastDiameter, torque } = data;
  if (thread === undefined || grade === undefined || condition === undefined) return undefined;
  const { proofStress } = boltStrength({ grade, diameter: thread.diameter });
  return torqueSetting({
    thread: sizeOf(thread),
    proofStress,
    condition,
    ...(leastDiameter !== undefined && { leastDiameter }),
    ...(torque !== undefined && { makers: torque, basis: statedBy(data) }),
  });
}

const sizeOf = ({ form, diameter, pitch }: ThreadSize): ThreadSize => ({ form, diameter, pitch });

const statedBy = ({ source }: FastenerData): Basis => ({
  kind: 'specified',
  ...(source !== undefined && { by: source }),
});
