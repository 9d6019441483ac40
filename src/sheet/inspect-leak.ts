import type { MaxDilutionSpan } from '../bearings/index.js';
import type { Basis, Span } from '../judging/index.js';
import {
  type DilutionOptions,
  fuelFraction,
  hydraulicLockHours,
  petrolDrop,
  type TimeToDilution,
  timeToDilution,
} from '../oil/index.js';
import { dilutionLimit, dilutionThresholds, flowOfDrops } from '../oil/internal.js';
import type {
  Flow,
  KinematicViscosity,
  Rate,
  Time,
  Volume,
  VolumeFraction,
} from '../quantities/index.js';
import type { SampleReport } from './inspect-sample.js';
import type { LeakAlone, LeakSheet, OilSheet } from './oil-sheet.js';

/** Findings on a leak. */
export interface LeakReport {
  /** Fuel that leaks into the oil while the engine stands, least and most [m³/s]. */
  readonly flow: Span<Flow>;
  /** Who set the flow, or the size of a drop if drops were counted. */
  readonly basis: Basis;
  /** Fuel that leaks while it runs, if the sheet says; otherwise it is taken as while it stands [m³/s]. */
  readonly running?: Flow;
  /** Share of the fuel in the oil that evaporates while it runs; none if the sheet does not say [1/s]. */
  readonly evaporation: Rate;
  /** How long the oil as it is now lasts, at the bad end of every span. */
  readonly left: TimeLeft;
  /** Time of standing until the leak can have flooded a cylinder; absent without a leak or a clearance volume [s]. */
  readonly flooded?: Time;
}

/** How long the oil lasts; nothing where it is not known what is in it. */
export type TimeLeft =
  | {
      /** The fuel that is in the oil now is unknown, so no time can be told. */
      readonly known: false;
      /** What is missing: a sample, or one that is not thicker than clean oil. */
      readonly because: 'no sample' | 'thickened sample';
    }
  | {
      /** The fuel that is in the oil now is known. */
      readonly known: true;
      /** While the engine runs. */
      readonly running: LeftUntil;
      /** While it stands with the fuel cock open: no fuel evaporates then. */
      readonly standing: LeftUntil;
    };

/** A time that is left, and what ends it. */
export interface LeftUntil {
  /** Time until the engine must not run. */
  readonly until: TimeToDilution;
  /** Fuel by volume that ends it [-]. */
  readonly fraction: VolumeFraction;
  /** What sets it: the film of the bearing, the limit on fuel, or that on the viscosity that is lost. */
  readonly setBy: 'film' | 'limit' | 'viscosity';
}

/** What the oil and the bearing say of the fuel that is in it and the fuel that may be. */
interface Known {
  readonly sample: SampleReport | undefined;
  readonly tolerance: MaxDilutionSpan | undefined;
}

/** A fraction that ends the time, and the fuel that counts against it. */
type End = Pick<LeftUntil, 'fraction' | 'setBy'> & { readonly now: VolumeFraction };

const DROP: Basis = {
  kind: 'common practice',
  rule: "a drop of 0.018 mL, clean petrol off an edge of 3 mm by Tate's law, to 0.05 mL, the pharmacy's 20 to the millilitre",
};

/** Inspects a leak: how fast it is, how long the oil lasts, and when a cylinder is flooded. */
export function inspectLeak(
  oil: OilSheet | LeakAlone,
  leak: LeakSheet,
  known: Known,
  options: DilutionOptions,
): LeakReport {
  const flow =
    'flow' in leak
      ? { min: leak.flow, max: leak.flow }
      : flowOfDrops(leak.drops, leak.dropVolume ?? petrolDrop);
  const measured = 'flow' in leak || leak.dropVolume !== undefined;
  const { running, evaporation = 0 as Rate, clearanceVolume } = leak;
  const { max } = flow;
  return {
    flow,
    basis: measured ? { kind: 'specified' } : DROP,
    ...(running !== undefined && { running }),
    evaporation,
    left: leftOf(oil, { standing: max, running: running ?? max, evaporation }, known, options),
    ...(clearanceVolume !== undefined &&
      max > 0 && { flooded: hydraulicLockHours({ clearanceVolume, leak: max }) }),
  };
}

function leftOf(
  oil: OilSheet | LeakAlone,
  leak: { readonly standing: Flow; readonly running: Flow; readonly evaporation: Rate },
  { sample, tolerance }: Known,
  options: DilutionOptions,
): TimeLeft {
  if (sample === undefined || !('line' in oil)) return { known: false, because: 'no sample' };
  if (!sample.dilution) return { known: false, because: 'thickened sample' };
  const ends = endsOf({ ...sample, dilution: sample.dilution }, tolerance, options);
  const first = (flow: Flow, evaporation: Rate): LeftUntil =>
    ends
      .map((end) => leftUntil(oil, flow, evaporation, end))
      .reduce((one, other) => (timeOf(other) < timeOf(one) ? other : one));
  return {
    known: true,
    running: first(leak.running, leak.evaporation),
    standing: first(leak.standing, 0 as Rate),
  };
}

/**
 * What can end the time. The limit on fuel is held against the most fuel that any law finds. Film and viscosity are
 * held against the fuel that by ASTM D7152 gives the viscosity that was measured, and are told by that law too.
 */
function endsOf(
  sample: SampleReport & Required<Pick<SampleReport, 'dilution'>>,
  tolerance: MaxDilutionSpan | undefined,
  options: DilutionOptions,
): readonly End[] {
  const now = Math.max(0, sample.fuel) as VolumeFraction;
  const { critical } = dilutionThresholds(options).thresholds;
  const viscosity = sample.thinning && thinnestOf(sample);
  return [
    { fraction: critical, setBy: 'limit', now: sample.dilution.finding.value },
    ...(tolerance ? [{ fraction: tolerance.span.min, setBy: 'film' as const, now }] : []),
    // A limit that hardly any oil reaches ends nothing.
    ...(viscosity && viscosity.fraction <= dilutionLimit.most ? [{ ...viscosity, now }] : []),
  ];
}

/** The fuel at which the oil has lost all the viscosity that it may. */
function thinnestOf({
  clean,
  thinning,
  fuelViscosity,
}: SampleReport): Pick<End, 'fraction' | 'setBy'> {
  const { min: fuel } = fuelViscosity.span;
  const least = clean * (1 - (thinning?.thresholds.critical ?? 0));
  const sample = Math.max(least, fuel) as KinematicViscosity;
  const fraction = fuelFraction({ law: 'ASTM D7152', oil: clean, fuel, sample });
  return { fraction, setBy: 'viscosity' };
}

function leftUntil(
  { sump }: OilSheet,
  leak: Flow,
  evaporation: Rate,
  { fraction, setBy, now }: End,
): LeftUntil {
  const past = now >= fraction;
  const fuel = (past ? 0 : (sump * now) / (1 - now)) as Volume;
  const until: TimeToDilution = past
    ? { reached: true, time: 0 as Time }
    : timeToDilution({ leak, oil: sump, fuel, evaporation, fraction });
  return { until, fraction, setBy };
}

const timeOf = ({ until }: LeftUntil): number =>
  until.reached ? until.time : Number.POSITIVE_INFINITY;
