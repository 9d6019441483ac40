import type { Use } from './draft.js';
import type { Kind, Member } from './kinds.js';
import type { Matchmaker } from './matchmaker.js';

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
  readonly #matchmaker: Matchmaker | undefined;

  /** Takes over the list, which shrinks with every use taken. */
  constructor(uses: Use[], matchmaker?: Matchmaker) {
    this.#left = uses;
    this.#matchmaker = matchmaker;
  }

  /** The same pile, for one engine: it takes what goes with the parts it has. */
  by(matchmaker: Matchmaker): Pile {
    return new Pile(this.#left, matchmaker);
  }

  all<U extends Use['use']>(name: U): readonly UseOf<U>[] {
    return this.#left.filter((use): use is UseOf<U> => use.use === name);
  }

  /** Takes the first matching use, or the one that goes best with an engine, if there is one. */
  find<U extends Use['use']>(name: U, fits: (use: UseOf<U>) => boolean): UseOf<U> | undefined {
    const isIt = (use: Use) => use.use === name && fits(use as UseOf<U>);
    const found = this.#matchmaker
      ? this.#matchmaker.best(this.#left.filter(isIt))
      : this.#left.find(isIt);
    if (found === undefined) return undefined;
    this.#left.splice(this.#left.indexOf(found), 1);
    this.#matchmaker?.took(found);
    return found as UseOf<U>;
  }

  /** Takes the first matching use; the model guarantees that there is one. */
  take<U extends Use['use']>(name: U, fits: (use: UseOf<U>) => boolean): UseOf<U> {
    const found = this.find(name, fits);
    if (found) return found;
    throw new Error(`The plan lacks ${name}: its model does not balance. Please report the shed.`);
  }
}
