import { expect, it } from 'vitest';

/** Where an expected value comes from: a document, or frankly none. Exactly one of the two. */
type Origin =
  | { readonly source: string; readonly basis?: never }
  | { readonly source?: never; readonly basis: 'common practice' | 'from memory' };

/** How far a number may be off, in its own unit or as a share of the expected value. */
export type Tolerance = { readonly absolute: number } | { readonly relative: number };

/** One check of the library against one value that was not computed by it. */
export type Check<Given, Expected> = Origin & {
  readonly name: string;
  readonly given: Given;
  readonly expected: Expected;
  readonly got: (given: Given) => NoInfer<Expected>;
  /** By default 1e-9 of the expected value. */
  readonly tolerance?: Tolerance;
};

const EXACT: Tolerance = { relative: 1e-9 };

/** Registers one test, named after its source. */
export function check<Given, Expected>(one: Check<Given, Expected>): void {
  it(`${one.source ?? one.basis}: ${one.name}`, () => {
    const got = one.got(one.given);
    expect(differences(got, one.expected, one.tolerance ?? EXACT)).toEqual([]);
  });
}

/** Every place where two values differ by more than is allowed. Only numbers may differ at all. */
export function differences(
  got: unknown,
  expected: unknown,
  tolerance: Tolerance = EXACT,
  at = 'result',
): readonly string[] {
  if (typeof expected === 'number') {
    const allowed =
      'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);
    const near = typeof got === 'number' && Math.abs(got - expected) <= allowed;
    return near ? [] : [`${at}: ${String(got)} is not ${expected} ± ${allowed}`];
  }
  if (typeof expected === 'object' && expected !== null) {
    if (typeof got !== 'object' || got === null) return [`${at}: ${String(got)} is no object`];
    const keys = [...new Set([...Object.keys(expected), ...Object.keys(got)])];
    const [have, want] = [Object.entries(got), Object.entries(expected)].map(
      (entries) => new Map<string, unknown>(entries),
    );
    return keys.flatMap((key) =>
      differences(have?.get(key), want?.get(key), tolerance, `${at}.${key}`),
    );
  }
  return got === expected ? [] : [`${at}: ${String(got)} is not ${String(expected)}`];
}
