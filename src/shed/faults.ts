import type { Basis } from '../judging/index.js';
import { isClear, isFound, type PartTest } from './history.js';
import type { Section } from './sections.js';
import { OVERHEATED_CRANKSHAFT, SCRAP_ROD } from './sources.js';
import type { Work } from './works.js';

/** A visible fault of a part. */
export type Fault =
  | 'cracked'
  | 'frost-cracked'
  | 'overheated'
  | 'spun'
  | 'bent'
  | 'scored'
  | 'pitted';

/** The consequence of a fault. */
export type Consequence =
  | {
      /** The part is scrap. */
      readonly kind: 'scrap';
      /** The tests that would clear it, if any would. */
      readonly unlessTested?: readonly PartTest['for'][];
      /** Who says that it is scrap. */
      readonly basis?: Basis;
    }
  | {
      /** It would be scrap, but the owner's tests have cleared it. */
      readonly kind: 'cleared';
      /** The repair it then needs. */
      readonly work?: Work;
      /** The tests. */
      readonly tests: readonly PartTest[];
      /** Who says that it is scrap. */
      readonly basis: Basis;
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
    }
  | {
      /** It is decided once somebody has looked how bad it is. */
      readonly kind: 'look';
    }
  | {
      /** It is a cracked casting, which can be used only if a shop mends it. */
      readonly kind: 'mend';
    };

/** What follows from a fault: a consequence, or scrap unless tests have cleared the part. */
type Rule =
  | Consequence
  | {
      readonly kind: 'unless tested';
      readonly tests: readonly PartTest['for'][];
      readonly basis: Basis;
      readonly work?: Work;
    };

const scrap: Rule = { kind: 'scrap' };
const machine: Rule = { kind: 'machine' };
const mend: Rule = { kind: 'mend' };
const look: Rule = { kind: 'look' };
const repair = (work: Work): Rule => ({ kind: 'repair', work });
const scrapRod = (tests: readonly PartTest['for'][], work?: Work): Rule => ({
  kind: 'unless tested',
  tests,
  basis: SCRAP_ROD,
  ...(work && { work }),
});

/**
 * What follows from each fault, for each kind of part. A part cannot have a fault that is not
 * listed for it. Spun: the shells have turned in their housing, have worn it, and have torn the
 * journal. Pitted: of a head its valve seats, of valves their faces.
 */
const TABLE: { readonly [S in Section]?: { readonly [F in Fault]?: Rule } } = {
  blocks: {
    cracked: mend,
    'frost-cracked': mend,
    spun: /* @__PURE__ */ repair('resize housings'),
    scored: machine,
    pitted: machine,
  },
  crankshafts: {
    cracked: scrap,
    overheated: {
      kind: 'unless tested',
      tests: ['softening', 'cracks'],
      basis: OVERHEATED_CRANKSHAFT,
    },
    spun: machine,
    bent: /* @__PURE__ */ repair('straighten'),
    scored: machine,
    pitted: machine,
  },
  rods: {
    cracked: scrap,
    overheated: /* @__PURE__ */ scrapRod(['softening', 'cracks']),
    spun: /* @__PURE__ */ scrapRod(['cracks'], 'resize housings'),
    bent: /* @__PURE__ */ scrapRod(['cracks'], 'straighten'),
  },
  pistonSets: { cracked: scrap, overheated: scrap, scored: look, pitted: scrap },
  ringSets: { cracked: scrap, overheated: scrap, scored: scrap },
  shells: { cracked: scrap, overheated: scrap, spun: scrap, scored: scrap, pitted: scrap },
  thrustWashers: { cracked: scrap, bent: scrap, scored: scrap },
  heads: {
    cracked: mend,
    'frost-cracked': mend,
    bent: /* @__PURE__ */ repair('skim head'),
    pitted: /* @__PURE__ */ repair('recut seats'),
  },
  valveSets: { cracked: scrap, bent: scrap, pitted: /* @__PURE__ */ repair('reface valves') },
  otherParts: { cracked: scrap, overheated: scrap, bent: scrap, scored: scrap, pitted: scrap },
};

/** The faults that the parts of a section can have. */
export function faultsOf(section: Section): readonly Fault[] {
  return Object.keys(TABLE[section] ?? {}) as Fault[];
}

/** The faults that one journal or bore can have: damage to its surface. */
export const SURFACE_FAULTS = ['scored', 'pitted', 'spun'] as const satisfies readonly Fault[];

/** The consequence of a fault of a part that has had these tests. */
export function consequenceOf(
  section: Section,
  fault: Fault,
  tested: readonly PartTest[] = [],
): Consequence {
  return resolved(TABLE[section]?.[fault] ?? scrap, tested);
}

/** The consequence of a bearing that seized in a part, if it has one of its own. */
export function seizedBearing(
  section: Section,
  tested: readonly PartTest[],
): Consequence | undefined {
  return section === 'rods' ? resolved(scrapRod(['softening', 'cracks']), tested) : undefined;
}

function resolved(rule: Rule, tested: readonly PartTest[]): Consequence {
  if (rule.kind !== 'unless tested') return rule;
  const { tests, basis, work } = rule;
  if (tests.some((each) => isFound(tested, each))) return { kind: 'scrap', basis };
  if (!tests.every((each) => isClear(tested, each))) {
    return { kind: 'scrap', unlessTested: tests, basis };
  }
  return { kind: 'cleared', tests: tested, basis, ...(work && { work }) };
}
