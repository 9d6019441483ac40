import { chebyshevSum, polynomials } from '../../numerics/index.js';
import { mobilityMapData } from './mobility-map-data.js';

/**
 * The mobility of a finite bearing over that of a short one, as sums of Chebyshev polynomials whose
 * coefficients `npm run maps` computes with `squeezeFilm`. Three coordinates, each from -1 to
 * 1: how near the journal is to the shell where the load points, how near it is to the shell at all, and how
 * long the bearing is.
 */
export const MOBILITY_MAP = {
  /** From the far side, where the gap is 1.995 radial clearances, to the near one, where it is 0.002: -ln(1 - x). */
  ahead: [-0.69, 6.21],
  /** From the load's own line out to where the gap is narrow elsewhere: -ln((1 - e²) / (1 - x²)). */
  aside: [0, 5.52],
  /** From a tenth of the diameter to twice: lg(L/D). */
  length: [-1, 0.301],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;

/** Most coefficients in each direction. */
export const MOBILITY_ORDER = { ahead: 9, aside: 7, length: 5 } as const;

/** A coordinate on the map, held to its edges: beyond them the ratio to the short bearing changes no more. */
export function onMap(value: number, [from, to]: readonly [number, number]): number {
  return Math.max(-1, Math.min(1, (2 * (value - from)) / (to - from) - 1));
}

/** The value at a place on the map. */
export const offMap = (place: number, [from, to]: readonly [number, number]): number =>
  from + ((place + 1) / 2) * (to - from);

/** Rows of coefficients of a bearing of one length: by degree ahead, then aside. */
export type MobilityRows = readonly (readonly number[])[];

/** What both mobilities are multiplied by, as logarithms, for bearings of one length. */
export function mobilityRows(lengthToDiameter: number): {
  readonly along: MobilityRows;
  readonly across: MobilityRows;
} {
  const terms = polynomials(
    onMap(Math.log10(lengthToDiameter), MOBILITY_MAP.length),
    MOBILITY_ORDER.length,
  );
  const summed = (map: readonly (readonly (readonly number[])[])[]): MobilityRows =>
    map.map((row) => row.map((coefficients) => chebyshevSum([coefficients], [1], terms)));
  return { along: summed(mobilityMapData.along), across: summed(mobilityMapData.across) };
}
