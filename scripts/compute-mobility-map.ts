import { squeezeFilm } from '../src/bearings/film/squeeze-film.js';
import { MOBILITY_MAP, MOBILITY_ORDER, offMap } from '../src/bearings/orbit/mobility-map.js';

/** Coefficients by degree ahead, aside and in length, of both logarithms. */
export type MobilityMap = Readonly<
  Record<'along' | 'across', readonly (readonly (readonly number[])[])[]>
>;

/** Places that the map is made from. */
const NODES = { ahead: 12, aside: 10, length: 7 } as const;

/** The coefficients of the mobility map, from films squeezed at the Chebyshev nodes. */
export function computeMobilityMap(placesAround: number): MobilityMap {
  const ratios = count(NODES.ahead).map((i) =>
    count(NODES.aside).map((j) =>
      count(NODES.length).map((k) => {
        const x = 1 - Math.exp(-offMap(node(i, NODES.ahead), MOBILITY_MAP.ahead));
        const aside = Math.exp(-offMap(node(j, NODES.aside), MOBILITY_MAP.aside));
        const y = -Math.sqrt((1 - aside) * (1 - x * x));
        const lengthToDiameter = 10 ** offMap(node(k, NODES.length), MOBILITY_MAP.length);
        return overShort(x, y, lengthToDiameter, placesAround);
      }),
    ),
  );
  const coefficientsOf = (key: 'along' | 'across') =>
    count(MOBILITY_ORDER.ahead).map((a) =>
      count(MOBILITY_ORDER.aside).map((b) =>
        count(MOBILITY_ORDER.length).map((c) => {
          const terms = ratios.flatMap((plane, i) =>
            plane.flatMap((line, j) =>
              line.map(
                (ratio, k) =>
                  ratio[key] *
                  wave(a, i, NODES.ahead) *
                  wave(b, j, NODES.aside) *
                  wave(c, k, NODES.length),
              ),
            ),
          );
          return terms.reduce((sum, term) => sum + term, 0);
        }),
      ),
    );
  return {
    along: withoutSmall(coefficientsOf('along')),
    across: withoutSmall(coefficientsOf('across')),
  };
}

/** Coefficients that come to less than this are left out at the ends of rows. */
const SMALL = 1e-3;

function withoutSmall(map: MobilityMap['along']): MobilityMap['along'] {
  const rows = map.map((plane) =>
    withoutEnd(
      plane.map((row) => withoutEnd(row, (value) => Math.abs(value) >= SMALL)),
      (row) => row.length > 0,
    ),
  );
  return withoutEnd(rows, (plane) => plane.length > 0);
}

const withoutEnd = <T>(list: readonly T[], counts: (item: T) => boolean): readonly T[] =>
  list.slice(0, list.findLastIndex(counts) + 1);

const count = (length: number) => Array.from({ length }, (_, n) => n);
const node = (n: number, of: number) => Math.cos((Math.PI * (n + 0.5)) / of);
const wave = (degree: number, n: number, of: number) =>
  ((degree === 0 ? 1 : 2) / of) * Math.cos((Math.PI * degree * (n + 0.5)) / of);

/** Logarithms of the mobility along and across the load, over those of the short bearing. */
export function overShort(x: number, y: number, lengthToDiameter: number, placesAround: number) {
  const eccentricity = Math.hypot(x, y);
  // The load, seen from the narrowest gap, and the way that the journal goes under it.
  const load = Math.acos(Math.max(-1, Math.min(1, x / eccentricity)));
  const carried = (way: number) => {
    const { towards, across } = squeezeFilm(eccentricity, lengthToDiameter, way, placesAround);
    return { force: Math.hypot(towards, across), at: Math.atan2(across, towards) };
  };
  let [low, high] = [0, Math.PI];
  let way = load;
  let film = carried(way);
  for (let step = 0; step < 50 && Math.abs(film.at - load) > 1e-6; step++) {
    if (film.at < load) low = way;
    else high = way;
    // The push turns with the way about as far: a step by the difference, if that stays between.
    const guess = way + (load - film.at);
    way = guess > low && guess < high && step % 4 !== 3 ? guess : (low + high) / 2;
    film = carried(way);
  }
  const mobility = lengthToDiameter ** 2 / (6 * film.force);
  return {
    along: Math.log((mobility * Math.cos(way - load) * Math.PI) / (1 - x) ** 2.5),
    across: Math.log((mobility * Math.sin(way - load) * Math.PI ** 2) / (-4 * y * (1 - x) ** 1.5)),
  };
}
