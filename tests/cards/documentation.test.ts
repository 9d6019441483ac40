import { type CardName, cards } from 'crankwright/teaching';
import type ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { definitionsOn, formulaOn, formulasOf, linkedFrom } from '../support/doc-formulas.js';
import { signaturesOf } from '../support/doc-rules.js';
import { exported } from '../support/exported.js';
import { importEntries } from '../support/repo.js';

const values = [...(await importEntries()).values()].flatMap((module) => Object.entries(module));

/** The name that a function is exported by. */
const nameOf = (of: unknown) => values.find(([, value]) => value === of)?.[0];

const signatureOf = (name: string) => {
  const symbol = exported.get(name);
  return symbol && signaturesOf(symbol)[0];
};

describe.each(Object.keys(cards) as CardName[])('card %s', (name) => {
  const card = cards[name];

  it('holds an exported function, whose documentation writes the same formula', () => {
    const computedBy = nameOf(card.of) ?? expect.fail('no entry point exports its function');
    const signature = signatureOf(computedBy) as ts.SignatureDeclaration;
    const own = formulasOf(signature);
    expect([...own]).toContain(formulaOn(card));
    // A definition may stand where the documentation points to.
    const linked = linkedFrom(signature)
      .map(signatureOf)
      .filter((found) => found !== undefined);
    const known = [own, ...linked.map(formulasOf)].flatMap((formulas) => [...formulas]);
    for (const definition of definitionsOn(card)) expect(known).toContain(definition);
  });
});
