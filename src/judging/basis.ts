import { guardFields, guardObject, guardText, guardTruth, guardWord } from './guards.js';

/**
 * Who set a limit. `specified` is the caller's own (the maker's manual, the
 * machinist) and always wins; `published` names its document; `common practice`
 * is a rule of thumb and says which; `computed` is this library's own work and says how.
 */
export type Basis =
  | {
      /** The caller's own limit. */
      readonly kind: 'specified';
      /** The document or person it came from, if that was said. */
      readonly by?: string;
    }
  | {
      /** A limit that a document prints. */
      readonly kind: 'published';
      /** The document and its page or section, with what it says of the limit. */
      readonly source: string;
      /** It is of another engine than the one on the bench, and condemns no part of this one. */
      readonly forAnotherEngine?: boolean;
    }
  | {
      /** A rule of thumb. */
      readonly kind: 'common practice';
      /** The rule, in words. */
      readonly rule: string;
    }
  | {
      /** A limit that this library worked out. */
      readonly kind: 'computed';
      /** From what, and how far that holds. */
      readonly how: string;
    };

/** Names a basis in a few words. */
export function describeBasis(basis: Basis): string {
  switch (basis.kind) {
    case 'specified':
      return basis.by === undefined ? 'specified' : `specified by ${basis.by}`;
    case 'published':
      return `published${basis.forAnotherEngine ? ' for another engine' : ''}: ${basis.source}`;
    case 'common practice':
      return `common practice: ${basis.rule}`;
    case 'computed':
      return `computed: ${basis.how}`;
  }
}

const SPECIFIED = ['kind', 'by'] as const;
const PUBLISHED = ['kind', 'source', 'forAnotherEngine'] as const;
const COMMON_PRACTICE = ['kind', 'rule'] as const;
const COMPUTED = ['kind', 'how'] as const;
const KINDS = ['specified', 'published', 'common practice', 'computed'] as const;

/** Refuses a basis that does not say who set the limit. */
export function guardBasis(parameter: string, basis: Basis): Basis {
  guardObject(parameter, basis);
  guardWord(`${parameter}.kind`, basis.kind, KINDS);
  switch (basis.kind) {
    case 'specified':
      guardFields(parameter, basis, SPECIFIED);
      if (basis.by !== undefined) guardText(`${parameter}.by`, basis.by);
      break;
    case 'published':
      guardFields(parameter, basis, PUBLISHED);
      guardText(`${parameter}.source`, basis.source);
      if (basis.forAnotherEngine !== undefined) {
        guardTruth(`${parameter}.forAnotherEngine`, basis.forAnotherEngine);
      }
      break;
    case 'common practice':
      guardFields(parameter, basis, COMMON_PRACTICE);
      guardText(`${parameter}.rule`, basis.rule);
      break;
    case 'computed':
      guardFields(parameter, basis, COMPUTED);
      guardText(`${parameter}.how`, basis.how);
  }
  return basis;
}
