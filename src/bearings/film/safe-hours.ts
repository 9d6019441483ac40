import type { Basis, SizeOrSpan } from '../../judging/index.js';
import { guardFields, guardSpan, namedFrom } from '../../judging/internal.js';
import { type TimeToDilution, timeToDilution } from '../../oil/index.js';
import { dilutionLimit, dilutionThresholds, leakFlow, pouredVolume } from '../../oil/internal.js';
import type { Flow, Rate, Volume, VolumeFraction } from '../../quantities/index.js';
import type { DilutedBearing } from './max-fuel-dilution.js';
import {
  type FilmDoubt,
  type MaxDilutionSpan,
  maxFuelDilutionSpan,
} from './max-fuel-dilution-span.js';

/** A leak into a sump of which the fuel is known. */
export interface KnownSump {
  /** Clean oil in the sump, without any fuel [m³]. */
  readonly oil: Volume;
  /** Fuel in the oil now, at the most it can be; none only if the oil was just changed [m³]. */
  readonly fuel: Volume;
  /** Fuel that runs in while the engine runs, or the span it lies in; its most counts [m³/s]. */
  readonly leak: SizeOrSpan<Flow>;
  /** Fuel that runs in while the engine stands; by default as while it runs [m³/s]. */
  readonly standingLeak?: SizeOrSpan<Flow>;
  /** Share of the fuel in the oil that evaporates in a time while the engine runs hot; nothing by default, and never while it stands [1/s]. */
  readonly evaporation?: Rate;
}

/** How long a leaking engine may run, and how long it may stand before it may not be started. */
export interface SafeHours {
  /** Time of running to whichever fraction comes first. */
  readonly running: TimeToDilution;
  /** Time of standing, the fuel cock open, to the same fraction: nothing evaporates then. */
  readonly standing: TimeToDilution;
  /** That fraction: none if the film may be too thin with clean oil [-]. */
  readonly fraction: VolumeFraction;
  /** What sets it: this bearing's film, or the limit on fuel in oil. */
  readonly setBy: 'film' | 'limit';
  /** What fuel the film stands, as a span; its least end counts. */
  readonly stand: MaxDilutionSpan;
  /** The limit on fuel in oil, and who set it. */
  readonly limit: {
    /** Fuel by volume above which an engine is not run, whatever its film [-]. */
    readonly fraction: VolumeFraction;
    /** Who says so. */
    readonly basis: Basis;
  };
}

const ENGINE = ['sump', 'bearing', 'limit', 'doubt'] as const;
const SUMP = ['oil', 'fuel', 'leak', 'standingLeak', 'evaporation'] as const;

/**
 * How long a leak may last: until the film of this bearing may no longer stand the fuel, or until the
 * limit on fuel in oil, whichever comes first. Every span counts at its bad end: the leak at its most, the film at the
 * least of {@link maxFuelDilutionSpan}. A sump with fuel in it has the less time left, and none if it is past the
 * fraction. The fuel in the oil must be said: unknown oil is not clean oil.
 *
 * Running and standing are two numbers. Most needles leak while the engine stands with the fuel cock open, and cold
 * oil gives no fuel off. While it stands a leak may also flood a cylinder: `hydraulicLockHours`.
 *
 * Stop, drain and mend the leak; this only tells how urgent it is. Fuel vapour in a crankcase can ignite:
 * keep flames, sparks and switches away, and ventilate.
 *
 * @param engine - the leak into the sump, the bearing that the oil must carry, a limit of your own, and how far
 * the sizes of the bearing are in doubt
 * @returns times to the fraction that comes first, what sets it, and both fractions
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed,
 * the bearing is too short for its journal, the clearance leaves no room to turn, the oil is not one, or the fuel is
 * not one
 * @see Source: as `timeToDilution` and `maxFuelDilutionSpan`; the limit by default is common practice
 * @example
 * ```ts
 * const { running, setBy } = safeHours({
 *   sump: { leak: dripFlow({ drops: 6, time: minute(1) }), oil: quartUS(1), fuel: mL(0) },
 *   bearing: {
 *     journal: inch(1.625), length: inch(1), clearance: thou(1.6), speed: rpm(1800), load: lbf(400),
 *     inlet: celsius(70),
 *     oil: {
 *       line: [
 *         { temperature: celsius(40), viscosity: centistokes(100) },
 *         { temperature: celsius(100), viscosity: centistokes(11.1) },
 *       ],
 *       density: kilogramPerCubicMetre(885),
 *     },
 *     roughness: { journal: micrometre(0.3), shell: micrometre(0.5) },
 *   },
 * });
 * setBy; // "limit"
 * running.reached && format(running.time, hour); // "2.8 h"
 * ```
 */
export function safeHours(engine: {
  /** The oil, the fuel in it, the leak, and what evaporates. */
  readonly sump: KnownSump;
  /** The bearing that the oil must carry. */
  readonly bearing: DilutedBearing;
  /** A limit of your own on fuel by volume; by default 5 %, a rule of thumb [-]. */
  readonly limit?: VolumeFraction;
  /** How far the sizes of the bearing are in doubt; by default as in `maxFuelDilutionSpan`. */
  readonly doubt?: FilmDoubt;
}): SafeHours {
  guardFields('engine', engine, ENGINE);
  guardFields('sump', engine.sump, SUMP);
  const stand = namedFrom(
    () => ({ '': 'bearing', bearing: 'bearing', doubt: 'doubt' }),
    () => maxFuelDilutionSpan(engine.bearing, engine.doubt),
  );
  const limit = limitOf(engine.limit);
  const { fraction, setBy } = governingLimit(stand.span.min, limit.fraction);
  const none = 0 as Rate;
  const { oil, leak, standingLeak = leak, evaporation = none } = engine.sump;
  // Unknown oil is not clean oil.
  const fuel = pouredVolume('sump.fuel', engine.sump.fuel);
  const runs = guardSpan('sump.leak', leak, leakFlow, 'flow').max;
  const stands = guardSpan('sump.standingLeak', standingLeak, leakFlow, 'flow').max;
  const until = (flow: Flow, lost: Rate) =>
    namedFrom(
      () => ({ '': 'sump', sump: 'sump' }),
      () => timeToDilution({ oil, fuel, leak: flow, evaporation: lost, fraction }),
    );
  return {
    running: until(runs, evaporation),
    standing: until(stands, none),
    fraction,
    setBy,
    stand,
    limit,
  };
}

function limitOf(own: VolumeFraction | undefined): SafeHours['limit'] {
  if (own !== undefined) {
    return { fraction: dilutionLimit('limit', own), basis: { kind: 'specified' } };
  }
  const { thresholds, basis } = dilutionThresholds({});
  return { fraction: thresholds.critical, basis };
}

/** Whether a film gives way first, or the limit is reached, and at what fraction; both at the least they can be. */
function governingLimit(
  film: VolumeFraction,
  limit: VolumeFraction,
): Pick<SafeHours, 'fraction' | 'setBy'> {
  return film <= limit ? { fraction: film, setBy: 'film' } : { fraction: limit, setBy: 'limit' };
}
