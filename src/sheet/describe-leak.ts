import type { DilutionDriver, MaxDilutionSpan } from '../bearings/index.js';
import type { Span, Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import {
  format,
  hour,
  mL,
  percentByVolume,
  type UnitSystem,
  type Volume,
  type VolumeFraction,
} from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { FilmReport } from './inspect-film.js';
import type { LeakReport, LeftUntil } from './inspect-leak.js';

/** How much fuel the film tolerates: a span, and what it hangs on. */
export function describeTolerance(
  tolerance: MaxDilutionSpan,
  film: FilmReport,
  wording: Wording,
): string {
  const { asGiven, drivers, span, basis } = tolerance;
  if (asGiven.outcome === 'stands anything' && span.min === span.max) {
    return 'any amount that was tried, at this light load.';
  }
  const given =
    asGiven.outcome === 'too thin when clean'
      ? 'none with the numbers as given'
      : `${asGiven.outcome === 'stands' ? vol(asGiven.fraction) : 'any amount'} by ASTM D7152 with the numbers as given`;
  const each = drivers
    .filter(({ span: moved }) => moved.min < moved.max)
    .map(({ driver, span: moved }) => `${DRIVERS[driver]} (${ends(moved)})`);
  const orbit = film.acceptance.films.orbit ? ', not around its orbit' : '';
  const steady = `under a steady ${say(film.load, 'force', wording.units)}${orbit}`;
  if (span.max === 0) {
    return `none ${steady}, whatever is moved as far as it is in doubt ${noteOf(basis, wording)}.`;
  }
  return `${ends(span)} ${steady}, not one figure: ${given}. It hangs on ${each.join(', ')}, each moved alone as far as it is in doubt ${noteOf(basis, wording)}; two at once move it further. Go by the least.`;
}

const DRIVERS: Readonly<Record<DilutionDriver['driver'], string>> = {
  inlet: 'the inlet temperature',
  length: 'the effective length',
  roughness: 'the roughness',
  clearance: 'the clearance',
  load: 'the load',
  law: 'the blending law',
};

const vol = (fraction: VolumeFraction) =>
  fraction === 0 ? 'none' : format(fraction, percentByVolume);
const ends = ({ min, max }: Span<VolumeFraction>) => {
  if (max === 0) return 'none';
  return `${min === 0 ? 'none' : formatNumber(min, percentByVolume)} to ${vol(max)}`;
};

/** The time left running and standing, the leak, and what prevents the worst: one line each. */
export function leakLines(
  leak: LeakReport,
  tolerance: MaxDilutionSpan | undefined,
  wording: Wording,
): readonly string[] {
  const { flow, left } = leak;
  if (flow.max === 0 && !leak.running) return ['Time left: no leak was measured (0 flow).'];
  const { units } = wording;
  const times = left.known
    ? [
        `Time left running: ${lasting(left.running, tolerance, units)}.`,
        `Time left standing with the fuel cock open: ${lasting(left.standing, tolerance, units)}.`,
      ]
    : [`Time left: unknown, ${BECAUSE[left.because]}; measure the oil before you run on it.`];
  return [...times, `The leak: ${leakOf(leak, wording)}`, `At every stop: ${PREVENTION}`];
}

const BECAUSE = {
  'no sample': 'as no used oil was measured, and oil that was not measured is not clean',
  'thickened sample': 'as the sample does not show what fuel is in it',
} as const;

const PREVENTION =
  'shut the fuel cock and let the engine run until it stops. Before you crank, take the plugs out and turn the engine by hand, with the leads earthed away from the openings: fuel above a piston bends the rod.';

function leakOf({ flow, basis, running, evaporation, flooded }: LeakReport, wording: Wording) {
  const { units } = wording;
  const most = flow.min < flow.max ? ', of which the most counts' : '';
  const runs =
    running === undefined
      ? 'taken as the same while it runs'
      : `${say(running, 'flow', units)} while it runs`;
  const boils =
    evaporation > 0 ? 'fuel evaporates only while it runs hot' : 'no fuel is taken to evaporate';
  const night = format((flow.max * hour(12)) as Volume, mL, 0);
  const floods =
    flooded === undefined
      ? '; more than the space above a piston at top dead centre floods a cylinder'
      : `; a cylinder can be flooded after ${say(flooded, 'time', units)}`;
  return `${describeSpan(flow, 'flow', units)} while it stands ${noteOf(basis, wording)}${most}, and ${runs}; ${boils}. A night of 12 h with the fuel cock open lets in up to ${night}${floods}.`;
}

/** `2.8 h until the fuel limit`, `none, already past it`, `indefinitely`. */
function lasting(
  { until, setBy }: LeftUntil,
  tolerance: MaxDilutionSpan | undefined,
  units: UnitSystem,
): string {
  if (!until.reached) return 'no end, if the numbers of the sheet hold';
  if (until.time > 0) return `${say(until.time, 'time', units)} until ${END[setBy]}`;
  if (setBy !== 'film') return `none, already past ${END[setBy]}`;
  return tolerance?.asGiven.outcome === 'too thin when clean'
    ? 'none, even without a leak: the film is too thin in clean oil'
    : 'none that can be promised: within what is in doubt of the bearing its film may be too thin already';
}

const END: Readonly<Record<LeftUntil['setBy'], string>> = {
  film: 'the film may be too thin',
  limit: 'the fuel limit',
  viscosity: 'the limit on lost viscosity',
};
