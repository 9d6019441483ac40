import { ROUNDING, showIn } from '../../judging/internal.js';
import type { LoadDiagram } from '../../motion/index.js';
import { RebuildInputError, type RotationalSpeed, rpm } from '../../quantities/index.js';

/** Refuses loads of another speed than that of the bearing. */
export function guardSameSpeed(loads: LoadDiagram, speed: RotationalSpeed): LoadDiagram {
  if (Math.abs(loads.speed - speed) <= ROUNDING * speed) return loads;
  throw new RebuildInputError({
    parameter: 'loads.speed',
    value: loads.speed,
    shown: showIn(loads.speed, rpm),
    expected: `the speed of the bearing, ${showIn(speed, rpm)}`,
    problem: 'is another speed than that of the bearing',
    hint: 'Make the loads at the speed that the bearing is judged at.',
  });
}
