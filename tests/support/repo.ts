import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** The root of the repository, with forward slashes and no slash at its end. */
export const root = fileURLToPath(new URL('../../', import.meta.url)).replace(/[\\/]$/, '');

/** A path below the root, for messages: `src/oil/blend.ts`. */
export const fromRoot = (path: string): string =>
  path.startsWith(`${root}/`) ? path.slice(root.length + 1) : path;

/** Every file below a folder, in order, as absolute paths. A folder that is not there has none. */
export function filesUnder(folder: string, extension: string): readonly string[] {
  const path = `${root}/${folder}`;
  if (!existsSync(path)) return [];
  return readdirSync(path, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(extension))
    .map((name) => `${path}/${name.replaceAll('\\', '/')}`)
    .sort();
}

/** The compiler options of the repository's own tsconfig.json. */
export function compilerOptions(): ts.CompilerOptions {
  const path = `${root}/tsconfig.json`;
  const { config, error } = ts.readConfigFile(path, ts.sys.readFile);
  if (error) throw new Error(ts.flattenDiagnosticMessageText(error.messageText, '\n'));
  // Only the options are wanted: with no files to include it need not list any.
  const parsed = ts.parseJsonConfigFileContent({ ...config, include: [], files: [] }, ts.sys, root);
  return { ...parsed.options, noEmit: true, configFilePath: path };
}

/** One way into the package. */
export interface EntryPoint {
  /** What is imported: `crankwright/shed`. */
  readonly specifier: string;
  /** Its source file. */
  readonly path: string;
}

/** The entry points that tsconfig.json names and that exist by now. */
export function entryPoints(): readonly EntryPoint[] {
  return Object.entries(compilerOptions().paths ?? {})
    .map(([specifier, [path = '']]) => ({ specifier, path: `${root}/${path.replace('./', '')}` }))
    .filter(({ path }) => existsSync(path));
}

/** What an entry point exports at run time. */
export type ModuleValues = Readonly<Record<string, unknown>>;

/** Imports every entry point. */
export async function importEntries(): Promise<ReadonlyMap<string, ModuleValues>> {
  const modules = new Map<string, ModuleValues>();
  for (const { specifier, path } of entryPoints()) {
    modules.set(specifier, (await import(/* @vite-ignore */ path)) as ModuleValues);
  }
  return modules;
}
