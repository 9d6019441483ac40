import ts from 'typescript';
import { compilerOptions } from './repo.js';

/** What stands on the disk, read, parsed and bound once: every program that the tests make is of the same files. */
const parsed = new Map<string, ts.SourceFile | undefined>();

/** A program of files and of all that they import, with the repository's options. Some may exist in memory only. */
export function programOf(
  paths: readonly string[],
  inMemory: ReadonlyMap<string, string> = new Map(),
): ts.Program {
  const options = compilerOptions();
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => inMemory.has(path) || fileExists(path);
  host.readFile = (path) => inMemory.get(path) ?? readFile(path);
  host.getSourceFile = (path, how) => {
    if (inMemory.has(path)) return getSourceFile(path, how);
    if (!parsed.has(path)) parsed.set(path, getSourceFile(path, how));
    return parsed.get(path);
  };
  return ts.createProgram([...paths, ...inMemory.keys()], options, host);
}
