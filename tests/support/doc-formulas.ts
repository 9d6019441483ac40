import type { FormulaCard } from 'crankwright/teaching';
import type { MathNode, SymbolNode } from 'mathjs';
import type ts from 'typescript';
import { math } from '../../src/teaching/evaluate.js';

/**
 * The formulas in the doc comment of a function: every line that is set in by four spaces more and reads
 * `name = expression`. A note may follow after three spaces. They may be set in the signs of a book.
 */
export function formulasOf(signature: ts.SignatureDeclaration): ReadonlySet<string> {
  const text = signature.getSourceFile().text.slice(signature.getFullStart(), signature.getStart());
  const lines = [...text.matchAll(/^ *\* {5}(\S.*)$/gm)].map(([, line = '']) => line);
  return new Set(lines.flatMap((line) => equationIn(line.replace(/ {3,}.*$/, ''))));
}

/** The functions whose documentation a doc comment points to. */
export function linkedFrom(signature: ts.SignatureDeclaration): readonly string[] {
  const text = signature.getSourceFile().text.slice(signature.getFullStart(), signature.getStart());
  return [...text.matchAll(/\{@link (\w+)\}/g)].map(([, name = '']) => name);
}

/** The formula of a card as the doc comment of its function writes it: fields for letters, and no units. */
export const formulaOn = (card: FormulaCard): string => plain(card.expression, card);

/** Its definitions likewise, without those that hold numbers out of a table. */
export function definitionsOn(card: FormulaCard): readonly string[] {
  return card.where.flatMap((line) => {
    const [name = '', rest = ''] = line.split(/ = (.*)/);
    const { written = name } = card.defines[name] ?? {};
    return card.tabled.includes(name) ? [] : [`${written} = ${plain(rest, card)}`];
  });
}

/** Both ways in which a card may ask for an equation: with the name before it, or without. */
function equationIn(line: string): readonly string[] {
  const [name = '', rest = ''] = line.split(/ = (.*)/);
  try {
    const expression = plain(rest);
    return [expression, `${name.trim()} = ${expression}`];
  } catch {
    return [];
  }
}

/**
 * An expression as mathjs writes it, without units. What a card writes for the sake of the last digits, expm1 and
 * log1p, a book writes plainly.
 */
function plain(expression: string, card?: FormulaCard): string {
  const typed = expression
    .replace(/ (\/|\*) (?:\(1 [^()]+\)|1 (?:rad|s|mm\^2\/s)\b)/g, '')
    .replace(/(\d)(?: (?:kg|K|deg)\b[\w^/]*|°)/g, '$1')
    .replace(/-expm1\(([^()]*)\)/g, '(1 - exp($1))')
    .replace(/\blog1p\(-/g, 'log(1 - ')
    .replace(/π/g, 'pi')
    .replace(/√\(/g, 'sqrt(')
    .replace(/\bln\(/g, 'log(')
    .replace(/²/g, '^2')
    .replace(/³/g, '^3');
  const named = math
    .parse(typed)
    .transform((node: MathNode) =>
      node.type === 'SymbolNode' ? new math.SymbolNode(nameOf(node as SymbolNode, card)) : node,
    );
  return named.toString({ parenthesis: 'auto', implicit: 'show' });
}

/**
 * What the documentation calls a letter, or else the last name of its field; where two letters would bear that, with
 * its place in a list or its owner.
 */
function nameOf({ name }: SymbolNode, card?: FormulaCard): string {
  const letter = card?.letters[name];
  if (!card || letter === undefined) return card?.defines[name]?.written ?? name;
  const { field, written } = letter;
  if (written !== undefined) return written;
  const last = lastOf(field);
  const alike = Object.values(card.letters).filter((letter) => lastOf(letter.field) === last);
  if (alike.length === 1) return last;
  const [, owner, place] = /(\w+)(?:\[(\d+)\])?\.\w+$/.exec(field) ?? [];
  if (owner === undefined) return last;
  return place === undefined
    ? `${owner}${last.charAt(0).toUpperCase()}${last.slice(1)}`
    : `${last}_${Number(place) + 1}`;
}

const lastOf = (field: string) => field.replace(/^.*\./, '').replace(/\[\d+\]/g, '');
