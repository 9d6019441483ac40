import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording } from '../judging/internal.js';
import { asText, type PageSection, section, wrap } from '../pages/index.js';
import { percent } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { sayNotJudged } from '../shed/internal.js';
import type { EngineChances, OddsOfPart } from './chance-types.js';
import { sayEngines } from './describe-proof.js';
import { engineChancesLayout } from './layouts.js';

/**
 * Prints how likely each number of engines is, as plain text, and what odds that comes from.
 *
 * @param chances - what `engineChances` gave
 * @param wording - the units to print readings in that have no limit, by default metric
 * @returns lines of at most 96 characters; the last one ends with a line break
 * @throws {RebuildInputError} when the chances are not what `engineChances` gives, or the unit system is unknown
 * @example
 * ```ts
 * chancesReport({ chances: [{ engines: 1, chance: 1 as Ratio }], how: 'every case', odds: [], notIn: [] })
 *   .includes('1 complete engine: more than 99 %'); // true
 * ```
 */
export function chancesReport(
  chances: EngineChances,
  wording: Wording = { units: 'metric' },
): string {
  guardLayout('chances', chances, engineChancesLayout, 'engineChances');
  guardWording(wording);
  return asText([chancesSection(chances, wording)]);
}

/** The same as a section, to be printed. */
export function chancesSection(chances: EngineChances, wording: Wording): PageSection {
  const { chances: each, odds, ended } = chances;
  if (ended) {
    return section(
      'CHANCES',
      wrap(`Not known: ${ended === 'time limit' ? 'the time was up' : 'the solver failed'}.`, 0),
    );
  }
  return section('CHANCES', [
    ...each.flatMap(({ engines, chance }) => wrap(`${sayEngines(engines)}: ${say(chance)}`, 4)),
    ...wrap(sayHow(chances), 0),
    ...odds.flatMap((part) => wrap(`  ${sayOdds(part)}`, 4)),
    ...wrap(sayNotIn(chances, wording), 0),
  ]);
}

function sayHow({ how, draws, odds }: EngineChances): string {
  if (odds.length === 0) return 'No plan waits for a part that is not measured.';
  const cases = how === 'every case' ? 'Every case was tried' : `Of ${draws} cases drawn at random`;
  return `${cases}: each part that is not known, or that you give odds of, is good or not, on its own. Good means that it measures up to what it is to go with. These chances are no better than the odds, which are guesses, and in life the parts of one engine fail together; no plan counts on them. The odds:`;
}

/** What the chances leave out; without it nobody would read them right. */
function sayNotIn({ notIn }: EngineChances, wording: Wording): string {
  const start = 'Chances are of the parts not measured that a plan waits for';
  if (notIn.length === 0) {
    return `${start}, and of those you give odds of: what no reading and no test shows is not in them.`;
  }
  const each = notIn.map(({ name, notJudged = [], untested }) => {
    const said = notJudged.map((one) => sayNotJudged(one, wording));
    return `${name} (${[...said, ...(untested ? ['not crack-tested'] : [])].join(', ')})`;
  });
  return `${start}. Not in them: ${each.join('; ')}. If you know how likely one of these is good, give its odds, and it counts.`;
}

const sayOdds = ({ name, odds, by }: OddsOfPart): string =>
  by === 'owner' ? `${name}: ${exactly(odds)}, as you say` : `${name}: ${exactly(odds)}, our guess`;

const exactly = (chance: Chance): string => `${formatNumber(chance, percent, 0)} %`;

/** No chance is certain: there is always more to an engine than was measured of it. */
function say(chance: Chance): string {
  if (chance > 0.99) return 'more than 99 %';
  return chance < 0.01 ? 'less than 1 %' : `about ${exactly(chance)}`;
}

type Chance = OddsOfPart['odds'];
