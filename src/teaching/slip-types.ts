/** A slip that explains a wrong number. */
export type NumberSlip =
  | 'a lost minus'
  | 'factor two'
  | 'factor four'
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

/** A slip in the unit that an answer is written with. */
export type ReadingSlip = 'another quantity';

/** A slip that explains a wrong answer. */
export type Slip = NumberSlip | ReadingSlip;
