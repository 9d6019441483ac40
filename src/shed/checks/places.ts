import type { Section } from '../sections.js';

/** How a place or a part holds what is measured of it. */
export interface Measurement {
  readonly field: string;
  /** Diameters by station and angle, one size or the span of several readings, or one size alone. */
  readonly holds: 'readings' | 'span' | 'size';
}

const readings: Measurement = { field: 'readings', holds: 'readings' };
const housingBore: Measurement = { field: 'housingBore', holds: 'span' };

/** The lists of named places that parts have, with what is measured of each place. */
export const PLACES: {
  readonly [S in Section]: readonly (Measurement & { readonly list: string })[];
} = {
  blocks: [
    { list: 'bores', ...readings },
    { list: 'mainHousings', ...housingBore },
  ],
  crankshafts: [
    { list: 'rodJournals', ...readings },
    { list: 'mainJournals', ...readings },
  ],
  rods: [{ list: 'rods', ...housingBore }],
  pistonSets: [{ list: 'pistons', field: 'diameter', holds: 'span' }],
  ringSets: [{ list: 'rings', field: 'gap', holds: 'size' }],
  shells: [],
  thrustWashers: [],
  heads: [],
  valveSets: [],
};

const thrustWidth: Measurement = { field: 'thrustWidth', holds: 'size' };

/** What is measured of a part as a whole. */
export const MEASURED: { readonly [S in Section]: readonly Measurement[] } = {
  blocks: [thrustWidth],
  crankshafts: [thrustWidth],
  rods: [],
  pistonSets: [],
  ringSets: [],
  shells: [{ field: 'wall', holds: 'span' }],
  thrustWashers: [{ field: 'thickness', holds: 'size' }],
  heads: [
    { field: 'flatness', holds: 'size' },
    { field: 'guideBore', holds: 'span' },
  ],
  valveSets: [{ field: 'stem', holds: 'span' }],
};
