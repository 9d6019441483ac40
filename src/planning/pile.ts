import type { Use } from './draft.js';
import type { Kind, Member } from './kinds.js';

/** A part taken by an engine: a member of its kind. */
export interface Taken<K extends Kind<unknown>> {
  readonly kind: K;
  readonly member: Member;
}

/** The use that a variable of one sort counts. */
export type UseOf<U extends Use['use']> = Extract<Use, { readonly use: U }>;

/** Takes the parts of a kind by name, in the order of the file. */
export class Picker {
  readonly #next = new Map<Kind<unknown>, number>();

  pick<K extends Kind<unknown>>(kind: K): Taken<K> {
    const next = this.#next.get(kind) ?? 0;
    this.#next.set(kind, next + 1);
    let before = 0;
    const member = kind.members.find(({ count }) => {
      before += count;
      return next < before;
    });
    return { kind, member: member as Member };
  }
}

/** The uses that a model counted in one batch, each repeated by its count. */
export class Pile {
  readonly #left: Use[];

  constructor(uses: readonly Use[]) {
    this.#left = [...uses];
  }

  all<U extends Use['use']>(name: U): readonly UseOf<U>[] {
    return this.#left.filter((use): use is UseOf<U> => use.use === name);
  }

  /** Takes the first matching use, if there is one. */
  find<U extends Use['use']>(name: U, fits: (use: UseOf<U>) => boolean): UseOf<U> | undefined {
    const at = this.#left.findIndex((use) => use.use === name && fits(use as UseOf<U>));
    return at < 0 ? undefined : (this.#left.splice(at, 1)[0] as UseOf<U>);
  }

  /** Takes the first matching use; the model guarantees that there is one. */
  take<U extends Use['use']>(name: U, fits: (use: UseOf<U>) => boolean): UseOf<U> {
    const found = this.find(name, fits);
    if (found) return found;
    throw new Error(`The plan lacks ${name}: its model does not balance. Please report the shed.`);
  }
}
