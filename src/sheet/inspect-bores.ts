import { type BorePlan, type BoreReason, borePlan, oversizeSteps } from '../cylinders/index.js';
import type { Basis } from '../judging/index.js';
import { holds, type Names, namedFrom, shifted } from '../judging/internal.js';
import { outsideOf, withStandard } from '../measuring/internal.js';
import type { Length, UnitSystem } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import {
  type Accuracy,
  aboveAtNoStep,
  boreRequest,
  boreSeen,
  certaintyOf,
  own,
} from '../reading/index.js';
import type { CylinderReport } from './inspect-cylinder.js';
import type { BoresSheet, Sheet } from './sheet.js';

/** What to bore to, by the same rules as a shed; undefined if the sheet does not say what the maker bored to. */
export function boringOf(
  {
    bores,
    cylinderLimits: { outOfRound, taper } = {},
    cylinders = [],
    units,
  }: Pick<Sheet, 'bores' | 'cylinderLimits' | 'cylinders' | 'units'>,
  accuracy: Accuracy,
): BorePlan | undefined {
  if (bores === undefined || cylinders.length === 0) return undefined;
  const measured = cylinders.map(({ name, bore: { readings, ringTravel, wall } }) => ({
    name,
    shape: boreSeen(readings, ringTravel, accuracy),
    wall,
  }));
  const steps = stepsOf(bores, units);
  return namedFrom(
    () => boringNames(cylinders.length),
    () =>
      borePlan({
        ...boreRequest(bores, steps, measured, accuracy),
        shape: { ...own(outOfRound), ...certaintyOf('bore shape', accuracy) },
        taper: { ...own(taper), ...certaintyOf('bore shape', accuracy) },
      }),
  );
}

/** A bore of which more than its plan is known. */
type Inspected = Pick<CylinderReport, 'shape' | 'findings' | 'readAgain' | 'piston'>;

const KEPT: Basis = {
  kind: 'computed',
  how: 'its clearance with the piston in it holds as it is',
};

/**
 * The plan with every bore left as it is that only the rule of thumb for sizes keeps from being used, if its shape and its
 * clearance with the piston in it hold: then that rule has nothing to say. A limit that the sheet states wins.
 */
export function keptByClearance(
  sheet: Parameters<typeof boringOf>[0],
  plan: BorePlan | undefined,
  reports: readonly Inspected[],
  accuracy: Accuracy,
): BorePlan | undefined {
  const { bores, units } = sheet;
  if (!plan || !bores || bores.sizeAllowance !== undefined) return plan;
  if (plan.outcome === 'none' || plan.outcome === 'use as it is') return plan;
  const stays = (i: number, of: BorePlan) =>
    of.outcome !== 'none' && of.cylinders[i]?.work === 'use as it is';
  const kept = reports.map(
    ({ findings, piston, readAgain }, i) =>
      !stays(i, plan) &&
      readAgain === undefined &&
      piston?.finding !== undefined &&
      [...findings, piston.finding].every(holds),
  );
  const steps = stepsOf(bores, units);
  const outside = reports.flatMap(({ shape }, i) =>
    kept[i]
      ? [smallestOf(steps.map((step) => Math.abs(outsideOf(shape, shifted(bores.standard, step)))))]
      : [],
  );
  if (outside.length === 0) return plan;
  const { uncertainty = 0 } = certaintyOf('bore size', accuracy, bores.standard.max);
  const sizeAllowance = (largestOf(outside) + uncertainty) as Length;
  const wider = boringOf({ ...sheet, bores: { ...bores, sizeAllowance } }, accuracy);
  const isOwed = reports.every((_, i) => !wider || !stays(i, wider) || kept[i] || stays(i, plan));
  if (!wider || wider.outcome === 'none' || !isOwed) return plan;
  const because = wider.because.map((reason): BoreReason => {
    if (reason.kind !== 'good as it is' || reason.basis === undefined) return reason;
    const before = plan.because.find(
      (each) => each.kind === 'good as it is' && each.cylinder === reason.cylinder,
    );
    return { ...reason, basis: (before as typeof reason | undefined)?.basis ?? KEPT };
  });
  return { ...wider, because };
}

const stepsOf = ({ steps }: BoresSheet, units: UnitSystem): readonly Length[] =>
  withStandard(steps ?? oversizeSteps(units));

/** How far above standard a bore reads that is round and straight, where no step and no wear takes it. */
export function oddBore(
  { bores, units, cylinders = [] }: Parameters<typeof boringOf>[0],
  place: number,
  { shape, findings }: Inspected,
): Length | undefined {
  const readings = cylinders[place]?.bore.readings;
  if (!bores || !readings || findings.some(({ verdict }) => verdict !== 'within')) {
    return undefined;
  }
  return aboveAtNoStep(readings, shape, bores.standard, stepsOf(bores, units));
}

/** The oversize at which a cylinder that is to be bored needs no work by itself; undefined if it needs some. */
export function boreSoundAt(
  sheet: Parameters<typeof boringOf>[0],
  plan: BorePlan | undefined,
  place: number,
  report: Inspected,
  accuracy: Accuracy,
): Length | undefined {
  const cylinder = sheet.cylinders?.[place];
  const planned = plan === undefined || plan.outcome === 'none' ? undefined : plan.cylinders[place];
  if (cylinder === undefined || planned === undefined || planned.work === 'use as it is') {
    return undefined;
  }
  const one = { ...sheet, cylinders: [cylinder] };
  const alone = keptByClearance(one, boringOf(one, accuracy), [report], accuracy);
  return alone?.outcome === 'use as it is' ? alone.oversize : undefined;
}

/** Where the inputs of a bore plan come from. */
function boringNames(count: number): Names {
  const each = Array.from({ length: count }, (_, i) => [
    [`cylinders[${i}]`, `sheet.cylinders[${i}].bore`],
    [`cylinders[${i}].smallest`, `sheet.cylinders[${i}].bore.readings`],
    [`cylinders[${i}].largest`, `sheet.cylinders[${i}].bore.readings`],
  ]);
  return {
    '': 'sheet.bores',
    'shape.limits': 'sheet.cylinderLimits.outOfRound',
    'taper.limits': 'sheet.cylinderLimits.taper',
    ...Object.fromEntries(each.flat()),
  };
}
