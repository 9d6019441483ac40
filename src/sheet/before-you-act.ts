import { type PageSection, section, wrap } from '../pages/index.js';
import type { Inspection } from './inspect.js';

/** What stands at the end of every report. */
export function beforeYouAct({ rods, mains, oil }: Inspection): PageSection {
  return section('BEFORE YOU ACT', [
    ...wrap(
      'A limit marked "common practice" is a rule of thumb, and one marked "published" may be for another engine; the maker\'s manual always wins. Keep what is scrap until the engine runs.',
      0,
    ),
    ...(rods || mains ? wrap(HOUSINGS, 0) : []),
    ...(oil
      ? wrap(
          'Fuel vapour in a crankcase can ignite: ventilate, keep flames, sparks and switches away, and let hot oil cool before you drain it.',
          0,
        )
      : []),
  ]);
}

/** An inspection sheet has no limits for housings, so the report cannot judge them. */
const HOUSINGS =
  'Compare every housing bore with the manual. If one is outside its limits, have it resized or replace the rod before you choose shells: no shell makes up for a bad housing.';
