import type { Span } from '../../judging/index.js';
import { namedFrom } from '../../judging/internal.js';
import { repeatsIn } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { accuracyOf } from '../../reading/index.js';
import { boresOf, mainHousingsOf } from '../places-of.js';
import type { BlockPart } from '../shed.js';
import { mended } from './mended.js';
import { boreNames, boresReady } from './ready-bores.js';
import { readyHousings } from './ready-housings.js';
import { seenFaults } from './seen-faults.js';
import type { Job } from './triage-types.js';
import type { Readiness, Shop, Way } from './ways.js';

/** How a block can be made ready. */
export interface ReadyBlock {
  /** One way for every step that serves, fewest sleeves first, then smallest step. */
  readonly bores: readonly Way[];
  /** Its main housings, after any resizing [m]. */
  readonly housings: readonly (Span<Length> | undefined)[];
  /** Repairs it needs in any case. */
  readonly repairs: readonly Job[];
}

/** Works out how a block can be made ready, with findings and reasons. */
export function readyBlock(part: BlockPart, shop: Shop): Readiness<ReadyBlock> {
  const { engine, units } = shop;
  const places = boresOf(part, engine);
  const seen = seenFaults('blocks', part, places);
  const accuracy = accuracyOf(shop, {
    boreGauge: places.map(({ readings = [] }) => repeatsIn(readings)),
  });
  const housings = namedFrom(
    () => ({ housings: 'part.mainHousings', limits: 'engine.mainHousing' }),
    () =>
      readyHousings(
        'main housings',
        mainHousingsOf(part, engine),
        engine.mainHousing,
        seen.works.includes('resize housings'),
        accuracy,
      ),
  );
  const { bores, misread, unread, told } = namedFrom(
    () => boreNames(places),
    () => boresReady(places, { bores: engine.bores, seen, units, accuracy }),
  );
  const because = [...seen.because, ...misread, ...unread, ...told, ...housings.because];
  const { findings } = housings;
  if (seen.scrap || bores.length === 0) return { findings, because };
  const best = housings.ready ?? housings.atBest;
  const mend = mended(seen, shop);
  const block = {
    bores,
    housings: best?.sizes ?? [],
    repairs: [...mend.repairs, ...seen.repairs, ...(best?.repairs ?? [])],
  };
  if (mend.aside || housings.aside === 'not as it is') {
    return { atBest: block, aside: 'not as it is', findings, because };
  }
  if (misread.length > 0) {
    return { atBest: { ...block, repairs: [] }, aside: 'undecided', findings, because };
  }
  return housings.ready === undefined || unread.length > 0
    ? { atBest: block, aside: 'undecided', findings, because }
    : { ready: block, findings, because };
}
