/** The sections of a shed, in the order of assembly. */
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
  'otherParts',
] as const;

/** A section of the shed. */
export type Section = (typeof SECTIONS)[number];
