import type { BigEndOrbit } from '../bearings/index.js';
import { guardLoads, oilFilm } from '../bearings/internal.js';
import { bigEndOrbitLayout } from '../bearings/layouts.js';
import {
  diametralClearance,
  guardFields,
  guardLayout,
  guardText,
  namedFrom,
  say,
  sayFilm,
} from '../judging/internal.js';
import type { LoadDiagram } from '../motion/index.js';
import {
  type Angle,
  degree,
  type Force,
  type Length,
  RebuildInputError,
  tradeUnit,
  valueIn,
} from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { crankDegrees, type Follow, filmPlane, loadPlane } from './cycle-planes.js';
import { type Drawn, guardPicture, type PictureOptions } from './options.js';
import { ORBIT_MARKS, orbitCircle } from './orbit-circle.js';
import { drawPicture, legend, note } from './picture.js';

/** A big end, its loads and its orbit. */
export interface ShownBigEnd {
  /** Its name on the bench. */
  readonly name: string;
  /** The path of the journal, as `bigEndOrbit` gives it. */
  readonly orbit: BigEndOrbit;
  /** The loads that it was found for, as `bigEndLoads` gives them. */
  readonly loads: LoadDiagram;
  /** The diametral clearance that it was found for [m]. */
  readonly clearance: Length;
  /** The film that its surfaces need, to be drawn as a line [m]. */
  readonly needed?: Length;
}

const SHOWN = ['name', 'orbit', 'loads', 'clearance', 'needed'] as const;

/**
 * Draws a big end over the cycle: its load, its thinnest film, and the path of the journal inside its clearance circle.
 *
 * @param bigEnd - its name, loads, clearance and orbit
 * @param options - units, width and ids
 * @returns an SVG image, as text
 * @throws {RebuildInputError} when a field is misspelt, the name is empty, the orbit is not what `bigEndOrbit` gives, it
 * did not settle, the loads do not go once around the cycle, a value is not finite or out of range, the unit system is
 * unknown, the width is out of range, or the id is not one
 * @example
 * ```ts
 * const crank = { stroke: inch(3.25), rodLength: inch(6) };
 * const loads = bigEndLoads({
 *   ...crank, bore: inch(3), speed: rpm(1800), pistonMass: kilogram(0.45),
 *   smallEndMass: kilogram(0.18), bigEndMass: kilogram(0.42),
 *   gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
 * });
 * const clearance = inch(0.0017);
 * const orbit = bigEndOrbit({
 *   journal: inch(1.625), length: inch(1), clearance, viscosity: millipascalSecond(15), loads,
 * });
 * const picture = bigEndPicture({ name: 'rod 1', orbit, loads, clearance }, { units: 'inch' });
 * picture.includes('clearance circle'); // true
 * ```
 */
export function bigEndPicture(bigEnd: ShownBigEnd, options: PictureOptions): string {
  const sound = guardShownBigEnd(bigEnd);
  const drawn = guardPicture(options, 'big-end-picture');
  const { width, units } = drawn;
  const { name, orbit, clearance, needed } = sound;
  const told = sayBigEnd(sound, drawn);
  const circle = `The path of the middle of the journal in its clearance circle, ${say(clearance, 'length', units)} across, seen along the shaft; the rod points up, and the crank turns to the right at top centre. Where the path meets the circle, metal meets metal.`;
  return drawPicture(
    {
      title: `${name}: load, film and orbit over the cycle`,
      told: [...told, circle],
      strips: [
        loadPlane(sound.loads, drawn),
        filmPlane(orbit, needed, drawn),
        ...(needed === undefined
          ? []
          : [
              legend(
                [{ label: `needed: ${sayFilm(needed, units)}`, place: 0, as: 'limit' }],
                width,
              ),
            ]),
        note('orbit in the clearance circle', width),
        legend(
          [
            ...ORBIT_MARKS.map((degrees, place) => ({
              label: `at ${degrees}°`,
              place,
              as: 'mark' as const,
            })),
          ],
          width,
        ),
        orbitCircle(orbit, width),
        note(circle, width),
        ...told.map((text) => note(text, width)),
        note('The loads are computed, not measured. The dot marks the thinnest film.', width),
      ],
    },
    drawn,
  );
}

type Sound = Omit<ShownBigEnd, 'orbit'> & { readonly orbit: Follow };

function guardShownBigEnd(bigEnd: ShownBigEnd): Sound {
  guardFields('bigEnd', bigEnd, SHOWN);
  const { orbit, needed } = bigEnd;
  guardLayout('bigEnd.orbit', orbit, bigEndOrbitLayout, 'bigEndOrbit');
  if (orbit.outcome !== 'settled') {
    throw new RebuildInputError({
      parameter: 'bigEnd.orbit.outcome',
      value: orbit.outcome,
      expected: 'settled',
      hint: 'There is no path to draw: the journal did not come back to where it started.',
    });
  }
  return {
    name: guardText('bigEnd.name', bigEnd.name),
    orbit,
    loads: namedFrom(
      () => ({ loads: 'bigEnd.loads' }),
      () => guardLoads(bigEnd.loads),
    ),
    clearance: diametralClearance('bigEnd.clearance', bigEnd.clearance),
    ...(needed !== undefined && { needed: oilFilm('bigEnd.needed', needed) }),
  };
}

/** The thinnest film and the greatest load, with their angles, and why these differ. */
function sayBigEnd({ orbit, loads, needed }: Sound, { units }: Drawn): readonly string[] {
  const { film, crankAngle } = orbit.leastFilm;
  const forces = loads.loads.map(({ along, across }) => Math.hypot(along, across));
  const most = forces.indexOf(largestOf(forces));
  const unit = tradeUnit('force', units);
  const load = `${valueIn((forces[most] ?? 0) as Force, unit).toFixed(0)} ${unit.symbol}`;
  const wanted = needed === undefined ? '' : `; its surfaces need ${sayFilm(needed, units)}`;
  const loadedMost = (loads.loads[most]?.crankAngle ?? 0) as Angle;
  return [
    `Greatest load ${load} at ${crankDegrees(loadedMost)}°; thinnest film ${sayFilm(film, units)} at ${crankDegrees(crankAngle)}° past the firing top centre${wanted}.`,
    `${sayLag(crankAngle - loadedMost)} A film does not follow its load at once: oil takes time to be squeezed out, and how much is drawn in hangs on how fast the load turns. So it need not be thinnest where the load is greatest.`,
  ];
}

/** How far round the cycle the thinnest film is from the greatest load, the shorter way. */
function sayLag(apart: number): string {
  const behind = (((valueIn(apart as Angle, degree) % 720) + 720) % 720).toFixed(0);
  const degrees = Number(behind) % 720;
  if (degrees === 0) return 'Here the film is thinnest where the load is greatest.';
  return degrees <= 360
    ? `The film is thinnest ${degrees}° of crank angle after the greatest load.`
    : `The film is thinnest ${720 - degrees}° of crank angle before the greatest load.`;
}
