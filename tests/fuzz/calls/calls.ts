/** How one exported function is called in the tests. */
export interface Calls {
  /** Calls it with whatever is given; what it gives is awaited. */
  readonly run: (args: readonly unknown[]) => unknown;
  /** Arguments that it takes. */
  readonly sound: readonly (readonly unknown[])[];
  /** Arguments that it must refuse, by the documented cause. */
  readonly provoked: Readonly<Record<string, readonly unknown[]>>;
  /** Why the result need not survive JSON, where it need not. */
  readonly notJson?: string;
  /** The function that makes its first argument, where one does. */
  readonly madeBy?: string;
  /** How many wrong values are tried at most, where a call takes long: a plan takes a tenth of a second. */
  readonly cases?: number;
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
    readonly provoked: Readonly<Record<string, readonly unknown[]>>;
  } & Pick<Calls, 'notJson' | 'madeBy' | 'cases'>,
): Calls {
  return {
    run: (args) => run(...(args as Parameters<F>)),
    sound,
    provoked,
    ...about,
  };
}
