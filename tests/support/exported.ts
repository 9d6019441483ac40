import { programOf } from './compiler.js';
import { exportsOf } from './doc-rules.js';
import { entryPoints } from './repo.js';

const entries = entryPoints().map(({ path }) => path);

/** All entry points as the compiler sees them, read once for all tests that ask. */
export const program = programOf(entries);

/** Everything that they export, by name. */
export const exported = exportsOf(program, entries);
