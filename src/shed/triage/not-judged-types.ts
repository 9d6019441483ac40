import type { Span } from '../../judging/index.js';
import type { Length } from '../../quantities/index.js';

/** What of a part a verdict is given on, where it was measured and a limit is stated for it. */
export type JudgedWhat =
  | 'main housings'
  | 'big ends'
  | 'runout'
  | 'thrust width'
  | 'diameters'
  | 'thickness'
  | 'ring gaps'
  | 'ring side clearance'
  | 'face'
  | 'guides'
  | 'stems'
  | 'margin';

/** Something of a part that no verdict is given on. The part may be used all the same. */
export type NotJudged =
  | {
      /** It was not measured. */
      readonly why: 'not measured';
      /** What. */
      readonly what: JudgedWhat;
    }
  | {
      /** It was measured, but no limit is stated for it. */
      readonly why: 'no limit';
      /** What. */
      readonly what: JudgedWhat;
      /** The smallest and the largest reading [m]. */
      readonly read: Span<Length>;
    }
  | {
      /** A magneto, a pump or the like: no reading tells whether it works. */
      readonly why: 'not tested';
    };
