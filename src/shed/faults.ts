import type { Section } from './sections.js';
import type { Work } from './works.js';

/** A visible fault of a part. */
export type Fault = 'cracked' | 'frost-cracked' | 'spun' | 'bent' | 'scored' | 'pitted';

/** The consequence of a fault. */
export type Consequence =
  | {
      /** The part is scrap. */
      readonly kind: 'scrap';
    }
  | {
      /** Its running surfaces must be ground or bored before use. */
      readonly kind: 'machine';
    }
  | {
      /** It can be used after a repair. */
      readonly kind: 'repair';
      /** The repair. */
      readonly work: Work;
    };

const scrap: Consequence = { kind: 'scrap' };
const machine: Consequence = { kind: 'machine' };
const repair = (work: Work): Consequence => ({ kind: 'repair', work });

/**
 * The consequence of each fault, for each kind of part. A part cannot have a fault that is not
 * listed for it. Spun: the shells have turned in their housing, have worn it, and have torn the
 * journal.
 */
const TABLE: { readonly [S in Section]?: { readonly [F in Fault]?: Consequence } } = {
  blocks: {
    cracked: scrap,
    'frost-cracked': scrap,
    spun: /* @__PURE__ */ repair('resize housings'),
    scored: machine,
    pitted: machine,
  },
  crankshafts: {
    cracked: scrap,
    spun: machine,
    bent: /* @__PURE__ */ repair('straighten'),
    scored: machine,
    pitted: machine,
  },
  rods: {
    cracked: scrap,
    spun: /* @__PURE__ */ repair('resize housings'),
    bent: /* @__PURE__ */ repair('straighten'),
  },
  pistonSets: { cracked: scrap, scored: scrap, pitted: scrap },
  ringSets: { cracked: scrap, scored: scrap },
  shells: { cracked: scrap, spun: scrap, scored: scrap, pitted: scrap },
  thrustWashers: { cracked: scrap, bent: scrap, scored: scrap },
  heads: {
    cracked: scrap,
    'frost-cracked': scrap,
    bent: /* @__PURE__ */ repair('skim head'),
    pitted: /* @__PURE__ */ repair('skim head'),
  },
  valveSets: { cracked: scrap, bent: scrap, pitted: scrap },
};

/** The faults that the parts of a section can have. */
export function faultsOf(section: Section): readonly Fault[] {
  return Object.keys(TABLE[section] ?? {}) as Fault[];
}

/** The faults that one journal or bore can have: damage to its surface. */
export const SURFACE_FAULTS = ['scored', 'pitted', 'spun'] as const satisfies readonly Fault[];

/** The consequence of a fault of a part. */
export function consequenceOf(section: Section, fault: Fault): Consequence {
  return TABLE[section]?.[fault] ?? scrap;
}
