import { type BorePlan, borePlan, oversizeSteps } from '../cylinders/index.js';
import { type Names, namedFrom } from '../judging/internal.js';
import { withStandard } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { type Accuracy, boreRequest, boreSeen, certaintyOf, own } from '../reading/index.js';
import type { Sheet } from './sheet.js';

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
  const steps = withStandard(bores.steps ?? oversizeSteps(units));
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

/** The oversize at which a cylinder that is to be bored needs no work by itself; undefined if it needs some. */
export function boreSoundAt(
  sheet: Parameters<typeof boringOf>[0],
  plan: BorePlan | undefined,
  place: number,
  accuracy: Accuracy,
): Length | undefined {
  const cylinder = sheet.cylinders?.[place];
  const planned = plan === undefined || plan.outcome === 'none' ? undefined : plan.cylinders[place];
  if (cylinder === undefined || planned === undefined || planned.work === 'use as it is') {
    return undefined;
  }
  const alone = boringOf({ ...sheet, cylinders: [cylinder] }, accuracy);
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
