import type { Section } from '../sections.js';
import type { Work } from '../works.js';

/** Measurements of a part, or of every place of one of its lists. */
export interface Undone {
  /** The list of places; absent for the part as a whole. */
  readonly list?: string;
  readonly fields: readonly string[];
}

const journals = ['readings', 'runout'];

/**
 * What was measured before some work and no longer holds after it. Until it is measured again it is not known: a
 * journal that was ground has no size but the one that is read on it.
 */
const UNDONE: { readonly [W in Work]?: readonly Undone[] } = {
  straighten: [
    { list: 'rodJournals', fields: journals },
    { list: 'mainJournals', fields: journals },
    { fields: ['runoutOnceStraight'] },
  ],
  'grind main journals': [{ list: 'mainJournals', fields: journals }],
  'grind rod journals': [{ list: 'rodJournals', fields: journals }],
  bore: [{ list: 'bores', fields: ['readings', 'wall'] }],
  sleeve: [{ list: 'bores', fields: ['readings', 'wall'] }],
  'resize housings': [
    { list: 'mainHousings', fields: ['housingBore'] },
    { list: 'rods', fields: ['housingBore'] },
  ],
  'skim head': [{ fields: ['flatness'] }],
  'reface valves': [{ fields: ['margin'] }],
};

/** The measurements that work on a part undoes. */
export const undoneBy = (work: Work): readonly Undone[] => UNDONE[work] ?? [];

/** The parts that a shop can do the work on. */
const DONE_ON: { readonly [W in Work]: readonly Section[] } = {
  'crack test': ['blocks', 'crankshafts', 'rods', 'heads'],
  straighten: ['crankshafts', 'rods'],
  'grind main journals': ['crankshafts'],
  'grind rod journals': ['crankshafts'],
  bore: ['blocks'],
  sleeve: ['blocks'],
  'resize housings': ['blocks', 'rods'],
  stitch: ['blocks', 'heads'],
  weld: ['blocks', 'heads'],
  'pressure test': ['blocks', 'heads'],
  'skim head': ['heads'],
  'recut seats': ['heads'],
  'reface valves': ['valveSets'],
};

/** Whether a shop can do the work on a part of the section. */
export const canBeDoneOn = (work: Work, section: Section): boolean =>
  DONE_ON[work].includes(section);
