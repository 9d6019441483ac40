import type { Span } from '../../judging/index.js';
import { gapOf, partTemperature } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { bushingWall } from '../domains.js';
import { warmedSpan } from '../warm/piston-clearance.js';
import { type Growth, growthOf, ROOM } from '../warm/running-part.js';
import type { PinInBore, PinJoint } from './pin-types.js';

/** How the parts grow as far as it is known, and the wall between pin and rod. */
export function warmPartsOf(
  { warmPin, warmBore, warmBushing, bushingWall: ofBushing, measuredAt = ROOM }: PinInBore,
  joint: PinJoint,
) {
  const measured = partTemperature('measuredAt', measuredAt);
  const hasWall = joint === 'bushing' || warmBushing !== undefined;
  const wall = ofBushing ?? (hasWall ? undefined : (0 as Length));
  if (ofBushing !== undefined) bushingWall('bushingWall', ofBushing);
  return {
    wall,
    ...(warmBore !== undefined && { warmBore: growthOf('warmBore', warmBore, measured) }),
    ...(warmBushing !== undefined && {
      warmBushing: growthOf('warmBushing', warmBushing, measured),
    }),
    ...(warmPin !== undefined && { warmPin: growthOf('warmPin', warmPin, measured) }),
  };
}

/** The bore when warm, in the rod itself or in a bushing that it holds; nothing where something of it is not known. */
export function warmedBore(
  bore: Span<Length>,
  wall: Length | undefined,
  { warmBore, warmBushing }: { readonly warmBore?: Growth; readonly warmBushing?: Growth },
): Span<Length> | undefined {
  if (warmBore === undefined || wall === undefined) return undefined;
  if (wall === 0) return warmedSpan(bore, warmBore.by);
  if (warmBushing === undefined) return undefined;
  const twice = (2 * wall) as Length;
  const outside = { min: bore.min + twice, max: bore.max + twice } as Span<Length>;
  return gapOf(
    warmedSpan(outside, warmBore.by),
    warmedSpan({ min: twice, max: twice }, warmBushing.by),
  );
}
