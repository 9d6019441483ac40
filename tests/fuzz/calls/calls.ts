import { objectsIn, replaced, valueAt } from '../hostile.js';

/** How one exported function is called in the tests. */
export interface Calls {
  /** Calls it with whatever is given; what it gives is awaited. */
  readonly run: (args: readonly unknown[]) => unknown;
  /** Arguments that it takes. */
  readonly sound: readonly (readonly unknown[])[];
  /** What it must refuse, by the cause that its documentation names. */
  readonly provoked: Readonly<Record<string, Refused>>;
  /** Why the result need not survive JSON, where it need not. */
  readonly notJson?: string;
  /** The function that makes its first argument, where one does. */
  readonly madeBy?: string;
  /** How many wrong values are tried at most, where a call takes long: a plan takes a tenth of a second. */
  readonly cases?: number;
}

/** A call that is refused. */
export interface Refused {
  /** The parameter that the refusal names; with a dot before it, the end of its path. */
  readonly names: string;
  readonly args: readonly unknown[];
}

/** Names the parameter that a call is refused for. */
export const refused = (names: string, ...args: readonly unknown[]): Refused => ({ names, args });

/** A sound call with a misspelt field in the first of its own objects, if there is one. */
function misspelt(sound: readonly unknown[], isMade: boolean): Calls['provoked'] {
  const path = objectsIn(sound).find(([argument]) => !(isMade && argument === 0));
  if (path === undefined) return {};
  const object = { ...(valueAt(sound, path) as object), misspelt: 1 };
  const args = replaced(sound, path, object) as readonly unknown[];
  return { 'a field is misspelt': refused('.misspelt', ...args) };
}

type AnyFunction = (...args: never[]) => unknown;

/** Names the calls of a function. Sound ones are type-checked, so that they follow its signature. */
export function calls<F extends AnyFunction>(
  run: F,
  {
    sound,
    provoked,
    ...about
  }: {
    readonly sound: readonly Readonly<Parameters<F>>[];
    readonly provoked: Calls['provoked'];
  } & Pick<Calls, 'notJson' | 'madeBy' | 'cases'>,
): Calls {
  return {
    run: (args) => run(...(args as Parameters<F>)),
    sound,
    provoked: { ...misspelt(sound[0] ?? [], about.madeBy !== undefined), ...provoked },
    ...about,
  };
}
