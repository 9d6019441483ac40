import type { UnitSystem } from '../../src/quantities/index.js';
import type { CardName } from '../../src/teaching/cards.js';
import {
  type WorkedFormula,
  type WorkedLetter,
  worked,
  workedMathml,
} from '../../src/teaching/index.js';
import { RADIANS } from '../../src/teaching/worked-print.js';
import type { Values } from '../cards.js';
import { symbolMathml } from '../pages/typeset.js';
import { isRefusal, refusalText } from '../reading.js';
import { element } from './page.js';

/** The working of a formula: what its letters stand for, then line by line, in letters and in numbers. */
export function workingOf(name: CardName, values: Values, units: UnitSystem): readonly Node[] {
  try {
    return nodesOf(worked(name, values, { units }));
  } catch (error) {
    if (!isRefusal(error)) throw error;
    return [element('p', {}, refusalText(error))];
  }
}

function nodesOf(working: WorkedFormula): readonly Node[] {
  const { legend, constants, inRadians } = working;
  return [
    element('ul', { class: 'legend' }, ...legend.map(letterItem)),
    ...constants.map(({ written, gives }) => element('p', {}, `${written} is ${gives.text}.`)),
    ...(inRadians ? [element('p', {}, RADIANS)] : []),
    element(
      'div',
      { class: 'equations', tabindex: '0', role: 'region', 'aria-label': 'the working' },
      ...workedMathml(working).map(nodeOf),
    ),
  ];
}

/** A letter with what was put in for it, and the sum that brings it into the units of the working. */
function letterItem({ symbol, meaning, given, converted }: WorkedLetter): HTMLElement {
  const sum = converted && ` = ${converted.typed.replaceAll('*', '×')} = ${converted.gives.text}`;
  const value = ` = ${given.text}${sum ?? ''}, `;
  return element('li', {}, nodeOf(symbolMathml(symbol)), value, meaning);
}

/** Markup of one element as that element. */
const nodeOf = (markup: string): Node =>
  document.importNode(
    new DOMParser().parseFromString(markup, 'text/html').body.firstChild as Node,
    true,
  );
