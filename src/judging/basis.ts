import { guardObject, guardText, guardWord } from './guards.js';

/**
 * Who set a limit. `specified` is the caller's own (the maker's manual, the
 * machinist) and always wins; `published` names its document; `common practice`
 * is a rule of thumb and says which.
 */
export type Basis =
  | {
      /** The caller's own limit. */
      readonly kind: 'specified';
      /** The document or person it came from, if that was said. */
      readonly by?: string;
    }
  | {
      /** A limit that a document prints, perhaps for another engine. */
      readonly kind: 'published';
      /** The document and its page or section. */
      readonly source: string;
    }
  | {
      /** A rule of thumb. */
      readonly kind: 'common practice';
      /** The rule, in words. */
      readonly rule: string;
    };

/** Names a basis in a few words. */
export function describeBasis(basis: Basis): string {
  switch (basis.kind) {
    case 'specified':
      return basis.by === undefined ? 'specified' : `specified by ${basis.by}`;
    case 'published':
      return `published: ${basis.source}`;
    case 'common practice':
      return `common practice: ${basis.rule}`;
  }
}

/** Refuses a basis that does not say who set the limit. */
export function guardBasis(parameter: string, basis: Basis): Basis {
  guardObject(parameter, basis);
  guardWord(`${parameter}.kind`, basis.kind, ['specified', 'published', 'common practice']);
  if (basis.kind === 'specified' && basis.by !== undefined) guardText(`${parameter}.by`, basis.by);
  if (basis.kind === 'published') guardText(`${parameter}.source`, basis.source);
  if (basis.kind === 'common practice') guardText(`${parameter}.rule`, basis.rule);
  return basis;
}
