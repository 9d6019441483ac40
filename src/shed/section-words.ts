import type { Section } from './sections.js';

/** One and several of each section, in the trade's words. */
const WORDS: { readonly [S in Section]: readonly [one: string, several: string] } = {
  blocks: ['block', 'blocks'],
  crankshafts: ['crankshaft', 'crankshafts'],
  rods: ['rod', 'rods'],
  pistonSets: ['piston set', 'piston sets'],
  ringSets: ['ring set', 'ring sets'],
  shells: ['pair of shells', 'pairs of shells'],
  thrustWashers: ['thrust washer', 'thrust washers'],
  heads: ['head', 'heads'],
  valveSets: ['valve set', 'valve sets'],
};

/** `piston set`, or `piston sets` where there are several. */
export const wordFor = (section: Section, count = 1): string => WORDS[section][count === 1 ? 0 : 1];

/** What so many parts of a section are called beside their name: rods may be one or a set. */
export const partWord = (section: Section, count = 1): string =>
  section === 'rods' ? 'rods' : wordFor(section, count);

/** A name, and how many there are of it: `2 × pistons A`. */
export const named = (name: string, count: number): string =>
  count === 1 ? name : `${count} × ${name}`;
