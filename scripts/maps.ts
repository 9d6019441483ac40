// Writes the coefficients of the film map and of the mobility map, from films solved on a fine
// grid. Takes some minutes.
import { writeFileSync } from 'node:fs';
import { computeFilmMap } from './compute-film-map.js';
import { computeMobilityMap } from './compute-mobility-map.js';

write({
  file: 'film/film-map-data.ts',
  name: 'filmMapData',
  of: 'the film map',
  places: 192,
  compute: computeFilmMap,
});
write({
  file: 'orbit/mobility-map-data.ts',
  name: 'mobilityMapData',
  of: 'the mobility map',
  places: 96,
  compute: computeMobilityMap,
});

function write(map: {
  readonly file: string;
  readonly name: string;
  readonly of: string;
  readonly places: number;
  readonly compute: (places: number) => object;
}): void {
  const digits = (_: string, value: unknown) =>
    typeof value === 'number' ? Number(value.toFixed(6)) : value;
  const text = `/**
 * Coefficients of ${map.of}. Made by \`npm run maps\` from films solved with
 * ${map.places} places around; not written by hand.
 */
export const ${map.name} = ${JSON.stringify(map.compute(map.places), digits)} as const;
`;
  writeFileSync(new URL(`../src/bearings/${map.file}`, import.meta.url), text);
}
