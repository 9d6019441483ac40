import { coherentUnit, parse } from 'crankwright';
import { type CardName, cards, type FormulaCard } from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';
import { compute, usualValues, type Values } from '../support/card-values.js';

const names = Object.keys(cards) as CardName[];

describe.each(names)('card %s', (name) => {
  const card = cards[name];
  const values = usualValues(card);

  it.each(Object.keys(card.letters))('refuses %s just outside of its bounds, by name', (letter) => {
    const { domain, field } = letterOf(card, letter);
    for (const value of justOutside(domain)) {
      expect(refusedFor(card, { ...values, [letter]: value }), String(value)).toBe(field);
    }
  });

  it.each(Object.keys(card.letters))('refuses %s that is no number, by name', (letter) => {
    const { field } = letterOf(card, letter);
    for (const value of notNumbers.filter(mayBeTried)) {
      expect(refusedFor(card, { ...values, [letter]: value as number }), String(value)).toBe(field);
    }
  });

  it.each(Object.keys(card.letters))('reads %s back as it is written in its unit', (letter) => {
    const { dimension } = letterOf(card, letter).domain;
    const unit = coherentUnit[dimension];
    if (unit === '-') return;
    expect(parse(`${values[letter]} ${unit}`, dimension)).toBe(values[letter]);
  });

  it.each(Object.entries(card.refuses))('refuses by name: %s', (_, refusal) => {
    expect(refusedFor(card, { ...values, ...refusal.with })).toBe(refusal.names);
  });
});

/** Some letters may be left out, and some cards compute with one, which no bigint survives, before the call. */
const mayBeTried = (value: unknown) => value !== undefined && typeof value !== 'bigint';

const letterOf = (card: FormulaCard, letter: string) =>
  card.letters[letter] as FormulaCard['letters'][string];

/** A billionth of the range below the least and above the most; where nothing is taken too, below nothing. */
function justOutside({ least, most, orNone }: FormulaCard['letters'][string]['domain']) {
  const little = (most - least) * 1e-9;
  return orNone ? [-little, least / 2, most + little] : [least - little, most + little];
}

/** The parameter that a call is refused for. */
const refusedFor = (card: FormulaCard, values: Values): string =>
  refusal(() => compute(card, values)).parameter;
