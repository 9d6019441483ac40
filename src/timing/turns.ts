import { degree } from '../quantities/index.js';

/** Half a turn of the crank. */
export const HALF = /* @__PURE__ */ degree(180);
/** A whole turn of the crank. */
export const WHOLE = /* @__PURE__ */ degree(360);

/** The same place, within half a turn of another, by whole turns. */
export const turnedNear = (angle: number, to: number): number =>
  angle + WHOLE * Math.round((to - angle) / WHOLE);
