import { shellWall } from '../bearings/internal.js';
import { shimThickness } from '../crankshaft/internal.js';
import { cylinderWall } from '../cylinders/internal.js';
import { list, name, partial, shellFields, span } from '../reading/index.js';
import { price } from './price-schema.js';

const made = { name, material: name.exactOptional(), price };

/** Parts that can be made to suit. */
export const toMakeSchema = partial({
  shells: list(
    partial({ ...made, fits: shellFields.fits, wall: span(shellWall) }),
    0,
  ).exactOptional(),
  thrustWashers: list(partial({ ...made, thickness: span(shimThickness) }), 0).exactOptional(),
  sleeves: list(partial({ ...made, wall: span(cylinderWall) }), 0).exactOptional(),
});
