import { type Dimension, parse } from 'crankwright';
import { type CardName, cards, type FormulaCard } from 'crankwright/teaching';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compute, type Values } from '../support/card-values.js';
import { ready, type Visit, visit } from './browser.js';

/** What a page shows: the text and unit of each field, the result in SI, refusals by letter. */
interface Shown {
  readonly fields: Readonly<Record<string, { readonly text: string; readonly unit: string }>>;
  readonly result: string | null;
  readonly refused: Readonly<Record<string, string>>;
  readonly refusal: string;
  readonly against: string;
  readonly picture: string;
  readonly width: number;
}

/** Read in the page itself, in one go: there are hundreds of them. */
const READ = `(() => {
  const fields = {}, refused = {};
  for (const input of document.querySelectorAll('.field input')) {
    const letter = input.id.slice('field-'.length);
    fields[letter] = { text: input.value, unit: document.getElementById('unit-' + letter).value };
    const refusal = document.getElementById('refusal-' + letter).textContent;
    if (refusal !== '') refused[letter] = refusal;
  }
  return {
    fields, refused,
    result: document.querySelector('#result data')?.value ?? null,
    refusal: document.getElementById('refusal').textContent,
    against: document.getElementById('against').value,
    picture: document.querySelector('#picture svg desc')?.textContent ?? '',
    width: document.documentElement.scrollWidth,
  };
})()`;

let all: Visit;
beforeAll(async () => {
  all = await visit();
});
afterAll(() => all.end());

const shown = () => all.page.evaluate(READ) as Promise<Shown>;

/** Types into a field, in one go. */
const type = (letter: string, text: string) =>
  all.page.evaluate(
    `(() => { const input = document.getElementById('field-${letter}'); input.value = ${JSON.stringify(text)}; input.dispatchEvent(new Event('input')); })()`,
  );

/** What the fields say, as the library reads it. */
const valuesIn = (card: FormulaCard, { fields }: Shown): Values =>
  Object.fromEntries(
    Object.entries(fields).map(([letter, { text, unit }]) => {
      const { dimension } = card.letters[letter]?.domain ?? { dimension: 'ratio' };
      return [letter, parse<Dimension>(unit === '-' ? text : `${text} ${unit}`, dimension)];
    }),
  );

/** The same to what nine digits in a field can tell. */
function expectSame(got: string | null, wanted: number | undefined): void {
  expect(got).not.toBeNull();
  expect(Math.abs(Number(got) - Number(wanted))).toBeLessThanOrEqual(
    1e-5 * Math.abs(Number(wanted)) + 1e-15,
  );
}

describe('the page of a formula', () => {
  it.each(Object.keys(cards) as CardName[])('computes %s as the library does', async (name) => {
    const card = cards[name];
    await all.page.goto(`${all.base}formulas/${name}.html`, { waitUntil: 'commit' });
    await ready(all.page);
    const first = await shown();
    expect(first.refused).toEqual({});
    expectSame(first.result, compute(card, valuesIn(card, first)));
    expect(first.picture).toMatch(/^At .* it is /);
    expect(first.width).toBeLessThanOrEqual(360);

    // Another value of the input that the picture is drawn against.
    const letter = first.against;
    const { text = '' } = first.fields[letter] ?? {};
    await type(letter, String(Number((Number(text) * 0.999).toPrecision(6))));
    const second = await shown();
    const values = valuesIn(card, second);
    expect(values[letter]).not.toBe(valuesIn(card, first)[letter]);
    const wanted = resultOf(card, values);
    if (typeof wanted === 'number') expectSame(second.result, wanted);
    else expect({ ...second.refused, all: second.refusal }).toMatchObject(wanted);

    await type(letter, 'two');
    const third = await shown();
    expect(third.result).toBeNull();
    expect(third.refused[letter]).toContain('has no number that can be read');
    expect(all.faults).toEqual([]);
  });
});

/** What the library gives, or which letter it refuses. */
function resultOf(card: FormulaCard, values: Values): number | Readonly<Record<string, unknown>> {
  try {
    return compute(card, values) ?? { all: expect.stringContaining('no such figure') };
  } catch (error) {
    const { parameter } = error as { parameter: string };
    const [letter] =
      Object.entries(card.letters).find(([, { field }]) => field === parameter) ?? [];
    return { [letter ?? 'all']: expect.stringMatching(/./) };
  }
}
