import { domain, lengthDomain } from '../../judging/internal.js';
import { celsius, MPa, mLPerMinute } from '../../quantities/index.js';

/** What the metal of a shell may carry, load over projected area: from a tenth of a bar to a hard steel's. */
export const shellPressure = /* @__PURE__ */ domain(MPa, {
  least: 1e4,
  most: 1e9,
  example: 'MPa(7)',
});

/** How hot the metal of a shell may become: from a warm room to far past where white metal melts. */
export const shellTemperature = /* @__PURE__ */ domain(celsius, {
  least: 300,
  most: 800,
  example: 'celsius(150)',
});

/** The largest particle that comes into a bearing with its oil: from a fine filter's to a grain of sand. */
export const particleSize = /* @__PURE__ */ lengthDomain({
  least: 1e-7,
  most: 1e-3,
  example: 'micrometre(15)',
});

/** What is said in place of the largest particle where there is no filter. */
export const NO_FILTER = 'no filter';

/** Oil that reaches a bearing: none, or up to a large pump's. */
export const oilBrought = /* @__PURE__ */ domain(mLPerMinute, {
  least: 0,
  most: 0.1,
  example: 'mLPerMinute(60)',
});
