/** A slip that explains a wrong number. */
export type NumberSlip =
  | 'a lost minus'
  | 'factor two'
  | 'half of an angle'
  | 'factor pi'
  | 'per cent'
  | 'wrong unit'
  | 'factor of a thousand'
  | 'factor of ten'
  | 'an earlier line'
  | 'a reading left out'
  | 'radius for diameter'
  | 'unit of a reading'
  | 'sign of a reading'
  | 'degrees for radians'
  | 'another temperature'
  | 'temperature scale';

/** Why an answer cannot be read. */
export type ReadingSlip = 'no number' | 'another quantity';

/** A slip that explains a wrong answer. */
export type Slip = NumberSlip | ReadingSlip;
