import { guardLayout } from '../judging/internal.js';
import { section, wrap } from '../pages/index.js';
import { percent } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { EngineChances, OddsOfPart } from './chance-types.js';
import { sayEngines } from './describe-proof.js';
import { engineChancesLayout } from './layouts.js';

/**
 * Prints how likely each number of engines is, as plain text, and what odds that comes from.
 *
 * @param chances - what `engineChances` gave
 * @returns lines of at most 96 characters; the last one ends with a line break
 * @throws {RebuildInputError} when the chances are not what `engineChances` gives
 * @example
 * ```ts
 * describeChances({ chances: [{ engines: 1, chance: 1 as Ratio }], how: 'every case', odds: [] })
 *   .includes('1 complete engine: about 100 %'); // true
 * ```
 */
export function describeChances(chances: EngineChances): string {
  guardLayout('chances', chances, engineChancesLayout, 'engineChances');
  const { chances: each, odds, ended } = chances;
  if (ended) {
    return `${section('CHANCES', wrap(`Not known: ${ended === 'time limit' ? 'the time was up' : 'the solver failed'}.`, 0))}\n`;
  }
  return `${section('CHANCES', [
    ...each.flatMap(({ engines, chance }) =>
      wrap(`${sayEngines(engines)}: about ${say(chance)}`, 4),
    ),
    ...wrap(sayHow(chances), 0),
    ...odds.flatMap((part) => wrap(`  ${sayOdds(part)}`, 4)),
  ])}\n`;
}

function sayHow({ how, draws, odds }: EngineChances): string {
  if (odds.length === 0) return 'Every part is known: nothing is left to chance.';
  const cases = how === 'every case' ? 'Every case was tried' : `Of ${draws} cases drawn at random`;
  return `${cases}: each part that is not known is good or not, on its own. Good means that it measures up to what it is to go with. These chances are no better than the odds, which are guesses, and in life the parts of one engine fail together; no plan counts on them. The odds:`;
}

const sayOdds = ({ name, odds, by }: OddsOfPart): string =>
  `${name}: ${say(odds)}, ${by === 'owner' ? 'as you say' : 'our guess'}`;

const say = (chance: EngineChances['chances'][number]['chance']): string =>
  `${formatNumber(chance, percent, 0)} %`;
