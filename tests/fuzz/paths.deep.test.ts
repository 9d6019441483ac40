import { RebuildInputError } from 'crankwright';
import { FileError } from 'crankwright/sheet';
import type ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { signaturesOf } from '../support/doc-rules.js';
import { exported } from '../support/exported.js';
import { type Path, pathsIn, replaced, showPath } from './hostile.js';
import { registry } from './registry.js';

/** What a function calls its arguments. */
function namesOf(name: string): readonly string[] {
  const [signature] = signaturesOf(exported.get(name) as ts.Symbol);
  return (signature?.parameters ?? []).map((parameter) => parameter.name.getText());
}

const functions = Object.entries(registry).map(([name, calls]) => {
  const numbers = calls.sound.flatMap((args) =>
    pathsIn(args)
      .filter((path) => typeof valueAt(args, path) === 'number')
      .map((path) => ({ args, path })),
  );
  return { name, run: calls.run, numbers };
});

describe.each(functions.filter(({ numbers }) => numbers.length > 0))('$name', (target) => {
  const names = namesOf(target.name);

  it('names a number that is none by its whole path', async () => {
    const wrong = new Set<string>();
    for (const { args, path } of target.numbers) {
      const parameter = await refused(target.run, replaced(args, path, Number.NaN));
      const [i, ...inner] = path;
      // Fields of an object argument may go without its name: `journal` for `sizes.journal`.
      const paths = [`${names[i as number]}${showPath(inner)}`, showPath(inner).slice(1)];
      if (!paths.includes(parameter ?? '')) wrong.add(`${paths[0]} is refused as ${parameter}`);
    }
    expect([...wrong]).toEqual([]);
  });

  it('names a number that cannot be by a path that leads somewhere', async () => {
    const astray = new Set<string>();
    const stride = Math.ceil(target.numbers.length / MOST_NUMBERS);
    for (const { args, path } of target.numbers.filter((_, i) => i % stride === 0)) {
      for (const number of [-1, 1e6]) {
        const bad = replaced(args, path, number) as readonly unknown[];
        const parameter = await refused(target.run, bad);
        if (parameter === undefined || leads(parameter, names, bad)) continue;
        astray.add(`${showPath(path)} of ${number} is refused as ${parameter}`);
      }
    }
    expect([...astray]).toEqual([]);
  });
});

/** Of more numbers than this every so-manieth is tried: a shed has hundreds, and a plan takes long. */
const MOST_NUMBERS = 30;

/** The path that a call is refused for, if it is; the first of several that a reader finds. */
async function refused(
  run: (args: readonly unknown[]) => unknown,
  args: unknown,
): Promise<string | undefined> {
  try {
    await run(args as readonly unknown[]);
    return undefined;
  } catch (error) {
    if (error instanceof FileError) return error.problems[0]?.path;
    if (error instanceof RebuildInputError) return error.parameter;
    throw error;
  }
}

/** Whether a path leads to something in the arguments, or to a field that something there lacks. */
function leads(parameter: string, names: readonly string[], args: readonly unknown[]): boolean {
  // What is computed can lie outside of what the formula holds for, and is no argument.
  if (parameter === 'result') return true;
  const path = [...parameter.matchAll(/[^.[\]]+/g)].map(([step]) => step);
  const named = names.indexOf(path[0] ?? '');
  const inArgument = named < 0 ? [] : [[String(named), ...path.slice(1)]];
  const inFields = args.map((_, i) => [String(i), ...path]);
  return [...inArgument, ...inFields].some((whole) => {
    const holder = valueAt(args, whole.slice(0, -1));
    const isField = whole.length > 2 && typeof holder === 'object' && holder !== null;
    return isField || valueAt(args, whole) !== undefined;
  });
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null
        ? (inner as Readonly<Record<string | number, unknown>>)[step]
        : undefined,
    value,
  );
}
