import { guardLayout } from '../judging/internal.js';
import { equation } from './card-typeset.js';
import { inGreek } from './greek.js';
import { type Typesetter, typeset } from './layout-of-formula.js';
import { typesetUnit } from './layout-of-unit.js';
import { workedFormulaLayout } from './layouts.js';
import { inMath, mathml } from './mathml.js';
import { tex } from './tex.js';
import { onPaper } from './unfold.js';
import type { WorkedConversion, WorkedFormula, WorkedLetter } from './worked-types.js';

/** What a calculator must be told where a function of an angle is worked out. */
export const RADIANS = 'Set the calculator to radians.';

/**
 * A worked formula as plain text, each line as a calculator takes it.
 *
 * @param working - what `worked` or `solution` gave
 * @returns text of several lines
 * @throws {RebuildInputError} when the working is not one
 * @example
 * ```ts
 * const values = { t: inch(0.062), u: inch(0.02) };
 * workedText(worked('shellWallFor', values, { units: 'inch' })).includes('t_u = t + u / 2'); // true
 * ```
 */
export function workedText(working: WorkedFormula): string {
  guardLayout('working', working, workedFormulaLayout, 'worked');
  const { title, legend, where, constants, steps, converted, inRadians, source } = working;
  const own = where.filter((line) => /^\w+\(/.test(line));
  return [
    title,
    ...legend.map(
      (letter) => `  ${inGreek(letter.symbol)} = ${givenText(letter)}   ${letter.meaning}`,
    ),
    ...constants.map(({ written, gives }) => `  ${written} = ${gives.text}`),
    ...own.map((line) => `  ${inGreek(onPaper(line))}`),
    ...(inRadians ? [RADIANS] : []),
    ...steps.flatMap(({ symbol, meaning, symbolic, typed, gives }) => {
      const letter = inGreek(symbol);
      const indent = ' '.repeat(letter.length);
      const says = meaning === undefined ? '' : `   ${meaning}`;
      return [
        `${letter} = ${inGreek(symbolic)}${says}`,
        ...(typed === symbolic || typed === gives.text ? [] : [`${indent} = ${typed}`]),
        ...(symbolic === gives.text ? [] : [`${indent} = ${gives.text}`]),
      ];
    }),
    ...(converted
      ? [`${' '.repeat(inGreek(working.asks.symbol).length)} = ${convertedText(converted)}`]
      : []),
    `Source: ${source}`,
    '',
  ].join('\n');
}

/**
 * A worked formula in Markdown, with its equations in TeX between dollar signs.
 *
 * @param working - what `worked` or `solution` gave
 * @returns Markdown
 * @throws {RebuildInputError} when the working is not one
 * @example
 * ```ts
 * const values = { t: inch(0.062), u: inch(0.02) };
 * workedMarkdown(worked('shellWallFor', values, { units: 'inch' })).startsWith('### '); // true
 * ```
 */
export function workedMarkdown(working: WorkedFormula): string {
  guardLayout('working', working, workedFormulaLayout, 'worked');
  const { title, legend, steps, inRadians, source } = working;
  const letters = lettersOf(working);
  return [
    `### ${title.charAt(0).toUpperCase()}${title.slice(1)}`,
    '',
    ...legend.map(
      (letter) =>
        `- $${typeset(letter.symbol, letters, tex)}$ = ${givenText(letter).replaceAll('*', '×')}: ${letter.meaning}`,
    ),
    ...steps.flatMap(({ symbol, meaning }) =>
      meaning === undefined ? [] : [`- $${typeset(symbol, letters, tex)}$: ${meaning}`],
    ),
    '',
    ...(inRadians ? [RADIANS, ''] : []),
    ...functionsOf(working).flatMap((line) => [`$$${equation(line, letters, tex)}$$`, '']),
    ...steps.flatMap((_, index) => [
      `$$\\begin{aligned} ${linesOf(working, index, tex).join(' \\\\ ').replaceAll(tex.sign('='), ' &= ')} \\end{aligned}$$`,
      '',
    ]),
    `Source: ${source}`,
    '',
  ].join('\n');
}

/**
 * A worked formula in MathML: first the functions that it defines, then an element for each part of every line.
 *
 * @param working - what `worked` or `solution` gave
 * @returns `math` elements, in the order they are read in
 * @throws {RebuildInputError} when the working is not one
 * @example
 * ```ts
 * const values = { t: inch(0.062), u: inch(0.02) };
 * workedMathml(worked('shellWallFor', values, { units: 'inch' })).length; // 3
 * ```
 */
export function workedMathml(working: WorkedFormula): readonly string[] {
  guardLayout('working', working, workedFormulaLayout, 'worked');
  const letters = lettersOf(working);
  return [
    ...functionsOf(working).map((line) => equation(line, letters, mathml)),
    ...working.steps.flatMap((_, index) => linesOf(working, index, mathml)),
  ].map(inMath);
}

/** A unit by another name is no sum. */
const convertedText = ({ typed, gives }: WorkedConversion): string =>
  typed === `${gives.value}` ? gives.text : `${typed} = ${gives.text}`;

const givenText = ({ given, converted }: WorkedLetter): string =>
  converted ? `${given.text} = ${converted.typed} = ${converted.gives.text}` : given.text;

const functionsOf = ({ where }: WorkedFormula) => where.filter((line) => /^\w+\(/.test(line));

/** All symbols of a working that are no units. */
const lettersOf = ({ legend, steps, where }: WorkedFormula): ReadonlySet<string> =>
  new Set([
    ...legend.map(({ symbol }) => symbol),
    ...steps.map(({ symbol }) => symbol),
    ...where.map((line) => /^\w+/.exec(line)?.[0] ?? ''),
  ]);

const NO_LETTERS: ReadonlySet<string> = /* @__PURE__ */ new Set();

/** The parts of one line of the working: in letters, in numbers, and what it gives. */
function linesOf(working: WorkedFormula, index: number, by: Typesetter): readonly string[] {
  const { steps, converted } = working;
  const step = steps[index];
  if (step === undefined) return [];
  const { symbol, symbolic, substituted, gives } = step;
  const equals = by.sign('=');
  const measure = ({ value, unit }: { readonly value: number; readonly unit: string }) => {
    const number = typeset(String(value), NO_LETTERS, by);
    return unit === '' ? number : by.row([number, by.space, typesetUnit(unit, by)]);
  };
  const letters = lettersOf(working);
  return [
    `${typeset(symbol, letters, by)}${equals}${typeset(symbolic, letters, by)}`,
    ...(substituted === symbolic ? [] : [`${equals}${typeset(substituted, NO_LETTERS, by)}`]),
    `${equals}${measure(gives)}`,
    ...(converted && index === steps.length - 1 ? [`${equals}${measure(converted.gives)}`] : []),
  ];
}
