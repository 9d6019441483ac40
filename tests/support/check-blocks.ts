import ts from 'typescript';
import type { Block, BlockProblem } from './blocks.js';
import { programOf } from './compiler.js';
import { program } from './exported.js';
import { entryPoints, root } from './repo.js';

/** A name that is in scope in every example. */
export interface ScopedName {
  readonly name: string;
  /** The entry point that exports it. */
  readonly from: string;
  /** Whether it is a type only. */
  readonly isType: boolean;
}

/**
 * Every name that the entry points export, in the order of the entry points. What several of them
 * export is named once, from the first.
 */
export function exportedNames(): readonly ScopedName[] {
  const checker = program.getTypeChecker();
  const met = new Set<ts.Symbol>();
  return entryPoints().flatMap(({ specifier, path }) => {
    const file = program.getSourceFile(path);
    const module = file && checker.getSymbolAtLocation(file);
    if (!module) throw new Error(`${path} exports nothing.`);
    return checker.getExportsOfModule(module).flatMap((symbol) => {
      const target = targetOf(symbol, checker);
      if (met.has(target)) return [];
      met.add(target);
      const isType = !(target.flags & ts.SymbolFlags.Value);
      return [{ name: symbol.name, from: specifier, isType }];
    });
  });
}

const targetOf = (symbol: ts.Symbol, checker: ts.TypeChecker): ts.Symbol =>
  symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;

/** Names that stand for different things at different entry points. */
export function clashes(names: readonly ScopedName[]): readonly string[] {
  const owners = new Map<string, string[]>();
  for (const { name, from } of names) owners.set(name, [...(owners.get(name) ?? []), from]);
  return [...owners]
    .filter(([, all]) => all.length > 1)
    .map(([name, all]) => `${name}: ${all.join(' and ')}`);
}

/** One line that imports what an example uses and does not declare itself; nothing for other blocks. */
export function preludeOf(block: Block, names: readonly ScopedName[]): string {
  if (!block.inScope) return '';
  const source = ts.createSourceFile('block.ts', block.code, ts.ScriptTarget.Latest, true);
  const used = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  const own = new Set(source.statements.flatMap(declaredBy));
  const wanted = names.filter(({ name }) => used.has(name) && !own.has(name));
  const imports = wanted.map(
    ({ name, from, isType }) => `import { ${isType ? `type ${name}` : name} } from '${from}';`,
  );
  // Even without an import it is a module, so that blocks do not see each other's names.
  return `${imports.join(' ')} export {};\n`;
}

function declaredBy(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.flatMap(({ name }) => namesIn(name));
  }
  if (ts.isImportDeclaration(statement)) {
    const bindings = statement.importClause?.namedBindings;
    if (!bindings) return [];
    return ts.isNamedImports(bindings)
      ? bindings.elements.map(({ name }) => name.text)
      : [bindings.name.text];
  }
  const named =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement);
  return named && statement.name ? [statement.name.text] : [];
}

function namesIn(name: ts.BindingName): readonly string[] {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.flatMap((element) =>
    ts.isBindingElement(element) ? namesIn(element.name) : [],
  );
}

/** Type-checks all blocks in one program of files that exist only in memory. */
export function typeErrors(
  blocks: readonly Block[],
  names: readonly ScopedName[],
): readonly BlockProblem[] {
  const files = new Map(
    blocks.map((block, index) => {
      const prelude = preludeOf(block, names);
      const text = `${prelude}${block.code}\n`;
      const firstLine = block.line - (prelude === '' ? 0 : 1);
      return [`${root}/tests/docs/block-${index}.ts`, { block, text, firstLine }];
    }),
  );
  const texts = new Map([...files].map(([name, { text }]) => [name, text]));
  const compiled = programOf([], texts);
  return [...files].flatMap(([name, { block, firstLine }]) => {
    const source = compiled.getSourceFile(name);
    if (!source) throw new Error(`${name} was not compiled.`);
    const found = [
      ...compiled.getSyntacticDiagnostics(source),
      ...compiled.getSemanticDiagnostics(source),
    ];
    return found.map(({ start = 0, messageText }) => ({
      at: `${block.file}:${firstLine + source.getLineAndCharacterOfPosition(start).line}`,
      problem: ts.flattenDiagnosticMessageText(messageText, '\n'),
    }));
  });
}
