/**
 * What plans are compared by, in this order: each counts only between plans that are equal in all before it.
 * After engines, cost and tightest margin come the next tightest margins, the work, parts that belong together,
 * engines that ran, parts of one origin, one make of shell on a crankshaft, parts that are not home-made, and last
 * the order of the file.
 */
export type Preference =
  | 'engines'
  | 'cost'
  | 'tightest margin'
  | 'next tightest margins'
  | 'least work'
  | 'belongs together'
  | 'engines that ran'
  | 'origin'
  | 'one make of shell'
  | 'not home-made'
  | 'order of the file';
