import type { Wording } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { nameUndersize } from './describe-grind-plan.js';
import { grindPlan } from './grind-plan.js';
import type { GrindPlan, GrindRequest, ServedGrindPlan } from './grind-types.js';

/** A journal that is to be ground with the others, and needs no work by itself. */
export interface SoundAlone {
  /** Which journal. */
  readonly name: string;
  /** The undersize that it is sound at [m]. */
  readonly undersize: Length;
}

/** The journals that a plan grinds only to agree with the others. */
export function soundAlone(request: GrindRequest, plan: GrindPlan): readonly SoundAlone[] {
  if (plan.outcome !== 'grind') return [];
  const ground = plan.journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  return request.journals
    .filter(({ name }) => ground.includes(name))
    .flatMap((journal) => {
      const alone = grindPlan({ ...request, journals: [journal] });
      const { name } = journal;
      return alone.outcome === 'use as it is' ? [{ name, undersize: alone.undersize }] : [];
    });
}

/** What is ground, and what of it is sound by itself. */
export interface GroundWithOthers {
  /** The journals that are ground. */
  readonly ground: readonly string[];
  /** Those of them that are sound by themselves. */
  readonly sound: readonly SoundAlone[];
  /** The undersize of the journals of this kind that are not ground, if there are any [m]. */
  readonly kept?: Length;
}

/** What a plan grinds, and which journals of it are sound by themselves. */
export function groundWithOthers(
  { undersize, journals }: ServedGrindPlan,
  sound: readonly SoundAlone[],
): GroundWithOthers {
  const ground = journals.filter(({ work }) => work === 'grind').map(({ name }) => name);
  return { ground, sound, ...(ground.length < journals.length && { kept: undersize }) };
}

/** Whether each journal that is to be ground is sound at a size of its own: then none has to be ground, if two sizes may stand on one crankshaft. */
export const mayAllStay = ({ ground, sound }: GroundWithOthers): boolean =>
  ground.length > 0 && ground.every((name) => sound.some((each) => each.name === name));

/** What may be done instead of grinding the journals that read sound as they are; nothing if none does. */
export function saySoundAlone(all: GroundWithOthers, wording: Wording): string | undefined {
  const { ground, sound, kept } = all;
  if (sound.length === 0) return undefined;
  const told = sound
    .map(({ name, undersize }) => `${name} reads sound at ${nameUndersize(undersize, wording)}`)
    .join(', ');
  if (!mayAllStay(all)) {
    const others = ground.filter((name) => sound.every((each) => each.name !== name));
    return `${told}: ask the grinder whether ${others.join(' and ')} can be ground alone, with the webs marked`;
  }
  const others = kept === undefined ? '' : `, the others at ${nameUndersize(kept, wording)}`;
  return `${told}${others}: with a pair of shells of each size, and the webs marked, none needs grinding, if the manual allows two sizes on one crankshaft`;
}
