import type { Wording } from '../../judging/index.js';
import { say } from '../../judging/internal.js';
import type { Length } from '../../quantities/index.js';
import type { TooFar } from './too-far-types.js';

/** That a reading is to be taken again, as no step and no wear come to it: a sentence without a full stop. */
export function describeFar({ of, place, far }: TooFar, { units }: Wording): string {
  const { station, reading, below } = far;
  const size = say(Math.abs(below) as Length, 'length', units);
  const step = of === 'bores' ? 'oversize' : 'undersize';
  return `${place}: read this one again: ${say(reading, 'length', units)} at station ${say(station, 'length', units)} is ${size} ${below > 0 ? 'below' : 'above'} standard, and no ${step} on the list and no wear comes to that. If it reads the same again, list both readings`;
}
