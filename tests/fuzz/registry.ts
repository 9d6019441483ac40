import { bearingCalls } from './calls/bearings.js';
import type { Calls } from './calls/calls.js';
import { crankshaftCalls } from './calls/crankshaft.js';
import { cylinderCalls } from './calls/cylinders.js';
import { filmCalls } from './calls/film.js';
import { judgingCalls, measuringCalls } from './calls/measuring.js';
import { motionCalls } from './calls/motion.js';
import { oilCalls } from './calls/oil.js';
import { planCalls } from './calls/plan.js';
import { quantityCalls } from './calls/quantities.js';
import { shedCalls } from './calls/shed.js';
import { sheetCalls } from './calls/sheet.js';
import { teachingCalls } from './calls/teaching.js';
import { viscosityCalls } from './calls/viscosity.js';

/**
 * How every exported function is called: soundly, and once for each cause that
 * its documentation says it refuses. A new function that is missing here fails
 * the tests; units are covered by their table.
 */
export const registry: Readonly<Record<string, Calls>> = {
  ...quantityCalls,
  ...judgingCalls,
  ...measuringCalls,
  ...crankshaftCalls,
  ...bearingCalls,
  ...cylinderCalls,
  ...filmCalls,
  ...motionCalls,
  ...oilCalls,
  ...planCalls,
  ...sheetCalls,
  ...shedCalls,
  ...teachingCalls,
  ...viscosityCalls,
};
