import { describe, it } from 'vitest';
import { guardFields } from '../../src/judging/guards.js';

interface Sizes {
  readonly bore: number;
  readonly piston?: number;
}
type Entry = { readonly running: number } | { readonly standing: number };

declare const sizes: Sizes;
declare const entry: Entry;
declare const values: Readonly<Record<string, number>>;
declare const letters: readonly string[];

describe('the list of the fields of an object', () => {
  it('names all of them', () => {
    guardFields('sizes', sizes, ['bore', 'piston']);
    guardFields('sizes', sizes, ['piston', 'bore'] as const);
    // @ts-expect-error one is forgotten, though it may be left out of the object
    guardFields('sizes', sizes, ['bore']);
    // @ts-expect-error one is forgotten
    guardFields('sizes', sizes, ['piston'] as const);
  });

  it('names no other', () => {
    // @ts-expect-error there is no such field any more
    guardFields('sizes', sizes, ['bore', 'piston', 'skirt'] as const);
  });

  it('names those of every kind of object that it may be', () => {
    guardFields('log[0]', entry, ['running', 'standing'] as const);
    // @ts-expect-error an entry may be the other kind
    guardFields('log[0]', entry, ['running'] as const);
  });

  it('is written out, but where the type has no names', () => {
    // @ts-expect-error a list made at run time cannot be held to the type
    guardFields('sizes', sizes, letters);
    guardFields('values', values, letters);
  });
});
