import type { Draft } from './draft.js';
import type { Kind } from './kinds.js';
import { type Row, sumOfTerms, type Term } from './model.js';

/** Missing parts that an owner would look for as one, with the terms that count them. */
export interface MissingParts {
  readonly kinds: readonly Kind<unknown>[];
  readonly terms: readonly Term[];
}

/**
 * What a solution lacks, part by part. The size of shells is open as long as the crankshaft they go on is lacking too,
 * and that of pistons and rings as long as the block is.
 */
export function missingIn({ lacking }: Draft, values: readonly number[]): readonly MissingParts[] {
  const isLacking = (section: Kind<unknown>['section']) =>
    lacking.some(([term, kind]) => kind.section === section && sumOfTerms([term], values) > 0);
  const openWith = { shells: 'crankshafts', pistonSets: 'blocks', ringSets: 'blocks' } as const;
  const groups = new Map<unknown, { kinds: Kind<unknown>[]; terms: Term[] }>();
  for (const [term, kind] of lacking) {
    const { section, ready } = kind;
    const goesWith = openWith[section as keyof typeof openWith];
    const isOpen = goesWith !== undefined && isLacking(goesWith);
    const { fits } = ready as { readonly fits?: string };
    const key = isOpen ? JSON.stringify([section, fits]) : kind;
    const group = groups.get(key) ?? { kinds: [], terms: [] };
    if (!group.kinds.includes(kind)) group.kinds.push(kind);
    group.terms.push(term);
    groups.set(key, group);
  }
  return [...groups.values()].filter(({ terms }) => sumOfTerms(terms, values) > 0);
}

/**
 * Forbids a solution that lacks these parts. Of all that weigh as much, another one lacks fewer of some of them: each
 * gets a variable that is 1 only if it does, and one of these must be.
 */
export function forbid(
  draft: Draft,
  missing: readonly MissingParts[],
  values: readonly number[],
): Row {
  const fewer = missing.map(({ kinds, terms }): Term => {
    const count = sumOfTerms(terms, values);
    const most = kinds.reduce((sum, kind) => sum + kind.count, 0);
    const variable = draft.model.variable(1);
    draft.model.rows.push({
      terms: [...terms, [variable, most]],
      min: -Infinity,
      max: count - 1 + most,
    });
    return [variable, 1];
  });
  return { terms: fewer, min: 1, max: Infinity };
}
