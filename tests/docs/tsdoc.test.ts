import type ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { programOf } from '../support/compiler.js';
import { unitViolations } from '../support/doc-fields.js';
import { exportsOf, functionViolations, signaturesOf } from '../support/doc-rules.js';
import { entryPoints, root } from '../support/repo.js';

const entries = entryPoints().map(({ path }) => path);
/** In memory: a module that breaks every rule once. */
const BAD = `${root}/tests/docs/bad.ts`;
const BAD_CODE = `
import type { Area, Length, Limits, Quantity, Ratio, Span, Torque } from 'crankwright';
/** Sizes. */
export interface Sizes<Q extends number> {
  /** Right [m]. */ a: Length;
  /** Wrong [mm] */ b: Length;
  /** Not at its end [m]. By default none. */ c?: Length;
  d: readonly Area[];
  /** Fine [-] */ e: Ratio;
  /** Right, the ends too [N·m]. */ f: { readonly min: Torque; readonly max?: Torque };
  /** Wrong for a generic one [m] */ g: Q;
  /** Right, in the unit of the quantity. */ h: Q;
  /** Not for a certain one, in the same unit. */ i: Span<Length>;
  /** Text. */ j: { k: Length };
}
/** Undocumented but for this [m]. */
export function bare(sizes: Sizes<Length>, factor: number): Length { return sizes.a; }
/**
 * Documented in full.
 * @param limits - limits [m]
 * @param count - how many [-]
 * @param area - the wrong dimension [m]
 * @param gone - no longer there
 * @returns anything [coherent SI unit]
 * @throws never
 * @example none
 */
export function full<D extends 'length'>(limits: Limits<Length>, count: number, area: Area, x: Quantity<D>): Quantity<D> { return x; }
/**
 * Holds more than one unit.
 * @param sizes - sizes [m]
 * @returns nothing
 */
export function mixed(sizes: Sizes<Area>): void {}
/** A constant [mm]. */
export const big = 1 as Length;
/** A name without its unit. */
export type Gap = Quantity<'length'>;
`;

const program = programOf(entries, new Map([[BAD, BAD_CODE]]));
const checker = program.getTypeChecker();
const isOwn = (file: ts.SourceFile) =>
  file.fileName === BAD || file.fileName.startsWith(`${root}/src/`);

/** Exported functions that take arguments and still cannot throw, each with the reason. */
const CANNOT_THROW: Readonly<Record<string, string>> = {};

const lines = (violations: readonly { at: string; problem: string }[]) =>
  violations.map(({ at, problem }) => `${at} ${problem}`).sort();

describe('the documentation of every export', () => {
  const exported = exportsOf(program, entries);

  it('describes every function, its parameters, result, errors and use', () => {
    expect(lines(functionViolations(exported, CANNOT_THROW))).toEqual([]);
  });

  it('ends every quantity in its unit', () => {
    expect(lines(unitViolations(exported, checker, isOwn))).toEqual([]);
  });

  it('excuses no function that is gone or takes no argument', () => {
    const excused = Object.keys(CANNOT_THROW);
    const known = excused.filter((name) => {
      const symbol = exported.get(name);
      return symbol && signaturesOf(symbol).some(({ parameters }) => parameters.length > 0);
    });
    expect(known).toEqual(excused);
  });
});

describe('the rules', () => {
  const bad = exportsOf(program, [BAD]);
  const at = (text: string) => {
    const line = BAD_CODE.split('\n').findIndex((one) => one.includes(text)) + 1;
    return `tests/docs/bad.ts:${line}`;
  };

  it('find a function that is not documented in full', () => {
    expect(lines(functionViolations(bad, { mixed: 'it does nothing' }))).toEqual(
      [
        `${at('function bare')} bare: @example is missing`,
        `${at('function bare')} bare: @param factor is missing`,
        `${at('function bare')} bare: @param sizes is missing`,
        `${at('function bare')} bare: @returns is missing`,
        `${at('function bare')} bare: @throws is missing`,
        `${at('function full')} full: @param gone is not a parameter`,
        `${at('function full')} full: @param x is missing`,
        `${at('function mixed')} mixed: @example is missing`,
      ].sort(),
    );
  });

  it('find every quantity without its unit', () => {
    const found = unitViolations(bad, checker, isOwn).filter((one) => one.at.includes('bad.ts'));
    expect(lines(found).map((line) => line.replace(/: ".*/, ''))).toEqual(
      [
        `${at(' b: Length')} Sizes.b must end in [m]`,
        `${at(' c?: Length')} Sizes.c must end in [m]`,
        `${at(' d: readonly')} Sizes.d must end in [m²]`,
        `${at(' g: Q')} Sizes.g must end in [coherent SI unit]`,
        `${at(' i: Span')} Sizes.i must end in [m]`,
        `${at(' k: Length')} Sizes.j.k must end in [m]`,
        `${at('function bare')} bare @param factor must end in [-]`,
        `${at('function bare')} bare @returns must end in [m]`,
        `${at('function full')} full @param area must end in [m²]`,
        `${at('function full')} full @param x must end in [coherent SI unit]`,
        `${at('function mixed')} mixed @param sizes ends in [m], but holds m, m², -, N·m`,
        `${at('const big')} big must end in [m]`,
        `${at('type Gap')} Gap must name its unit, [m]`,
      ].sort(),
    );
  });
});
