import type { Span } from '../judging/index.js';
import {
  guardFields,
  guardOwnLimits,
  machiningStock,
  pistonStroke,
  showLength,
} from '../judging/internal.js';
import type { BoreShape } from '../measuring/index.js';
import {
  type AmountRule,
  amountOr,
  guardMachining,
  guardSizeAndShape,
  guardStepsAtHand,
} from '../measuring/internal.js';
import { type Length, RebuildInputError, thou } from '../quantities/index.js';
import { boreShapeLimits } from './bore-limits.js';
import type { BoreRequest, BoreToMachine } from './bore-types.js';
import { cylinderWall } from './domains.js';

const sizeRule = (): AmountRule => ({
  amount: thou(1),
  basis: {
    kind: 'common practice',
    rule: 'a bore within 0.001 in (0.025 mm) of its size is used if the clearance allows',
  },
});
const honingRule = (): AmountRule => ({
  amount: thou(3),
  basis: { kind: 'common practice', rule: 'boring leaves 0.003 in (0.076 mm) for the hone' },
});

const REQUEST = [
  'cylinders',
  'standard',
  'steps',
  'pistonsAtHand',
  'honingAllowance',
  'leastWall',
  'wear',
  'sizeAllowance',
  'shape',
  'taper',
  'stroke',
  'sizeUncertainty',
] as const;

/** Those of a cylinder, and those that the shape of its bore has besides. */
const CYLINDER = [
  'name',
  'smallest',
  'largest',
  'outOfRound',
  'taper',
  'wall',
  'faults',
  'form',
  'stations',
  'lines',
  'taperNotRead',
  'repeats',
  'unworn',
  'wear',
] as const;

/** A request that is sound and complete. */
export type BoreJob = ReturnType<typeof guardBoreRequest>;

/** Checks a request at the door and fills in its defaults, each with its basis. */
export function guardBoreRequest(request: BoreRequest) {
  guardFields('request', request, REQUEST);
  const list = { name: 'cylinders', parts: request.cylinders, one: 'cylinder' };
  const { standard, steps, sizeAllowance, wear, shape } = guardMachining(
    request,
    list,
    'oversize',
    sizeRule(),
  );
  const { honingAllowance, pistonsAtHand, taper } = request;
  if (taper !== undefined) guardOwnLimits('taper', taper);
  const leastWall =
    request.leastWall === undefined ? undefined : cylinderWall('leastWall', request.leastWall);
  const { amount, basis } = amountOr(
    'honingAllowance',
    honingAllowance,
    honingRule(),
    machiningStock,
  );
  return {
    standard,
    steps,
    sizeAllowance,
    wear,
    cylinders: request.cylinders.map((cylinder, i) =>
      guardCylinder(`cylinders[${i}]`, cylinder, standard, leastWall),
    ),
    pistonsAtHand: guardStepsAtHand('pistonsAtHand', pistonsAtHand, 'oversizes'),
    leastWall,
    allowance: { honingAllowance: amount, basis },
    shape: boreShapeLimits(
      { outOfRound: shape, taper: taper ?? shape },
      standard.min,
      request.stroke === undefined ? undefined : pistonStroke('stroke', request.stroke),
      { outOfRound: 'shape', taper: taper ? 'taper' : 'shape' },
    ),
  };
}

function guardCylinder(
  at: string,
  cylinder: BoreToMachine,
  standard: Span<Length>,
  leastWall: Length | undefined,
): BoreToMachine {
  guardFields(at, cylinder as BoreToMachine & BoreShape, CYLINDER);
  guardSizeAndShape(at, cylinder);
  const { smallest: min, wall } = cylinder;
  if (wall !== undefined) {
    cylinderWall(`${at}.wall`, wall);
    // A wall that was measured is to be judged by something.
    cylinderWall('leastWall', leastWall as Length);
  }
  if (standard.min - min <= 1e-4) return cylinder;
  throw new RebuildInputError({
    parameter: `${at}.smallest`,
    value: min,
    shown: `${cylinder.name}, ${showLength(min)} at its smallest,`,
    expected: `at most 0.1 mm below the standard ${showLength(standard.min)}`,
    hint: 'Bores only wear larger: check the standard size, the units and which cylinder this is.',
  });
}
