import { largestOf } from '../quantities/internal.js';
import type { Use } from './draft.js';
import type { Kind } from './kinds.js';
import { kindsIn } from './kinds-in.js';
import type { Stock } from './stock.js';

/** The names of the parts that others fit only with. */
export function matesOf(stock: Stock): ReadonlySet<string> {
  return new Set(kindsIn(stock).flatMap(({ onlyWith }) => onlyWith ?? []));
}

/** Brings parts and what they fit only with into one engine, as far as taking them in order can. */
export class Matchmaker {
  readonly #there = new Set<string>();
  readonly #wanted = new Set<string>();

  constructor(private readonly mates: ReadonlySet<string>) {}

  /** Which of some uses an engine best takes next: one that goes with its parts, or else one that nothing else asks for. */
  best<U extends Use>(uses: readonly U[]): U | undefined {
    const rank = (use: Use) => largestOf([-1, ...kindsOfUse(use).map((kind) => this.#rank(kind))]);
    return [...uses].sort((a, b) => rank(b) - rank(a))[0];
  }

  /** Notes what an engine took. */
  took(use: Use): void {
    for (const { members, onlyWith = [] } of kindsOfUse(use)) {
      const [member] = members;
      if (member) this.#there.add(member.name);
      for (const mate of onlyWith) this.#wanted.add(mate);
    }
  }

  #rank({ members, onlyWith }: Kind<unknown>): number {
    const name = members[0]?.name ?? '';
    if (onlyWith) return onlyWith.some((mate) => this.#there.has(mate)) ? 2 : 0;
    if (this.#wanted.has(name)) return 2;
    return this.mates.has(name) ? 0 : 1;
  }
}

/** The kinds that a use takes from. */
function kindsOfUse(use: Use): readonly Kind<unknown>[] {
  if ('kind' in use) return [use.kind];
  return 'pack' in use ? use.pack : [];
}
