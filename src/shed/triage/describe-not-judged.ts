import type { Wording } from '../../judging/index.js';
import { describeSpan } from '../../judging/internal.js';
import type { JudgedWhat, NotJudged } from './not-judged-types.js';
import type { TriagedPart } from './triage-types.js';

/** What is judged by it, where its own name does not say so. */
const BY: { readonly [W in JudgedWhat]?: string } = {
  face: 'flatness',
  runout: 'bend',
  'thrust width': 'end play',
  thickness: 'end play',
  diameters: 'piston clearance',
};

/** What to do with a reading that nobody states a limit for. */
export const NO_LIMIT_STATED = "no limit is stated: compare with the maker's manual";

/** Of a part that no reading tells of. */
export const UNTESTED = 'not tested';

const called = (what: JudgedWhat): string => {
  const by = BY[what];
  return by === undefined ? what : `${what} (${by})`;
};

/** What of a part no verdict is given on: `not measured: face (flatness), guides`; nothing where all is judged. */
export function describeNotJudged(all: readonly NotJudged[], wording: Wording): readonly string[] {
  const open = all.flatMap((each) => (each.why === 'not measured' ? [called(each.what)] : []));
  const read = all.flatMap((each) => (each.why === 'no limit' ? [sayRead(each, wording)] : []));
  return [
    ...(all.some(({ why }) => why === 'not tested') ? [UNTESTED] : []),
    ...(open.length > 0 ? [`not measured: ${open.join(', ')}`] : []),
    ...(read.length > 0 ? [`${read.join(', ')}: ${NO_LIMIT_STATED}`] : []),
  ];
}

/** `face 0.0200 in`: the flatness reading of a face needs no name beside it. */
function sayRead(
  { what, read }: Extract<NotJudged, { readonly why: 'no limit' }>,
  { units }: Wording,
): string {
  return `${what === 'face' ? what : called(what)} ${describeSpan(read, 'length', units)}`;
}

/** The same beside the name of a part: `face`, `face 0.0200 in`, `not tested`. */
export function sayNotJudged(one: NotJudged, wording: Wording): string {
  switch (one.why) {
    case 'not tested':
      return UNTESTED;
    case 'not measured':
      return one.what;
    case 'no limit':
      return sayRead(one, wording);
  }
}

/** Whether a part is to be used of which nothing was judged: that no fault is listed is all that is known of it. */
export const isOnlyFaultFree = ({
  disposition,
  findings,
  because,
  notJudged,
}: Pick<TriagedPart, 'disposition' | 'findings' | 'because' | 'notJudged'>): boolean =>
  disposition === 'use as it is' &&
  notJudged.length > 0 &&
  findings.length === 0 &&
  !because.some(({ kind }) => kind === 'journals' || kind === 'bores');
