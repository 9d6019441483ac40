import type { Draft } from './draft.js';
import { apartFromTheirs, enginesIn, termsIn } from './kept-together.js';
import type { Member } from './kinds.js';
import { type Term, upTo } from './model.js';
import type { Preference } from './preferences.js';

/** What an owner wants as little of as can be. */
export type Wish = readonly [preference: Preference, least: readonly Term[]];

/**
 * What an owner wants among equal plans, in order: sums in a model of one engine for each block, of which the least
 * is the best. What the shed says nothing of is left out. It adds the variables that it needs to the model.
 */
export function wishesIn(draft: Draft): readonly Wish[] {
  const all: readonly Wish[] = [
    ['belongs together', apartFromTheirs(draft)],
    ['engines that ran', brokenUp(draft)],
    ['origin', strangers(draft)],
    ['one make of shell', makes(draft)],
    ['not home-made', homeMade(draft)],
    ['order of the file', outOfOrder(draft)],
  ];
  return all.filter(([, least]) => least.length > 0);
}

/** The parts whose origin is not that of the block they go with. */
const strangers = (draft: Draft): readonly Term[] =>
  mixed(draft, ({ member, origin }) => member?.from !== origin);

/** The parts of engines that ran in other engines, and the parts of other engines in those. */
const brokenUp = (draft: Draft): readonly Term[] =>
  mixed(
    draft,
    ({ member, origin, ran }) =>
      member?.from !== undefined &&
      member.from !== origin &&
      (member.ran || (origin !== undefined && ran)),
  );

interface Met {
  /** A part, and the origin of the block that it goes with. */
  readonly member: Member | undefined;
  readonly origin: string | undefined;
  /** Whether the engine of that block ran. */
  readonly ran: boolean;
}

/** The parts that meet a block as told. */
function mixed(draft: Draft, isCounted: (met: Met) => boolean): readonly Term[] {
  const kinds = [...draft.taken.keys()];
  return enginesIn(draft).flatMap(({ batch, origin, ran }) =>
    kinds.flatMap((kind) =>
      kind.section !== 'blocks' && isCounted({ member: kind.members[0], origin, ran })
        ? termsIn(draft, kind, batch)
        : [],
    ),
  );
}

/** The makes of shell of every engine; one that is not known counts as a make of its own. */
function makes(draft: Draft): readonly Term[] {
  const shells = [...draft.taken.keys()].filter(({ section }) => section === 'shells');
  const all = new Set(shells.map(({ members }) => members[0]?.make));
  if (all.size < 2) return [];
  return enginesIn(draft).flatMap(({ batch }) =>
    [...all].map((make): Term => {
      const its = shells.filter(({ members }) => members[0]?.make === make);
      const variable = draft.model.variable(1);
      const taken = its.flatMap((kind) => termsIn(draft, kind, batch));
      const terms = [...taken, [variable, -MANY_SHELLS] as const];
      draft.model.rows.push(upTo(terms, 0));
      return [variable, 1];
    }),
  );
}

/** More pairs of shells than any engine has. */
const MANY_SHELLS = 64;

const homeMade = ({ taken }: Draft): readonly Term[] =>
  [...taken].flatMap(([{ members }, terms]) => (members[0]?.homeMade ? terms : []));

/** How far parts are from the order of the file: later parts, and parts in an order other than that of their blocks. */
function outOfOrder(draft: Draft): readonly Term[] {
  const seen = new Map<string, number>();
  return [...draft.taken].flatMap(([{ section }, terms]) => {
    const place = (seen.get(section) ?? 0) + 1;
    seen.set(section, place);
    return terms.map(([variable, count]): Term => {
      const { index = 0 } = draft.uses[variable]?.batch ?? {};
      return [variable, count * place * (AFTER_ANY - index)];
    });
  });
}

/** More than the number of any batch. */
const AFTER_ANY = 100;
