import { RebuildInputError } from '../quantities/index.js';
import { complaintOf } from '../quantities/internal.js';

/** What the arguments of a function are called where they come from, by what it calls them itself. */
export type Names = Readonly<Record<string, string>>;

/**
 * Hands part of an argument on to another function. What that one refuses is named from the argument
 * on: `journal` becomes `bearing.journal`. The longest name that the refused path begins with
 * counts; an empty name stands for all others. A `result` is computed, and no part of an argument.
 * Names are only asked for when something is refused.
 */
export function namedFrom<T>(names: () => Names, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw error instanceof RebuildInputError ? renamed(error, names()) : error;
  }
}

function renamed(error: RebuildInputError, names: Names): RebuildInputError {
  const { value, expected, hint, example } = error;
  // A complaint is made of what is shown and the problem with it.
  const [shown = '', ...problem] = complaintOf(error).split(' ');
  const parameter = renamedPath(error.parameter, names);
  return new RebuildInputError({
    parameter,
    value,
    expected,
    hint,
    example,
    shown,
    problem: problem.join(' '),
  });
}

function renamedPath(path: string, names: Names): string {
  const [longest] = Object.keys(names)
    .filter(
      (name) => name !== '' && path.startsWith(name) && /^(?:$|[.[])/.test(path.slice(name.length)),
    )
    .sort((a, b) => b.length - a.length);
  if (longest !== undefined) return `${names[longest]}${path.slice(longest.length)}`;
  return names[''] === undefined || path === 'result' ? path : `${names['']}.${path}`;
}
