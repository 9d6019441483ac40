import * as core from 'crankwright';
import { acceptanceCalls } from './calls/acceptance.js';
import { assemblyCalls } from './calls/assembly.js';
import { bearingCalls } from './calls/bearings.js';
import type { Calls } from './calls/calls.js';
import { callsOfCards } from './calls/cards.js';
import { compressionCalls } from './calls/compression.js';
import { crankshaftCalls } from './calls/crankshaft.js';
import { cylinderCalls } from './calls/cylinders.js';
import { fastenerCalls } from './calls/fasteners.js';
import { filmCalls } from './calls/film.js';
import { fitCalls } from './calls/fits.js';
import { judgingCalls } from './calls/judging.js';
import { mathjsCalls } from './calls/mathjs.js';
import { measuringCalls } from './calls/measuring.js';
import { motionCalls } from './calls/motion.js';
import { oddReadingCalls } from './calls/odd.js';
import { oilCalls } from './calls/oil.js';
import { planCalls } from './calls/plan.js';
import { plotCalls } from './calls/plots.js';
import { quantityCalls } from './calls/quantities.js';
import { ringCalls } from './calls/rings.js';
import { roundnessCalls } from './calls/roundness.js';
import { shedCalls } from './calls/shed.js';
import { sheetCalls } from './calls/sheet.js';
import { stackCalls } from './calls/stacks.js';
import { teachingCalls } from './calls/teaching.js';
import { timingCalls } from './calls/timing.js';
import { uncertaintyCalls } from './calls/uncertainty.js';
import { valveCalls } from './calls/valves.js';
import { viscosityCalls } from './calls/viscosity.js';

/** Written by hand: functions without a card, and calls that no card makes. */
const byHand: Readonly<Record<string, Calls>> = {
  ...quantityCalls,
  ...judgingCalls,
  ...mathjsCalls,
  ...measuringCalls,
  ...roundnessCalls,
  ...crankshaftCalls,
  ...acceptanceCalls,
  ...assemblyCalls,
  ...bearingCalls,
  ...compressionCalls,
  ...cylinderCalls,
  ...fastenerCalls,
  ...filmCalls,
  ...fitCalls,
  ...motionCalls,
  ...oddReadingCalls,
  ...oilCalls,
  ...planCalls,
  ...plotCalls,
  ...ringCalls,
  ...sheetCalls,
  ...shedCalls,
  ...stackCalls,
  ...teachingCalls,
  ...timingCalls,
  ...uncertaintyCalls,
  ...valveCalls,
  ...viscosityCalls,
};
const byCards = callsOfCards(core);

/**
 * How every exported function is called: soundly, and once for each cause that
 * its documentation says it refuses. A new function that is missing here fails
 * the tests; units are covered by their table.
 */
export const registry: Readonly<Record<string, Calls>> = Object.fromEntries(
  [...new Set([...Object.keys(byHand), ...Object.keys(byCards)])].map((name) => [
    name,
    together(byCards[name], byHand[name]),
  ]),
);

function together(cards: Calls | undefined, hand: Calls | undefined): Calls {
  if (!cards || !hand) return (cards ?? hand) as Calls;
  return {
    ...hand,
    sound: [...hand.sound, ...cards.sound],
    provoked: { ...cards.provoked, ...hand.provoked },
  };
}
