// Writes the coefficients of the film map, from films solved on a fine grid.
import { writeFileSync } from 'node:fs';
import { computeFilmMap } from './compute-film-map.js';

const PLACES_AROUND = 192;

const map = JSON.stringify(computeFilmMap(PLACES_AROUND), (_, value: unknown) =>
  typeof value === 'number' ? Number(value.toFixed(6)) : value,
);
const text = `/**
 * Coefficients of the film map. Made by \`npm run film-map\` from films solved with
 * ${PLACES_AROUND} places around; not written by hand.
 */
export const filmMapData = ${map} as const;
`;
writeFileSync(new URL('../src/bearings/film/film-map-data.ts', import.meta.url), text);
