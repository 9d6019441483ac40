import { didYouMean, either, type FileProblem } from '../../reading/index.js';
import type { Part } from '../part.js';
import { wordFor } from '../section-words.js';
import { SECTIONS, type Section } from '../sections.js';
import { partsIn, type SoundShed } from './sound-shed.js';

/** What a part says of the parts and engines it goes with. */
interface Said extends Partial<Pick<Part, 'name' | 'belongsTo' | 'builtInto'>> {
  readonly onlyWith?: readonly (string | undefined)[] | undefined;
}

interface Placed {
  readonly section: Section;
  readonly path: string;
  readonly part: Said;
}

/** Sections of which an engine has one part. */
const ONE_OF: readonly Section[] = [
  'blocks',
  'crankshafts',
  'pistonSets',
  'ringSets',
  'heads',
  'valveSets',
];

/** Names of parts that are not there, and parts that would have to be in two engines. */
export function belongingProblems(shed: SoundShed): readonly FileProblem[] {
  const all = SECTIONS.flatMap((section) =>
    partsIn(shed, section).map(({ path, part }): Placed => ({ section, path, part: part as Said })),
  );
  const byName = new Map(all.map((each) => [each.part.name ?? '', each]));
  const engines = (shed.cores ?? []).flatMap((core) => core?.name ?? []);
  const parts = all.flatMap(({ part }) => part.name ?? []);
  const known = { byName, parts, engines, goesTo: [...parts, ...engines] };
  return [...all.flatMap((each) => problemsOf(each, known)), ...twoInOne(all)];
}

interface Known {
  readonly byName: ReadonlyMap<string, Placed>;
  readonly parts: readonly string[];
  /** Engines not taken apart. */
  readonly engines: readonly string[];
  /** Parts, and engines not taken apart. */
  readonly goesTo: readonly string[];
}

function problemsOf({ section, path, part }: Placed, known: Known): readonly FileProblem[] {
  const { name = 'it', belongsTo, builtInto } = part;
  const { byName } = known;
  const problems: FileProblem[] = [];
  const refuse = (field: string, message: string) =>
    problems.push({ path: `${path}.${field}`, message });
  const mates = (part.onlyWith ?? []).flatMap((mate) => mate ?? []);
  for (const [i, mate] of mates.entries()) {
    const other = byName.get(mate);
    if (!other) refuse(`onlyWith[${i}]`, notThere(mate, 'part', known.parts));
    else if (other.section === section) {
      const message = `is "${mate}", which is of the same section; name the parts of other sections that "${name}" fits only with`;
      refuse(`onlyWith[${i}]`, message);
    }
  }
  const elsewhere = atOdds(name, section, mates, byName);
  if (elsewhere) refuse('onlyWith', elsewhere);
  if (belongsTo !== undefined && !known.goesTo.includes(belongsTo)) {
    refuse('belongsTo', notThere(belongsTo, 'part or engine', known.goesTo));
  }
  const other = belongsTo === undefined ? undefined : byName.get(belongsTo);
  const others = mates.filter((mate) => byName.get(mate)?.section === other?.section);
  const isOne = other !== undefined && ONE_OF.includes(other.section);
  if (
    isOne &&
    others.length > 0 &&
    others.length === mates.length &&
    !mates.includes(belongsTo ?? '')
  ) {
    const message = `is "${belongsTo}", but "${name}" fits only with ${quoted(mates)}: it cannot be in two engines`;
    refuse('belongsTo', message);
  }
  const theirs = theirEngine(belongsTo, builtInto, known);
  if (theirs !== undefined) {
    const where = theirs === belongsTo ? '' : `, which is built into "${theirs}"`;
    const message = `is "${builtInto}", but "${name}" belongs to "${belongsTo}"${where}: it cannot be in two engines`;
    refuse('builtInto', message);
  }
  return problems;
}

/** The engine of what a part belongs to, if the part is built into another; an engine may go by the name of its block. */
function theirEngine(
  belongsTo: string | undefined,
  builtInto: string | undefined,
  { byName, engines }: Known,
): string | undefined {
  if (belongsTo === undefined || builtInto === undefined) return undefined;
  const isBlock = (name: string) => byName.get(name)?.section === 'blocks';
  const engineOf = (name: string) =>
    (isBlock(name) ? byName.get(name)?.part.builtInto : undefined) ?? name;
  const isOwn = engines.includes(belongsTo) || (isBlock(belongsTo) && isBlock(builtInto));
  const theirs = byName.get(belongsTo)?.part.builtInto ?? (isOwn ? belongsTo : undefined);
  return theirs !== undefined && engineOf(theirs) !== engineOf(builtInto) ? theirs : undefined;
}

/** Parts that fit only with others, all of which fit only with another part in its place. */
function atOdds(
  name: string,
  section: Section,
  mates: readonly string[],
  byName: Known['byName'],
): string | undefined {
  if (!ONE_OF.includes(section) || mates.length === 0) return undefined;
  const instead = mates.map((mate) => {
    const theirs = (byName.get(mate)?.part.onlyWith ?? []).flatMap((each) => each ?? []);
    const inItsPlace = theirs.filter((each) => byName.get(each)?.section === section);
    const isTaken =
      inItsPlace.length > 0 && inItsPlace.length === theirs.length && !theirs.includes(name);
    return isTaken ? inItsPlace : undefined;
  });
  const [first] = instead;
  if (!first || instead.includes(undefined)) return undefined;
  return `"${name}" fits only with "${mates[0]}", which fits only with ${quoted(first)}; no engine has both`;
}

/** Two blocks or two crankshafts that are built into one engine. */
function twoInOne(all: readonly Placed[]): readonly FileProblem[] {
  const first = new Map<string, string>();
  return all.flatMap(({ section, path, part: { name = 'it', builtInto } }) => {
    if (builtInto === undefined || (section !== 'blocks' && section !== 'crankshafts')) return [];
    const key = JSON.stringify([section, builtInto]);
    const other = first.get(key);
    first.set(key, other ?? name);
    if (other === undefined) return [];
    const message = `is "${builtInto}", but so is that of "${other}": an engine has one ${wordFor(section)}`;
    return [{ path: `${path}.builtInto`, message }];
  });
}

function notThere(name: string, what: string, known: readonly string[]): string {
  const question = didYouMean(name, known);
  return `names "${name}", but no ${what} of the shed is called that${question ? `; ${question}` : ''}`;
}

const quoted = (names: readonly string[]) => either(names.map((name) => `"${name}"`));
