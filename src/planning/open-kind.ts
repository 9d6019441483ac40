import type { Length } from '../quantities/index.js';
import type { Core, Part, Section, Shed } from '../shed/index.js';
import { troublesIn, troublesOf } from '../shed/internal.js';
import { stepMarked } from './marked-step.js';
import { oddsIn, unlikeliness } from './odds.js';
import { stepsOfSection } from './steps-for.js';

/** What makes a part that is not known a kind of its own; nothing of one that is known. */
export interface OpenKind {
  /** How many things of it are to be measured before it counts; absent if none is. */
  readonly unknown?: number;
  /** How unlikely it turns out good, as a whole number; absent if it is known. */
  readonly unlikely?: number;
  /** How much more than measuring it takes to get at it; absent if it is in no engine. */
  readonly apart?: number;
  /** The steps that an unmeasured crankshaft is marked as. */
  readonly marked?: readonly Length[];
}

/** How much more than measuring a loose part it takes to get at one that is still in an engine. */
const APART = 4;
/** The same where that engine has seized or had an accident. */
const APART_IN_TROUBLE = 5;

/** What is to be done before a part counts that is not known. Nothing is known of a part that is still in an engine. */
export function openKindsIn(
  shed: Shed,
  inCore: ReadonlyMap<string, Core> = new Map(),
): (section: Section, part: Part, usable: Pick<OpenKind, 'unknown'>) => OpenKind {
  const oddsOf = oddsIn(shed);
  const troubles = troublesIn(shed);
  const steps = stepsOfSection(shed, 'crankshafts');
  return (section, part, { unknown }) => {
    const core = inCore.get(part.name);
    if (core === undefined && unknown === undefined) return {};
    const marked = (part.marks ?? []).flatMap((mark) => stepMarked(mark, steps) ?? []);
    const isInTrouble = core?.condition?.is === 'seized' || troublesOf(part, troubles).length > 0;
    return {
      unknown: unknown ?? 1,
      unlikely: unlikeliness(oddsOf(part).odds),
      ...(core && { apart: isInTrouble ? APART_IN_TROUBLE : APART }),
      ...(section === 'crankshafts' && unknown !== undefined && marked.length > 0 && { marked }),
    };
  };
}
