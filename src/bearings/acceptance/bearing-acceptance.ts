import type { Force } from '../../quantities/index.js';
import { largestOf } from '../../quantities/internal.js';
import { type CheckedBearing, warmFilmOf } from '../film/heat-balance.js';
import type {
  AcceptanceCheck,
  BearingAcceptance,
  BearingToAccept,
  FilmsSideBySide,
} from './acceptance-types.js';
import { pressureOf } from './bearing-pressure.js';
import {
  particleCheck,
  peakCheck,
  pressureCheck,
  roughnessCheck,
  settled,
  supplyCheck,
  temperatureCheck,
  unknown,
} from './checks.js';
import { filmsAt, hottestOf, loadsOn } from './films.js';
import { type CheckedAcceptance, guardAcceptance } from './guard-acceptance.js';
import { inDoubt, underMore } from './load-doubt.js';
import { supplyOf } from './oil-supply.js';
import type { ShellLimits } from './shell-material.js';
import {
  TRUMPLER,
  trumplerFilm,
  trumplerHottest,
  trumplerLoad,
  trumplerStart,
} from './trumpler.js';

/**
 * Whether a bearing is good: its metal carries the pressure and stands the heat, its film is thicker than the
 * roughness and than the dirt in the oil, and as much oil comes in as leaves it. All of that must hold. What
 * was not given is unknown, and unknown is never good; without the metal of the shell a bearing is not accepted.
 *
 * Under the loads of a cycle the film is that of the orbit; the steady films under the mean and under the most
 * of the load stand beside it. A clearance that is a span is judged at both ends, each check at the worse. The
 * temperature is that of the oil on its way out, the hottest of the films computed, against what the metal stands; that
 * is no running temperature. Pressure is load over journal times length.
 *
 * Where the loads are in doubt, what holds only as they were given is too near to tell, and unknown.
 *
 * Each check holds only for a round, stiff bearing that is full of oil. It says nothing about knock.
 *
 * @param bearing - the bearing, its oil, its metal, its surfaces, the dirt and the supply, as far as they are known
 * @returns whether it is accepted, the checks that decide, and the films side by side
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, a span is reversed, the oil is not one, the metal
 * is unknown, the supply is neither a pump nor a splash, the loads do not go once around the cycle, or they are
 * those of another speed
 * @see Source: `shellLimits`, `filmRegime`, `supplyFinding`, `bigEndOrbit` and `trumplerFilm` name theirs
 * @example
 * ```ts
 * const { outcome, because } = bearingAcceptance({
 *   journal: inch(1.625), length: inch(1), clearance: { min: thou(1.4), max: thou(2) },
 *   speed: rpm(1800), load: lbf(400), inlet: celsius(70),
 *   oil: {
 *     line: [
 *       { temperature: celsius(40), viscosity: centistokes(100) },
 *       { temperature: celsius(100), viscosity: centistokes(11.1) },
 *     ],
 *     density: kilogramPerCubicMetre(885),
 *   },
 *   material: 'tin babbitt', roughness: { journal: micrometre(0.3), shell: micrometre(0.5) },
 *   duty: 'general', largestParticle: micrometre(5), supply: { by: 'splash' },
 * });
 * outcome; // "undecided"
 * because.map(({ check }) => check); // ["oil supply"]
 * ```
 */
export function bearingAcceptance(bearing: BearingToAccept): BearingAcceptance {
  const checked = guardAcceptance(bearing);
  const { checks: given, ...rest } = judged(checked, bearing);
  const checks = inDoubt(given, bearing.loadDoubt, (more) => {
    const { load, loads } = underMore({ load: bearing.load, loads: checked.loads }, more);
    return judged({ ...checked, ...(loads && { loads }) }, { ...bearing, load }).checks;
  });
  return { ...verdictOf(checks), checks, ...rest };
}

/** Every check, at the worse end of the clearance, under one set of loads. */
function judged(
  { ends, loads, combined, metal }: CheckedAcceptance,
  bearing: BearingToAccept,
): Omit<BearingAcceptance, 'outcome' | 'because'> {
  const load = loadsOn(bearing.load, loads);
  const films = ends.map((end) => filmsAt(end, load, loads));
  const need = largestOf(films.map(({ sideFlow }) => sideFlow));
  const supply = supplyOf(need, bearing.supply);
  const each = ends.map((end, i) => [
    ...metalChecks(end, load, films[i] as FilmsSideBySide, metal),
    roughnessCheck(films[i] as FilmsSideBySide, combined, bearing),
    particleCheck(films[i] as FilmsSideBySide, bearing),
    ...(bearing.rule === undefined ? [] : byTrumpler(end, load.peak, bearing.startUpLoad)),
  ]);
  const [first = [], second = first] = each;
  const checks = [
    ...first.map((check, i) => worse(check, second[i] ?? check)),
    supplyCheck(supply),
  ];
  const [thinnest] = [...films].sort((a, b) => (a.film ?? 0) - (b.film ?? 0));
  return { checks, load, films: thinnest as FilmsSideBySide, supply };
}

/** What the metal of the shell carries and stands; without the metal, only that it is unknown. */
function metalChecks(
  bearing: CheckedBearing,
  load: BearingAcceptance['load'],
  films: FilmsSideBySide,
  metal: ShellLimits | undefined,
): readonly AcceptanceCheck[] {
  if (metal === undefined) return [unknown('material', 'the metal of the shell, or its limits')];
  return [
    pressureCheck('mean pressure', pressureOf(load.mean, bearing), metal.meanPressure),
    peakCheck(pressureOf(load.peak, bearing), metal),
    temperatureCheck('film temperature', hottestOf(films), metal.temperature, metal.basis),
  ];
}

/** Trumpler's criteria: film and heat at twice the load, and the pressure at the start. */
function byTrumpler(
  bearing: CheckedBearing,
  peak: Force,
  start: Force | undefined,
): readonly AcceptanceCheck[] {
  const warm = warmFilmOf({ ...bearing, load: (trumplerLoad * peak) as Force });
  const least = trumplerFilm(bearing.journal);
  return [
    settled('least film by Trumpler', 'length', warm.film.film, { min: least }, TRUMPLER),
    temperatureCheck('temperature by Trumpler', warm, trumplerHottest(), TRUMPLER),
    start === undefined
      ? unknown('start-up pressure by Trumpler', 'the load while the shaft starts to turn')
      : settled(
          'start-up pressure by Trumpler',
          'pressure',
          pressureOf(start, bearing),
          { max: trumplerStart() },
          TRUMPLER,
        ),
  ];
}

const RANK = { fails: 0, unknown: 1, caution: 2, holds: 3 } as const;

/** The worse of one check at both ends of the clearance. */
function worse(a: AcceptanceCheck, b: AcceptanceCheck): AcceptanceCheck {
  if (RANK[a.outcome] !== RANK[b.outcome]) return RANK[a.outcome] < RANK[b.outcome] ? a : b;
  return (b.finding?.margin ?? 0) < (a.finding?.margin ?? 0) ? b : a;
}

function verdictOf(
  checks: readonly AcceptanceCheck[],
): Pick<BearingAcceptance, 'outcome' | 'because'> {
  const failing = checks.filter(
    ({ outcome, check }) => outcome === 'fails' || check === 'material',
  );
  if (failing.length > 0) return { outcome: 'not accepted', because: failing };
  const open = checks.filter(({ outcome }) => outcome === 'unknown');
  if (open.length > 0) return { outcome: 'undecided', because: open };
  return { outcome: 'accepted', because: checks };
}
