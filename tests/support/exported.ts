import ts from 'typescript';
import { exportsOf } from './doc-rules.js';
import { compilerOptions, entryPoints } from './repo.js';

const entries = entryPoints().map(({ path }) => path);

/** All entry points as the compiler sees them, read once for all tests that ask. */
export const program = ts.createProgram(entries, compilerOptions());

/** Everything that they export, by name. */
export const exported = exportsOf(program, entries);
