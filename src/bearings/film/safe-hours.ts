import type { Basis } from '../../judging/index.js';
import { guardFields, namedFrom } from '../../judging/internal.js';
import { type SumpLeak, type TimeToDilution, timeToDilution } from '../../oil/index.js';
import { dilutionLimit, dilutionThresholds } from '../../oil/internal.js';
import type { VolumeFraction } from '../../quantities/index.js';
import { type DilutedBearing, type FilmStand, maxFuelDilution } from './max-fuel-dilution.js';

/** How long a leaking engine may run. */
export interface SafeHours {
  /** Time to whichever fraction comes first. */
  readonly until: TimeToDilution;
  /** That fraction: none if the film is too thin with clean oil [-]. */
  readonly fraction: VolumeFraction;
  /** What sets it: this bearing's film, or the limit on fuel in oil. */
  readonly setBy: 'film' | 'limit';
  /** What fuel the film stands. */
  readonly stand: FilmStand;
  /** The limit on fuel in oil, and who set it. */
  readonly limit: {
    /** Fuel by volume above which an engine is not run, whatever its film [-]. */
    readonly fraction: VolumeFraction;
    /** Who says so. */
    readonly basis: Basis;
  };
}

const ENGINE = ['sump', 'bearing', 'limit'] as const;
const SUMP = ['leak', 'oil', 'fuel', 'evaporation'] as const;

/**
 * How long a leak may last: until the film of this bearing no longer stands the fuel, or until the
 * limit on fuel in oil, whichever comes first. A sump with fuel in it has the less time left, and none if it
 * is past the fraction.
 *
 * Stop, drain and mend the leak; this only tells how urgent it is. Fuel vapour in a crankcase can ignite:
 * keep flames, sparks and switches away, and ventilate.
 *
 * @param engine - the leak into the sump, the bearing that the oil must carry, and a limit of your own
 * @returns time to the fraction that comes first, what sets it, and both fractions
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, the oil is not one, or the fuel is not one
 * @see Source: as `timeToDilution` and `maxFuelDilution`; the limit by default is common practice
 * @example
 * ```ts
 * const { until, setBy } = safeHours({
 *   sump: { leak: dripFlow({ drops: 6, time: minute(1) }), oil: quartUS(1) },
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
 * until.reached && format(until.time, hour); // "2.8 h"
 * ```
 */
export function safeHours(engine: {
  /** The leak, the oil, the fuel in it, and what evaporates. */
  readonly sump: SumpLeak;
  /** The bearing that the oil must carry. */
  readonly bearing: DilutedBearing;
  /** A limit of your own on fuel by volume; by default 5 %, a rule of thumb [-]. */
  readonly limit?: VolumeFraction;
}): SafeHours {
  guardFields('engine', engine, ENGINE);
  guardFields('sump', engine.sump, SUMP);
  const stand = namedFrom(
    () => ({ '': 'bearing', bearing: 'bearing' }),
    () => maxFuelDilution(engine.bearing),
  );
  const limit = limitOf(engine.limit);
  const { fraction, setBy } = governingLimit(stand, limit.fraction);
  const until = namedFrom(
    () => ({ '': 'sump', sump: 'sump' }),
    () => timeToDilution({ ...engine.sump, fraction }),
  );
  return { until, fraction, setBy, stand, limit };
}

function limitOf(own: VolumeFraction | undefined): SafeHours['limit'] {
  if (own !== undefined) {
    return { fraction: dilutionLimit('limit', own), basis: { kind: 'specified' } };
  }
  const { thresholds, basis } = dilutionThresholds({});
  return { fraction: thresholds.critical, basis };
}

/** Whether a film gives way first, or the limit is reached, and at what fraction. */
export function governingLimit(
  stand: FilmStand,
  limit: VolumeFraction,
): Pick<SafeHours, 'fraction' | 'setBy'> {
  const film = fractionStood(stand);
  return film <= limit ? { fraction: film, setBy: 'film' } : { fraction: limit, setBy: 'limit' };
}

/** The fuel that a film stands: none, a fraction, or all of it. */
function fractionStood(stand: FilmStand): VolumeFraction {
  switch (stand.outcome) {
    case 'stands':
      return stand.fraction;
    case 'too thin when clean':
      return 0 as VolumeFraction;
    case 'stands anything':
      return 1 as VolumeFraction;
  }
}
