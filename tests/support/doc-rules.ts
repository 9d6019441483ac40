import ts from 'typescript';
import { fromRoot } from './repo.js';
import { unitProblem, unitsOfType, unitsWithin } from './type-units.js';

/** A place where the documentation breaks a rule. */
export interface Violation {
  /** `file:line`. */
  readonly at: string;
  readonly problem: string;
}

/** Everything that entry files export, by name, aliases resolved. */
export function exportsOf(
  program: ts.Program,
  entries: readonly string[],
): ReadonlyMap<string, ts.Symbol> {
  const checker = program.getTypeChecker();
  const all = new Map<string, ts.Symbol>();
  for (const path of entries) {
    const file = program.getSourceFile(path);
    const module = file && checker.getSymbolAtLocation(file);
    if (!module) throw new Error(`${path} exports nothing.`);
    for (const symbol of checker.getExportsOfModule(module)) {
      const isAlias = symbol.flags & ts.SymbolFlags.Alias;
      all.set(symbol.name, isAlias ? checker.getAliasedSymbol(symbol) : symbol);
    }
  }
  return all;
}

export const placeOf = (node: ts.Node): string => {
  const file = node.getSourceFile();
  const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
  return `${fromRoot(file.fileName)}:${line + 1}`;
};

/** The text of a doc comment or tag on one line. */
export const textOf = (comment: ts.JSDoc['comment'] | undefined): string =>
  (ts.getTextOfJSDocComment(comment) ?? '').replace(/\s+/g, ' ').trim();

/** The description of a node, without its tags. */
export function descriptionOf(node: ts.Node): string {
  return ts
    .getJSDocCommentsAndTags(node)
    .filter(ts.isJSDoc)
    .map(({ comment }) => textOf(comment))
    .join(' ');
}

/** The declarations of an exported function, one for each overload; none if it is something else. */
export function signaturesOf(symbol: ts.Symbol): readonly ts.SignatureDeclaration[] {
  const declared = (symbol.declarations ?? []).flatMap((node): ts.SignatureDeclaration[] => {
    if (ts.isFunctionDeclaration(node)) return [node];
    const value = ts.isVariableDeclaration(node) ? node.initializer : undefined;
    return value && (ts.isArrowFunction(value) || ts.isFunctionExpression(value)) ? [value] : [];
  });
  const overloads = declared.filter((node) => ts.isFunctionDeclaration(node) && !node.body);
  return overloads.length > 0 ? overloads : declared;
}

/** Whether an exported function is documented in full; `mayNotThrow` names those without a `@throws`. */
export function functionViolations(
  exported: ReadonlyMap<string, ts.Symbol>,
  mayNotThrow: Readonly<Record<string, string>>,
): readonly Violation[] {
  return [...exported].flatMap(([name, symbol]) => {
    const [first] = signaturesOf(symbol);
    if (!first) return [];
    const tags = ts.getJSDocTags(first);
    const has = (tag: string) =>
      tags.some((one) => one.tagName.text === tag && textOf(one.comment));
    const missing = [
      ...(descriptionOf(first) === '' ? ['a description'] : []),
      ...first.parameters
        .filter((parameter) => paramText(first, parameter) === '')
        .map((parameter) => `@param ${parameter.name.getText()}`),
      ...(returnsNothing(first) || has('returns') ? [] : ['@returns']),
      ...(has('example') ? [] : ['@example']),
      ...(first.parameters.length === 0 || has('throws') || name in mayNotThrow ? [] : ['@throws']),
    ];
    const names = new Set(first.parameters.map((parameter) => parameter.name.getText()));
    const unknown = tags
      .filter(ts.isJSDocParameterTag)
      .filter((tag) => !names.has(tag.name.getText()))
      .map((tag) => `@param ${tag.name.getText()} is not a parameter`);
    const problems = [...missing.map((what) => `${what} is missing`), ...unknown];
    return problems.map((problem) => ({ at: placeOf(first), problem: `${name}: ${problem}` }));
  });
}

const returnsNothing = (node: ts.SignatureDeclaration): boolean =>
  node.type?.kind === ts.SyntaxKind.VoidKeyword || node.type?.kind === ts.SyntaxKind.NeverKeyword;

/** What a signature says of one of its parameters, without the dash. */
export function paramText(
  signature: ts.SignatureDeclaration,
  parameter: ts.ParameterDeclaration,
): string {
  const tag = ts
    .getJSDocTags(signature)
    .filter(ts.isJSDocParameterTag)
    .find(({ name }) => name.getText() === parameter.name.getText());
  return textOf(tag?.comment).replace(/^-\s*/, '');
}

/** Whether the parameters and the result of a function end in their units, all overloads together. */
export function signatureUnitViolations(
  name: string,
  signatures: readonly ts.SignatureDeclaration[],
  checker: ts.TypeChecker,
): readonly Violation[] {
  const [first] = signatures;
  if (!first) return [];
  const check = (what: string, text: string, types: readonly ts.Type[]): readonly Violation[] => {
    const problem = problemOf(text, types, checker);
    return problem ? [{ at: placeOf(first), problem: `${name} ${what} ${problem}` }] : [];
  };
  const parameters = first.parameters.flatMap((parameter, i) => {
    const types = signatures.flatMap((signature) => {
      const same = signature.parameters[i];
      return same ? [checker.getTypeAtLocation(same)] : [];
    });
    return check(`@param ${parameter.name.getText()}`, paramText(first, parameter), types);
  });
  const returns = signatures.flatMap((signature) => {
    const resolved = checker.getSignatureFromDeclaration(signature);
    return resolved ? [checker.getReturnTypeOfSignature(resolved)] : [];
  });
  const tag = ts.getJSDocTags(first).find(({ tagName }) => tagName.text === 'returns');
  return [...parameters, ...check('@returns', textOf(tag?.comment), returns)];
}

function problemOf(
  text: string,
  types: readonly ts.Type[],
  checker: ts.TypeChecker,
): string | undefined {
  const each = types.map((type) => unitsOfType(type, checker, true));
  const units = each.every((one) => one !== undefined)
    ? new Set(each.flatMap((one) => [...(one ?? [])]))
    : undefined;
  const within = new Set(types.flatMap((type) => [...unitsWithin(type, checker)]));
  return unitProblem(text, { units, within });
}
