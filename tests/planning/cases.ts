import { readFileSync } from 'node:fs';
import { readShed, type Shed } from 'crankwright/shed';
import { root } from '../support/repo.js';

/** The text of a shed on which a search once failed. */
export const caseText = (name: string): string =>
  readFileSync(`${root}/tests/planning/cases/${name}.json`, 'utf8');

/** A shed on which a search once failed. */
export const caseShed = (name: string): Shed => readShed(caseText(name));
