import type { Finding, Wording } from '../judging/index.js';
import { describeSpan, holds, say, sayFinding } from '../judging/internal.js';
import type { StemWork } from '../valves/index.js';
import type { ValveReport } from './inspect-valve.js';

/** Something to do with a valve, its seat, its guide or its spring. */
export type ValveAction =
  | {
      /** A size of it is outside its limits. */
      readonly kind: 'valve';
      /** Which valve. */
      readonly valve: string;
      /** The finding that it fails. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** Its spring presses too little, or too much. */
      readonly kind: 'weak spring';
      /** Which valve. */
      readonly valve: string;
      /** Its force against the maker's. */
      readonly finding: Finding<'force'>;
    }
  | {
      /** Its stem is to be ground, or cannot give the lash. */
      readonly kind: 'valve stem';
      /** Which valve. */
      readonly valve: string;
      /** What to do, or why it cannot be done. */
      readonly work: StemWork;
      /** Whether its guide, seat or face needs work first, which changes the lash. */
      readonly seatFirst: boolean;
    };

/** What the valves call for. Better readings come first where they alone may tell: those are asked for elsewhere. */
export function valveActions(valves: readonly ValveReport[]): readonly ValveAction[] {
  return valves.flatMap(({ name: valve, findings, springForces, stem }): readonly ValveAction[] => {
    const wrong = findings.filter((finding) => !holds(finding) && finding.verdict !== 'undecided');
    return [
      ...wrong.map((finding) => ({ kind: 'valve' as const, valve, finding })),
      ...springForces
        .filter((finding) => !holds(finding) && finding.verdict !== 'undecided')
        .map((finding) => ({ kind: 'weak spring' as const, valve, finding })),
      ...(stem && stem.outcome !== 'leave it'
        ? [{ kind: 'valve stem' as const, valve, work: stem, seatFirst: wrong.length > 0 }]
        : []),
    ];
  });
}

/** Describes what to do with a valve in a sentence. */
export function describeValveAction(action: ValveAction, wording: Wording): string {
  const { valve } = action;
  switch (action.kind) {
    case 'valve':
      return `${valve}: ${remedyOf(action.finding)}; ${sayFinding(action.finding, wording)}`;
    case 'weak spring':
      return `${valve}: test its spring again; if it stands, ${remedyOfSpring(action.finding)}; ${sayFinding(action.finding, wording)}`;
    case 'valve stem':
      return `${valve}: ${action.seatFirst ? 'finish its guide, seat and face first, and read the lash again; as it is now: ' : ''}${describeStem(action.work, wording)}`;
  }
}

/** Past the limit of new springs alone nobody knows how much a used one may lose. */
function remedyOfSpring({ verdict, grade }: Finding<'force'>): string {
  if (verdict === 'above') return STIFF;
  return grade === 'worn out' ? RENEW : `${ASK_LOSS}; ${RENEW}`;
}

const ASK_LOSS = 'find out how much the maker lets a used one lose';
const RENEW = 'fit another spring, as one that has sagged goes on sagging';

const STIFF =
  'see whether it is the spring of this engine: one that is too stiff wears cam and seat';

/** A limit of another engine or a rule of thumb condemns no valve. */
function remedyOf({ feature, grade, verdict }: Finding<'length'>): string {
  const again = `read the ${feature} again; if it stands,`;
  if (grade === 'undecided')
    return `${again} find the maker's limit before you scrap or cut anything`;
  switch (feature) {
    case 'guide clearance':
      return verdict === 'above'
        ? `${again} fit another valve or have the guide renewed, whichever is worn`
        : `${again} ream the guide or fit another valve: a tight stem sticks once it is hot`;
    case 'seat width':
      return verdict === 'above'
        ? `${again} have the seat narrowed from above and below`
        : `${again} have the seat widened: a narrow one does not cool the valve`;
    case 'margin':
      return `${again} fit another valve: one with no margin burns`;
    case 'recession':
      return verdict === 'above'
        ? `${again} have the seat renewed: a sunken valve loses lift, and its spring force`
        : `${again} see that the valve clears head and piston`;
    default:
      return verdict === 'below'
        ? `${again} give it more: a valve without lash burns`
        : `${again} take it up: it hammers, and opens late`;
  }
}

/** Describes what to do with the end of a stem. */
export function describeStem(work: StemWork, { units }: Wording): string {
  switch (work.outcome) {
    case 'leave it':
      return 'the lash is right, leave the stem as it is';
    case 'grind the stem': {
      const least = work.atLeast ? 'at least ' : '';
      const length =
        work.leastLength === 'kept'
          ? ''
          : '; how short the stem may be is not known: look for the depth of its hard end and for the groove of the keepers first';
      return `grind ${least}${describeSpan(work.by, 'length', units)} off its stem, square and cool, less at first, and read the lash again${length}`;
    }
    case 'stem too short':
      return `no lash to be had from its stem: ${say(work.needed, 'length', units)} would have to come off, and only ${say(work.left, 'length', units)} may; set the seat deeper or find another valve`;
    case 'too much lash':
      return `too much lash, and no stem grows: it is right once the valve sinks by ${describeSpan(work.sink, 'length', units)}, by its seat or its face; or find a longer valve`;
  }
}
