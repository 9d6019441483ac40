import { chebyshevSum, polynomials } from '../../numerics/index.js';
import { type Mobility, shortMobility } from './mobility.js';
import { MOBILITY_MAP, MOBILITY_ORDER, mobilityRows, onMap } from './mobility-map.js';

/** The mobility of a bearing as long as it is: the short one's, times what the map says. */
export function finiteMobility(lengthToDiameter: number): Mobility {
  const short = shortMobility(lengthToDiameter);
  const rows = mobilityRows(lengthToDiameter);
  const mobility: Mobility = {
    along: 0,
    across: 0,
    set(x, y) {
      short.set(x, y);
      const beside = 1 - x * x;
      const ahead = onMap(-Math.log(1 - x), MOBILITY_MAP.ahead);
      const aside = onMap(-Math.log((beside - y * y) / beside), MOBILITY_MAP.aside);
      const aheadTerms = polynomials(ahead, MOBILITY_ORDER.ahead);
      const asideTerms = polynomials(aside, MOBILITY_ORDER.aside);
      mobility.along = short.along * Math.exp(chebyshevSum(rows.along, aheadTerms, asideTerms));
      mobility.across = short.across * Math.exp(chebyshevSum(rows.across, aheadTerms, asideTerms));
    },
  };
  return mobility;
}
