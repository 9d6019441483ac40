import { readFileSync } from 'node:fs';
import { readShelf, type Shelf } from 'crankwright/shelf';
import { root } from '../../support/repo.js';

/** The text of a shed on which a search once failed. */
export const caseText = (name: string): string =>
  readFileSync(`${root}/tests/shelf/plan/cases/${name}.json`, 'utf8');

/** A shed on which a search once failed. */
export const caseShed = (name: string): Shelf => readShelf(caseText(name));
