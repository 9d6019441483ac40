import type { Part } from '../part.js';
import { SECTIONS, type Section } from '../sections.js';
import type { Parts, Shed } from '../shed.js';
import { ofPart } from './of-part.js';
import { readyBlock } from './ready-block.js';
import { readyCrankshaft } from './ready-crankshaft.js';
import { readyHead, readyRods, readyValves, readyWhole } from './ready-others.js';
import type { Readiness } from './ways.js';

/** The section of what a part fits only with, if all of that is scrap, kept back or built in. */
export function matesMissing(shed: Shed): (part: Part) => Section | undefined {
  const all = SECTIONS.flatMap((section) =>
    [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])].map((part) => ({ section, part })),
  );
  const byName = new Map(all.map((each) => [each.part.name, each]));
  return ({ onlyWith }) => {
    const mates = (onlyWith ?? []).flatMap((name) => byName.get(name) ?? []);
    if (mates.some(({ section, part }) => isThere(shed, section, part))) return undefined;
    return mates[0]?.section;
  };
}

/** Whether a part may still be used: a part that is kept aside or undecided may be put right. */
function isThere(shed: Shed, section: Section, part: Part): boolean {
  if (part.reserved !== undefined || part.builtInto !== undefined) return false;
  const { ready, atBest } = ofPart(shed, part, () => readinessOf(shed, section, part));
  return ready !== undefined || atBest !== undefined;
}

function readinessOf(shed: Shed, section: Section, part: Part): Readiness<unknown> {
  switch (section) {
    case 'blocks':
      return readyBlock(part as Parts['blocks'][number], shed);
    case 'crankshafts':
      return readyCrankshaft(part as Parts['crankshafts'][number], shed);
    case 'rods':
      return readyRods(part as Parts['rods'][number], shed);
    case 'heads':
      return readyHead(part, shed);
    case 'valveSets':
      return readyValves(part, shed);
    default:
      return readyWhole(section, part, shed);
  }
}
