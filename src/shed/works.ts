/** Work that the owner can have done. */
export const WORKS = [
  'grind rod journals',
  'grind main journals',
  'bore',
  'sleeve',
  'straighten',
  'resize housings',
  'skim head',
] as const;

/** One of the works that the owner can have done. */
export type Work = (typeof WORKS)[number];
