import { CYCLE } from '../../motion/internal.js';
import type { Angle, Length } from '../../quantities/index.js';
import { driftOf } from './drift.js';
import { finiteMobility } from './finite-mobility.js';
import { guardBigEnd } from './guard-big-end.js';
import { at, type LoadTable, nowhere, seek, tableOf } from './load-table.js';
import { shortMobility } from './mobility.js';
import { onceAround } from './once-around.js';
import { orbitRangeOf } from './orbit-range.js';
import type { BigEnd, BigEndOrbit, LeastFilm } from './orbit-types.js';
import { type Record, recordOf } from './record.js';
import { settle } from './settle.js';

/** Even angles of the path: one to every two degrees. */
const EVEN = 360;

/**
 * The path of a crankpin in its big end over a four-stroke cycle, by the mobility method: the
 * pin drifts as its mobility under the load lets it, in a frame that turns halfway between pin and shell. Followed
 * in the frame of the rod, where the shells stand still, until each cycle is as the one before.
 *
 *     d(x, y)/dt = load * (radial clearance / radius)² / (viscosity * L * D) * mobility + turning × (x, y)
 *     turning = (speed + rodSpeed) / 2
 *
 * The bearing is round, rigid, full of oil and without grooves; its oil is as thick everywhere. `range` says
 * how far the result may be trusted: the mobility is mapped for lengths from a tenth of the diameter to
 * twice, and held at its edges beyond. A load that turns at half the speed of the pin is carried by no film,
 * and never settles. A loose bearing may show a thicker least film than a tight one, and is no better for
 * it: judge clearance by flow, temperature and `greatestApproach`, the speed with which the pin strikes at
 * the shell.
 *
 * @param bigEnd - pin, length, clearance, viscosity and loads; a film of interest; how exact
 * @returns the path, its thinnest film and fastest approach; or that there is no film, because the shaft
 * does not turn; or that the path did not settle
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, or the loads do not go once around the cycle
 * @see Source: J. F. Booker, the mobility method, from memory; derived again in the tests. The mobility of a
 * finite bearing is mapped from solutions of the Reynolds equation
 * @example
 * ```ts
 * const crank = { stroke: inch(3.25), rodLength: inch(6) };
 * const loads = bigEndLoads({
 *   ...crank, bore: inch(3), speed: rpm(1800),
 *   pistonMass: kilogram(0.45), smallEndMass: kilogram(0.18), bigEndMass: kilogram(0.42),
 *   gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
 * });
 * const orbit = bigEndOrbit({
 *   journal: inch(1.625), length: inch(1), clearance: inch(0.0017),
 *   viscosity: millipascalSecond(15), loads,
 * });
 * orbit.outcome === 'settled' && format(orbit.leastFilm.film, micrometre); // "5.4 µm"
 * ```
 */
export function bigEndOrbit(bigEnd: BigEnd): BigEndOrbit {
  const { journal, length, clearance, viscosity, loads, film, thinnerThan, tolerance } =
    guardBigEnd(bigEnd);
  const { speed } = loads;
  if (speed === 0) return { outcome: 'no film' };
  const radial = clearance / 2;
  const table = tableOf(loads);
  const readiness = (clearance / journal) ** 2 / (viscosity * length * journal * speed);
  const mobility = (film === 'finite' ? finiteMobility : shortMobility)(length / journal);
  const drift = driftOf(table, readiness, mobility);
  const record = recordOf(EVEN, radial, (thinnerThan ?? 0) / radial);
  const { outcome, cycles, steps } = settle(3 * tolerance, (start, slow) => {
    record.begin(start.x, start.y);
    const ofAStep = slow ? tolerance / 1000 : tolerance / 3;
    return onceAround(drift, start, { even: EVEN, tolerance: ofAStep }, record.onPlace);
  });
  if (outcome !== 'settled') return { outcome: 'not settled', because: outcome, cycles, steps };
  return {
    outcome,
    leastFilm: leastFilmOf(record, table),
    ...(thinnerThan !== undefined && { shareThinner: record.shareThinner() }),
    greatestApproach: record.approach(speed),
    path: record.path(),
    cycles,
    steps,
    range: orbitRangeOf(film, length / journal, record.least().film),
  };
}

/** When and where the film is thinnest: the pin leans that way. */
function leastFilmOf(record: Record, { angle: knots, rodAngle }: LoadTable): LeastFilm {
  const { film, angle, x, y } = record.least();
  const place = nowhere();
  seek(knots, angle, place);
  const onShell = Math.atan2(y, x);
  const throwAngle = angle + at(rodAngle, place);
  return {
    film: (record.radial * film) as Length,
    crankAngle: (angle % CYCLE) as Angle,
    onShell: onShell as Angle,
    onPin: withinHalfATurn(onShell - throwAngle) as Angle,
  };
}

const withinHalfATurn = (angle: number): number =>
  angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
