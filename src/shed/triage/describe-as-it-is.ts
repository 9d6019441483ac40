import { nameUndersize } from '../../crankshaft/internal.js';
import { nameOversize } from '../../cylinders/internal.js';
import type { Finding, Wording } from '../../judging/index.js';
import { noteOf, sayFinding } from '../../judging/internal.js';
import { journalWords } from '../../reading/index.js';
import { describeNotJudged, isOnlyFaultFree, UNTESTED } from './describe-not-judged.js';
import { describeReason } from './describe-reason.js';
import { sayOwner } from './say-owner.js';
import type { TriagedPart, TriageReason } from './triage-types.js';

/** What fits a part as it is, to follow its disposition in the one line that it takes; nothing where all is told. */
export function asItIs(part: TriagedPart, wording: Wording): string {
  if (wording.why !== false) return '';
  const sizes = part.because.flatMap((reason) => sizeOf(reason, wording));
  return [...sizes, ...sumUp(part, wording), ...besides(part, wording)]
    .map((each) => `; ${each}`)
    .join('');
}

/** What no verdict is given on, then what its owner says: sentences of their own, unless its one line says all. */
export const saidBesides = (part: TriagedPart, wording: Wording): readonly string[] =>
  isOneLine(part, wording) ? [] : besides(part, wording);

/** What no verdict is given on, but for what the headline says, and what its owner says. */
function besides(part: TriagedPart, wording: Wording): readonly string[] {
  const open = describeNotJudged(part.notJudged, wording);
  return [...open.filter((each) => each !== UNTESTED || !isOnlyFaultFree(part)), ...sayOwner(part)];
}

const isOneLine = ({ disposition }: TriagedPart, { why }: Wording): boolean =>
  why === false && disposition === 'use as it is';

/** `rod journals 0.0200 in under`, for journals or bores that are good as they are. */
function sizeOf(reason: TriageReason, wording: Wording): readonly string[] {
  if (reason.kind === 'journals' && reason.plan.outcome === 'use as it is') {
    return [`${journalWords(reason.journals)} ${nameUndersize(reason.plan.undersize, wording)}`];
  }
  if (reason.kind === 'bores' && reason.plan.outcome === 'use as it is') {
    return [`bores ${nameOversize(reason.plan.oversize, wording)}`];
  }
  return [];
}

/** The reasons of a part in sentences, but for what its one line says already. */
export function reasonsOf(part: TriagedPart, wording: Wording): readonly string[] {
  const isShort = isOneLine(part, wording);
  const all = part.because.flatMap((reason) => {
    const sentences = describeReason(reason, part, wording);
    // The line begins with what the first sentence would say.
    return isShort && sizeOf(reason, wording).length > 0 ? sentences.slice(1) : sentences;
  });
  // What holds for rod and main journals alike is told once.
  return wording.why === false ? [...new Set(all)] : all;
}

/** Findings that no reason mentions; in short, what is within its limits is summed up. */
export function otherFindings(part: TriagedPart, wording: Wording): readonly string[] {
  const others = othersOf(part);
  const isShort = wording.why === false;
  const told = isShort ? others.filter(({ verdict }) => verdict !== 'within') : others;
  return [
    ...new Set(told.map((finding) => sayFinding(finding, wording))),
    ...(isShort && part.disposition !== 'use as it is' ? sumUp(part, wording) : []),
  ];
}

/** A grind plan already mentions each journal by name. */
function othersOf({ section, because, findings }: TriagedPart): readonly Finding<'length'>[] {
  if (section === 'crankshafts') return [];
  const told = because.flatMap((reason) => ('finding' in reason ? [reason.finding] : []));
  return findings.filter(
    (finding) => !told.some((other) => JSON.stringify(other) === JSON.stringify(finding)),
  );
}

/** `face within limits [1]`, `2 sizes within limits [1]`. */
function sumUp(part: TriagedPart, wording: Wording): readonly string[] {
  const within = othersOf(part).filter(({ verdict }) => verdict === 'within');
  if (within.length === 0) return [];
  const features = [...new Set(within.map(({ feature }) => feature))];
  const notes = [...new Set(within.map(({ basis }) => noteOf(basis, wording)))];
  const what = features.length > 1 ? `${features.length} sizes` : features.join();
  return [`${what} within limits ${notes.join(' ')}`];
}
