import type { Section } from '../sections.js';

/** How a place or a part stores its measurements. */
export interface MeasuredField<F extends string = string> {
  readonly field: F;
  /** Diameters by station and angle; a span of one or more readings; or a single size. */
  readonly holds: 'readings' | 'span' | 'size';
}

const readings: MeasuredField = { field: 'readings', holds: 'readings' };
const housingBore: MeasuredField = { field: 'housingBore', holds: 'span' };

/** The lists of named places on parts, with the measurement of each place. */
export const PLACES: {
  readonly [S in Section]: readonly (MeasuredField & { readonly list: string })[];
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
  otherParts: [],
};

/** A measurement of a part as a whole. */
export type WholeField =
  | 'thrustWidth'
  | 'wall'
  | 'thickness'
  | 'flatness'
  | 'guideBore'
  | 'stem'
  | 'margin';

const thrustWidth: MeasuredField<WholeField> = { field: 'thrustWidth', holds: 'size' };

/** The measurements of a part as a whole. */
export const MEASURED: { readonly [S in Section]: readonly MeasuredField<WholeField>[] } = {
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
  valveSets: [
    { field: 'stem', holds: 'span' },
    { field: 'margin', holds: 'size' },
  ],
  otherParts: [],
};
