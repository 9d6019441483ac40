import ts from 'typescript';
import {
  descriptionOf,
  placeOf,
  signaturesOf,
  signatureUnitViolations,
  type Violation,
} from './doc-rules.js';
import { unitProblem, unitsOfType, unitsWithin } from './type-units.js';

/**
 * Whether every quantity that can be reached from the exports ends in its unit:
 * parameters and results of functions, fields of every type they speak of,
 * constants, and the named quantities themselves.
 */
export function unitViolations(
  exported: ReadonlyMap<string, ts.Symbol>,
  checker: ts.TypeChecker,
  isOwn: (file: ts.SourceFile) => boolean,
): readonly Violation[] {
  const violations: Violation[] = [];
  const seen = new Set<ts.Node>();

  const checkText = (name: string, node: ts.Node): ReadonlySet<string> | undefined => {
    const type = checker.getTypeAtLocation(node);
    const units = unitsOfType(type, checker);
    const problem = unitProblem(descriptionOf(node), { units, within: unitsWithin(type, checker) });
    if (problem) violations.push({ at: placeOf(node), problem: `${name} ${problem}` });
    return units;
  };

  const visitSignatures = (name: string, signatures: readonly ts.SignatureDeclaration[]): void => {
    violations.push(...signatureUnitViolations(name, signatures, checker));
    for (const { parameters, type } of signatures) {
      for (const parameter of parameters) if (parameter.type) visit(parameter.type, name);
      if (type) visit(type, name);
    }
  };

  const follow = (node: ts.Node): void => {
    const symbol = checker.getSymbolAtLocation(node);
    const target =
      symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    for (const declaration of target?.declarations ?? []) {
      if (isOwn(declaration.getSourceFile())) visit(declaration, target?.name ?? '');
    }
  };

  const visit = (node: ts.Node, owner: string): void => {
    if (seen.has(node)) return;
    seen.add(node);
    if (ts.isPropertySignature(node) || ts.isPropertyDeclaration(node)) {
      if (isHidden(node)) return;
      const name = `${owner}.${node.name.getText()}`;
      // The text of a span says it for both of its ends.
      if (!checkText(name, node) && node.type) visit(node.type, name);
    } else if (ts.isCallSignatureDeclaration(node)) {
      visitSignatures(`${owner}(…)`, [node]);
    } else if (ts.isMethodSignature(node) || ts.isMethodDeclaration(node)) {
      if (!isHidden(node)) visitSignatures(`${owner}.${node.name.getText()}`, [node]);
    } else if (ts.isTypeReferenceNode(node)) {
      follow(node.typeName);
      for (const argument of node.typeArguments ?? []) visit(argument, owner);
    } else if (ts.isExpressionWithTypeArguments(node)) {
      follow(node.expression);
    } else if (!ts.isFunctionLike(node)) {
      ts.forEachChild(node, (child) => visit(child, owner));
    }
  };

  for (const [name, symbol] of exported) {
    const signatures = signaturesOf(symbol);
    if (signatures.length > 0) {
      visitSignatures(name, signatures);
      continue;
    }
    for (const node of symbol.declarations ?? []) {
      if (ts.isVariableDeclaration(node)) checkText(name, node);
      else if (!isNamedQuantity(node)) visit(node, name);
      else if (!descriptionOf(node).includes(`[${unitName(node, checker)}]`)) {
        const problem = `${name} must name its unit, [${unitName(node, checker)}]`;
        violations.push({ at: placeOf(node), problem });
      }
    }
  }
  return violations;
}

/** `type Length = Quantity<'length'>`. */
function isNamedQuantity(node: ts.Node): node is ts.TypeAliasDeclaration {
  return (
    ts.isTypeAliasDeclaration(node) &&
    ts.isTypeReferenceNode(node.type) &&
    node.type.typeName.getText() === 'Quantity'
  );
}

function unitName(node: ts.TypeAliasDeclaration, checker: ts.TypeChecker): string {
  return [...(unitsOfType(checker.getTypeAtLocation(node), checker) ?? [])].join(', ');
}

function isHidden(
  node: ts.PropertySignature | ts.PropertyDeclaration | ts.MethodSignature | ts.MethodDeclaration,
) {
  const hidden = ts.ModifierFlags.Private | ts.ModifierFlags.Protected;
  return ts.isPrivateIdentifier(node.name) || (ts.getCombinedModifierFlags(node) & hidden) !== 0;
}
