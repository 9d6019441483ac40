import type { Basis } from '../judging/index.js';

const anotherEngine = (source: string): Basis => ({
  kind: 'published',
  source,
  forAnotherEngine: true,
});

/** The margin of a new valve. A scan of that page reads 1/82. */
export const NEW_MARGIN: Basis = /* @__PURE__ */ anotherEngine(
  'TM 5-4240-501-14&P, p. 278: a new valve has a margin of 1/32 in',
);

/** The margin of a refaced valve. */
export const MARGIN_LIMIT: Basis = /* @__PURE__ */ anotherEngine(
  'TM 5-4240-501-14&P, p. 278: a valve is discarded when its margin is less than 1/64 in after refacing',
);

/** The width of a new seat. */
export const NEW_SEAT_WIDTH: Basis = /* @__PURE__ */ anotherEngine(
  'TM 5-4240-501-14&P, p. 278: a new valve seat is 3/64 to 1/16 in wide',
);

/** The width of a recut seat. */
export const SEAT_WIDTH_LIMIT: Basis = /* @__PURE__ */ anotherEngine(
  'TM 5-4240-501-14&P, p. 278: a valve seat is usable up to a width of 5/64 in',
);

/** The force that a used valve spring may have lost. */
export const SPRING_LOSS_LIMIT: Basis = /* @__PURE__ */ anotherEngine(
  'TM 10-3930-644-14&P, chapter 4: used valve springs that show more than 10 % loss are replaced',
);
