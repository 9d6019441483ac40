import type { Section } from './sections.js';

/** The trade's word for one part of each section, and for several. */
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
  otherParts: ['other part', 'other parts'],
};

/** What an owner may call the parts of a section: `blocks`, `block`. */
export const sectionWords = (section: Section): readonly string[] => [
  ...new Set([section, ...WORDS[section], partWord(section)]),
];

/** `piston set`, or `piston sets` for several; of an other part its kind, in its owner's words. */
export const wordFor = (section: Section, count = 1, kind?: string): string =>
  kind ?? WORDS[section][count === 1 ? 0 : 1];

/** The word for parts of a section beside their name: `rods` for one rod and for a set. */
export const partWord = (section: Section, count = 1, kind?: string): string =>
  section === 'rods' ? 'rods' : wordFor(section, count, kind);

/** A name with its count: `2 × pistons A`. */
export const named = (name: string, count: number): string =>
  count === 1 ? name : `${count} × ${name}`;
