import { relative, resolve } from 'node:path';
import ts from 'typescript';
import { SignatureReader } from './signatures-of-types.js';

const root = resolve(import.meta.dirname, '..');
const src = `${root}/src`;

/** Where the signatures are kept. */
export const SIGNATURE_FILE = 'mathjs/signatures.ts';

/** The text of the file of signatures: every function of the rooms that `crankwright` alone holds. */
export function signatureFile(program: ts.Program = programOfSources()): string {
  const checker = program.getTypeChecker();
  const entry = program.getSourceFile(`${src}/index.ts`);
  const module = entry && checker.getSymbolAtLocation(entry);
  if (!module) throw new Error('src/index.ts exports nothing.');
  const reader = new SignatureReader(checker, (declaration) =>
    declaration.getSourceFile().fileName.startsWith(`${src}/`),
  );
  for (const exported of checker.getExportsOfModule(module).sort(byName)) {
    const isAlias = exported.flags & ts.SymbolFlags.Alias;
    const symbol = isAlias ? checker.getAliasedSymbol(exported) : exported;
    const declaration = symbol.declarations?.[0];
    if (!declaration) continue;
    const [room = ''] = relative(src, declaration.getSourceFile().fileName).split('/');
    reader.read(exported.name, room, symbol);
  }
  const lines = (entries: Iterable<readonly [string, unknown]>) =>
    [...entries].map(([name, value]) => `  ${JSON.stringify(name)}: ${JSON.stringify(value)},`);
  return [
    '// What every function takes and gives. Made by `npm run signatures` from the types.',
    "import type { ConstantSignature, Signature, ValueShape } from './shapes.js';",
    '',
    '/** Every function by its name. */',
    'export const signatures: Readonly<Record<string, Signature>> = {',
    ...lines(reader.functions),
    '};',
    '',
    '/** Every quantity that has a name, and every value made of some. */',
    'export const constantSignatures: Readonly<Record<string, ConstantSignature>> = {',
    ...lines(reader.constants),
    '};',
    '',
    '/** The types that they share, by their names. */',
    'export const sharedShapes: Readonly<Record<string, ValueShape>> = {',
    ...lines([...reader.types].sort()),
    '};',
    '',
  ].join('\n');
}

function programOfSources(): ts.Program {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [] }, ts.sys, root);
  return ts.createProgram([`${src}/index.ts`], options);
}

const byName = (a: ts.Symbol, b: ts.Symbol): number => (a.name < b.name ? -1 : 1);
