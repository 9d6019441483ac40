import { describeDipper } from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import type { DipperDip } from '../motion/index.js';
import { type Block, type Entry, paragraph } from '../pages/index.js';
import type { EngineKind } from '../reading/index.js';

type Lubrication = EngineKind['lubrication'];

const GRADE = "of the grade in the maker's manual";

/** How the engine is filled with oil before it is turned over. */
export function fillingWithOil(
  lubrication: Lubrication,
  dipper: DipperDip | undefined,
  wording: Wording,
): {
  readonly note: readonly Block[];
  readonly items: readonly Entry[];
} {
  switch (lubrication) {
    case 'splash':
      return {
        note: [
          paragraph(
            'Lubrication: splash. No pump brings the first oil: until the dippers have thrown it about, the engine runs on what you pour in now.',
          ),
        ],
        items: [
          `Trough under every rod filled by hand with oil ${GRADE}`,
          'Crankcase filled to the mark',
          ...dipOf(dipper, wording),
          'Every dipper clears the bottom of its trough all the way round',
          'Oil cups and pockets over the bearings filled by hand',
        ],
      };
    case 'pump':
      return {
        note: [],
        items: [`Oil filled to the mark, ${GRADE}`, 'Oil pump primed, oilways plugged again'],
      };
    default:
      return {
        note: [
          paragraph(
            'Lubrication: not stated in the shed file. Find out how the oil gets to each bearing before you turn the engine over.',
          ),
        ],
        items: [
          `Oil filled to the mark, ${GRADE}`,
          'Oil poured by hand over every bearing that you can reach',
        ],
      };
  }
}

/** How deep the dippers get into the oil. */
function dipOf(dipper: DipperDip | undefined, wording: Wording): readonly Entry[] {
  if (!dipper) return [{ write: "Depth that the dippers enter the oil, by the maker's manual" }];
  const { depth, notes } = describeDipper(dipper, wording);
  return [{ write: `Depth that the dippers enter the oil, ${depth}; found` }, ...notes];
}

/** What shows, with the plugs out, that the oil arrives. */
export function oilArrives(lubrication: Lubrication): readonly Entry[] {
  switch (lubrication) {
    case 'splash':
      return ['Turned over with the plugs out until every rod and bore is wet with oil'];
    case 'pump':
      return ['Turned over with the plugs out until oil shows at the bearings or on the gauge'];
    default:
      return ['Turned over with the plugs out until oil shows at every bearing that you can see'];
  }
}

/** What to watch at the first run. */
export function oilRuns(lubrication: Lubrication): readonly Entry[] {
  return lubrication === 'pump'
    ? [
        { write: 'Oil pressure cold; if there is none after a few seconds, stop at once' },
        { write: 'Oil pressure hot' },
      ]
    : [];
}
