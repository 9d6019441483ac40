import type { RebuildInputError } from 'crankwright';
import { FileError } from 'crankwright/shed';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { signaturesOf, textOf } from '../support/doc-rules.js';
import { exported } from '../support/exported.js';
import { importEntries } from '../support/repo.js';
import { flawOfError, noiseIn } from './outcome.js';
import { registry } from './registry.js';

const modules = await importEntries();
const functions = [...modules.values()].flatMap((module) =>
  Object.entries(module).flatMap(([name, value]) =>
    typeof value === 'function' && !isUnit(value) && !isClass(value) ? [name] : [],
  ),
);

describe('the registry of calls', () => {
  it('knows every exported function and no other', () => {
    expect(Object.keys(registry).sort()).toEqual([...new Set(functions)].sort());
  });

  it('has a provocation for every cause that a @throws names, in its words', () => {
    const lacking = Object.entries(registry).flatMap(([name, { provoked }]) => {
      const causes = causesOf(name).filter((cause) => !(cause in provoked));
      return causes.map((cause) => `${name}: ${cause}`);
    });
    expect(lacking).toEqual([]);
  });
});

const provocations = Object.entries(registry).flatMap(([name, { run, provoked }]) =>
  Object.entries(provoked).map(([cause, { names, args }]) => ({ name, run, cause, names, args })),
);

describe('a documented cause of refusal', () => {
  it.each(provocations)('$name: $cause', async ({ run, names, args }) => {
    let thrown: unknown;
    try {
      const result = await run(args);
      expect.fail(`gives ${JSON.stringify(result)}`);
    } catch (error) {
      thrown = error;
    }
    expect(flawOfError(thrown)).toBeUndefined();
    expect(placeIn(thrown as RebuildInputError)).toSatisfy((place: string) =>
      names.startsWith('.') ? `.${place}`.endsWith(names) : place === names,
    );
    expect(noiseIn((thrown as Error).message)).toBeUndefined();
  });
});

/** What a `@throws` lists: its text without the class, cut at every comma and every "or". */
function causesOf(name: string): readonly string[] {
  const symbol = exported.get(name);
  const [signature] = symbol ? signaturesOf(symbol) : [];
  if (!signature) return [];
  return ts
    .getJSDocTags(signature)
    .filter(({ tagName }) => tagName.text === 'throws')

    .flatMap(({ comment }) =>
      textOf(comment)
        .replace(/^.*?\bwhen /, '')
        .split(/,\s*(?:or\s+)?|\s+or\s+/),
    )
    .filter((cause) => cause !== '');
}

/** What a refusal names: its parameter, or the first of several places in a file. */
const placeIn = (error: RebuildInputError): string =>
  error instanceof FileError ? (error.problems[0]?.path ?? '') : error.parameter;

function isUnit(value: object): boolean {
  return 'numerator' in value;
}

function isClass(value: object): boolean {
  return /^class\b/.test(Function.prototype.toString.call(value));
}
