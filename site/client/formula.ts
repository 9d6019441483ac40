import type { UnitSystem } from '../../src/quantities/index.js';
import { unitsOf } from '../../src/quantities/scales.js';
import {
  beginWith,
  type CardName,
  cards,
  compute,
  isWritten,
  resultUnit,
  type Values,
} from '../cards.js';
import { isRefusal, letterRefused, refusalText } from '../reading.js';
import { sayResult } from '../units.js';
import { Field } from './field.js';
import { byId, element, remember, remembered, takeTheme } from './page.js';
import { Picture } from './picture.js';
import { Working } from './working.js';

takeTheme();

const name = document.body.dataset['card'] as CardName;
const card = cards[name];
let system: UnitSystem = remembered('crankwright-units') === 'metric' ? 'metric' : 'inch';
const example = beginWith(card, system);
const unitOfOutput = byId<HTMLSelectElement>('unit-of-result');
const result = byId<HTMLOutputElement>('result');
const refusal = byId('refusal');

const fields = Object.keys(card.letters).map(
  (letter) => new Field(card, letter, example[letter] as number, changed),
);
const picture = new Picture(card, fields, changed);
const working = isWritten(name) ? new Working(name) : undefined;
/** The unit that the reader chose for the result, until then the one that suits it. */
let chosen = '';

for (const radio of document.querySelectorAll<HTMLInputElement>('input[name="system"]')) {
  radio.checked = radio.value === system;
  radio.addEventListener('change', () => {
    readAs(radio.value as UnitSystem);
    remember('crankwright-units', system);
  });
}
unitOfOutput.append(
  ...unitsOf(card.gives.dimension).map(({ symbol }) =>
    element('option', { value: symbol }, symbol === '-' ? 'number' : symbol),
  ),
);
unitOfOutput.addEventListener('change', () => {
  chosen = unitOfOutput.value;
  changed();
});
byId('again').addEventListener('click', () => {
  const again = beginWith(card, system);
  for (const field of fields) field.put(again[field.letter] as number);
  changed();
});
byId('fields').addEventListener('submit', (event) => event.preventDefault());
readAs(system);
document.body.dataset['ready'] = 'yes';

function readAs(wanted: UnitSystem): void {
  system = wanted;
  chosen = '';
  for (const field of fields) field.readAs(system);
  changed();
}

/** Computes with what stands in the fields, and shows what comes of it. */
function changed(): void {
  const values = valuesTyped();
  const value = values && resultOf(values);
  if (value === undefined) {
    result.replaceChildren('no result');
    picture.draw(undefined, undefined, system);
    working?.show(undefined, system);
    return;
  }
  const units = unitsOf(card.gives.dimension);
  const suits = resultUnit(card, value, system);
  const unit = units.find(({ symbol }) => symbol === chosen) ?? suits;
  unitOfOutput.value = unit.symbol;
  result.replaceChildren(element('data', { value: String(value) }, sayResult(value, unit)));
  picture.draw(values, unit, system);
  working?.show(values, system);
}

/** What the fields hold, if all of them can be read. */
function valuesTyped(): Values | undefined {
  const read = fields.map(({ letter, quantity }) => [letter, quantity] as const);
  refusal.textContent = '';
  if (read.some(([, quantity]) => quantity === undefined)) return undefined;
  return Object.fromEntries(read) as Values;
}

/** What the function gives; a refusal stands beside the field that it names. */
function resultOf(values: Values): number | undefined {
  for (const field of fields) field.refuse('');
  try {
    const value = compute(card, values);
    if (value === undefined) refusal.textContent = 'For these values it gives no such figure.';
    return value;
  } catch (error) {
    if (!isRefusal(error)) throw error;
    const letter = letterRefused(card, error);
    const field = fields.find((each) => each.letter === letter);
    if (field) field.refuse(refusalText(error));
    else refusal.textContent = `${error.parameter}: ${refusalText(error)}`;
    return undefined;
  }
}
