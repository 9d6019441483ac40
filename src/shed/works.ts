/** The kinds of work a shop can do. */
export const WORKS = [
  'grind rod journals',
  'grind main journals',
  'bore',
  'sleeve',
  'straighten',
  'resize housings',
  'skim head',
] as const;

/** A kind of work a shop can do. */
export type Work = (typeof WORKS)[number];
