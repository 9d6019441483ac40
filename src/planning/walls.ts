import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';
import type { Job, Shed } from '../shed/index.js';
import { boresOf } from '../shed/internal.js';
import type { BuildJob } from './job-types.js';
import { stepsFor } from './steps-for.js';

/** That a job bores past the first oversize without all its walls being measured, if it does. */
export function wallOf(
  shed: Shed,
  { part: name, work, places, step = 0 as Length }: Pick<BuildJob, 'part'> & Job,
): Pick<BuildJob, 'wallNotKnown'> {
  const block = shed.blocks?.find((each) => each.name === name);
  if (work !== 'bore' || block === undefined) return {};
  const over = stepsFor(shed, 'bores').filter((each) => each > NANOMETRE);
  const isFirst = over.length > 0 && step <= smallestOf(over) + NANOMETRE;
  const isMeasured = boresOf(block, shed.engine).every(
    ({ name: bore, wall }) => !places.includes(bore) || wall !== undefined,
  );
  return isFirst || isMeasured ? {} : { wallNotKnown: true };
}

/** The cautions for blocks that are bored far with walls nobody measured: sentences without full stops. */
export const sayWalls = (jobs: readonly BuildJob[]): readonly string[] => [
  ...new Set(
    jobs
      .filter(({ wallNotKnown }) => wallNotKnown)
      .map(
        ({ part }) =>
          `${part}: its cylinder walls were not measured; before it is bored past the first oversize, have the shop sound them, or drill and plug one: cores shift in casting, and rust thins what water reaches`,
      ),
  ),
];
