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

/** What the doc comment of its function must write out for a card: fields for letters, and no units. */
export function formulasOn(card: FormulaCard): readonly string[] {
  const isTabled = (line: string) => card.tabled.some((name) => line.startsWith(`${name} = `));
  const lines = [
    ...card.where.filter((line) => !isTabled(line)),
    `${card.gives.symbol} = ${card.expression}`,
  ];
  return lines.map((line) => {
    const [name = '', rest = ''] = line.split(/ = (.*)/);
    return `${line === lines.at(-1) ? '' : `${name} = `}${plain(rest, card)}`;
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

/** An expression as mathjs writes it, without the units that make it pure numbers or angles. */
function plain(expression: string, card?: FormulaCard): string {
  const typed = expression
    .replace(/ (\/|\*) (?:\(1 [^()]+\)|1 (?:rad|s|mm\^2\/s)\b)/g, '')
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

function nameOf({ name }: SymbolNode, card?: FormulaCard): string {
  const letter = card?.letters[name];
  return letter?.written ?? letter?.field.replace(/^.*\./, '').replace(/\[\d+\]/g, '') ?? name;
}
