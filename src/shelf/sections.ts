/** The sections of a shelf, in the order an engine is built up. */
export const SECTIONS = [
  'blocks',
  'crankshafts',
  'rods',
  'pistonSets',
  'ringSets',
  'shells',
  'thrustWashers',
  'heads',
  'valveSets',
] as const;

/** A section of the shelf. */
export type Section = (typeof SECTIONS)[number];
