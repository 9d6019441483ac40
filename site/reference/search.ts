import {
  type Application,
  type CommentDisplayPart,
  type DeclarationReflection,
  type DocumentReflection,
  IndexEvent,
  ReflectionKind,
} from 'typedoc';
import { wordsFor } from '../search-words.js';

type Found = DeclarationReflection | DocumentReflection;

/**
 * Lets the search find a thing by what is written about it, and by a restorer's words for it: `grindPlan` for "how
 * much to grind". A function counts more than the fields of its arguments, which would crowd it out.
 */
export function findByWords(app: Application): void {
  app.renderer.on(IndexEvent.PREPARE_INDEX, (event: IndexEvent) => {
    event.searchFieldWeights['comment'] = 3;
    event.searchFieldWeights['words'] = 400;
    event.searchResults.forEach((found, i) => {
      found.relevanceBoost = boostOf(found);
      event.searchFields[i] = { comment: summaryOf(found), words: wordsFor(found.name) };
    });
  });
}

function boostOf(found: Found): number {
  if (found.isDocument()) return 1;
  if (found.kindOf(ReflectionKind.Function)) return 2;
  return found.kindOf([ReflectionKind.SomeType, ReflectionKind.Module]) ? 0.7 : 0.2;
}

/** The first paragraph that is written about a thing; of a guide, all its headings. */
function summaryOf(found: Found): string {
  if (found.isDocument()) {
    const lines = textOf(found.content).split('\n');
    return lines.filter((line) => line.startsWith('#')).join(' ');
  }
  const comments = [found.comment, ...(found.signatures ?? []).map(({ comment }) => comment)];
  return comments.map((comment) => textOf(comment?.summary ?? []).split('\n\n')[0]).join(' ');
}

const textOf = (parts: readonly CommentDisplayPart[]): string =>
  parts.map(({ text }) => text).join('');
