import { type CardName, cards } from 'crankwright/teaching';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { formulasOf, formulasOn } from '../support/doc-formulas.js';
import { exportsOf, signaturesOf } from '../support/doc-rules.js';
import { compilerOptions, entryPoints, importEntries } from '../support/repo.js';

const entries = entryPoints().map(({ path }) => path);
const exported = exportsOf(ts.createProgram(entries, compilerOptions()), entries);
const values = [...(await importEntries()).values()].flatMap((module) => Object.entries(module));

/** The name that a function is exported by. */
const nameOf = (of: unknown) => values.find(([, value]) => value === of)?.[0];

describe.each(Object.keys(cards) as CardName[])('card %s', (name) => {
  it('holds an exported function, whose documentation writes the same formula', () => {
    const computedBy = nameOf(cards[name].of) ?? expect.fail('no entry point exports its function');
    const [signature] = signaturesOf(exported.get(computedBy) as ts.Symbol);
    const written = formulasOf(signature as ts.SignatureDeclaration);
    for (const formula of formulasOn(cards[name])) expect([...written]).toContain(formula);
  });
});
