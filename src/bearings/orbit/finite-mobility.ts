import { type Mobility, shortMobility } from './mobility.js';
import { MOBILITY_MAP, type MobilityRows, mobilityRows, onMap, sumAt } from './mobility-map.js';

/** The mobility of a bearing as long as it is: the short one's, times what the map says. */
export function finiteMobility(lengthToDiameter: number): Mobility {
  const short = shortMobility(lengthToDiameter);
  const rows = mobilityRows(lengthToDiameter);
  const most = Math.max(rows.along.length, rows.across.length);
  const sums: number[] = Array.from({ length: most }, () => 0);
  const times = (of: MobilityRows, ahead: number, aside: number) => {
    for (let i = 0; i < most; i++)
      sums[i] = i < of.length ? sumAt(of[i] as readonly number[], aside) : 0;
    return Math.exp(sumAt(sums, ahead));
  };
  const mobility: Mobility = {
    along: 0,
    across: 0,
    set(x, y) {
      short.set(x, y);
      const beside = 1 - x * x;
      const ahead = onMap(-Math.log(1 - x), MOBILITY_MAP.ahead);
      const aside = onMap(-Math.log((beside - y * y) / beside), MOBILITY_MAP.aside);
      mobility.along = short.along * times(rows.along, ahead, aside);
      mobility.across = short.across * times(rows.across, ahead, aside);
    },
  };
  return mobility;
}
