import type { Wording } from '../judging/index.js';
import { describeBasis } from '../judging/internal.js';
import { type PageSection, section, wrap } from './sections.js';

/** Who set the limits of a document: numbered in the text, named at the end. */
export interface Notes {
  /** A wording that names them by number: `[1]`. */
  readonly wording: Wording;
  /** The name behind each number, in order. */
  readonly named: readonly string[];
}

/** The notes of one document, which is short unless `why` is asked for. A note is added at its first mention. */
export function numberedNotes({ units, why = false }: Wording): Notes {
  const named: string[] = [];
  const nameBasis: Wording['nameBasis'] = (basis) => {
    const note = describeBasis(basis);
    if (!named.includes(note)) named.push(note);
    return `[${named.indexOf(note) + 1}]`;
  };
  return { wording: { units, nameBasis, why }, named };
}

/** The section that names them, left out if there are none. */
export function whoSetTheLimits({ named }: Notes): readonly PageSection[] {
  const lines = named.flatMap((note, i) => wrap(`[${i + 1}] ${note}`, 4));
  return lines.length === 0 ? [] : [section('WHO SET THE LIMITS', lines)];
}
