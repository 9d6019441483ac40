import { undersizeSteps } from '../../crankshaft/index.js';
import { namedFrom } from '../../judging/internal.js';
import { oddReadings } from '../../measuring/index.js';
import { asOthersSay, kindestShape, readSoFar, withStandard } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import {
  belowAtNoStep,
  farReadings,
  grindNames,
  type JournalKind,
  journalSeen,
  readingsAt20C,
  readWith,
} from '../../reading/index.js';
import type { JournalPlace } from '../shed.js';
import { grinding, groundFrom, type Journals, type JudgedWithRunout } from './ground-journals.js';
import { unreadPlaces } from './not-measured.js';
import { faultsOfPlace, faultsOn } from './seen-faults.js';
import type { TooFar } from './too-far-types.js';
import type { TriageReason } from './triage-types.js';
import { machining } from './ways.js';

/** The sure ways, or those that there may be. */
export const waysOf = ({ ways, atBest = [] }: Journals) => (ways.length > 0 ? ways : atBest);

/** No main that has shells: nothing is in the way. */
export const NO_MAINS: Journals = {
  ways: [{ step: 0 as Length, sizes: [], jobs: [] }],
  findings: [],
  because: [],
};

/** Works out how the journals of one kind can be made ready. */
export function journalsReady(
  kind: 'rods' | 'mains',
  places: readonly JournalPlace[],
  journals: JournalKind,
  judged: JudgedWithRunout,
): Journals {
  const field = kind === 'rods' ? 'rodJournals' : 'mainJournals';
  const steps = namedFrom(
    () => ({ '': `engine.${field}` }),
    () => withStandard(journals.steps ?? undersizeSteps(judged.units)),
  );
  const paths = places.map((_, i) => `part.${field}[${i}]`);
  const read = places.map(({ name: place, readings = [] }, i) =>
    namedFrom(
      () => ({ readings: `${paths[i]}.readings` }),
      () => {
        const soFar = readSoFar(readings);
        if (soFar.lacks !== undefined) {
          const placed = readingsAt20C(readings, 'journals', judged.accuracy);
          const far = farReadings('journals', placed, journals.standard, steps);
          return {
            soFar,
            shape: far.length > 0 ? undefined : kindestShape(placed),
            misread: [],
            far: far.map(
              (one): TooFar => ({ kind: 'too far off', of: 'journals', place, far: one }),
            ),
          };
        }
        const odd = oddReadings(readings, readWith('micrometer', judged.accuracy));
        const likely = asOthersSay(readings, odd);
        const shape = journalSeen(likely, judged.accuracy);
        const below = belowAtNoStep(readings, shape, journals, steps);
        return {
          soFar,
          shape,
          far: [],
          misread: [
            ...odd.map((one): TriageReason => ({ kind: 'read again', place, odd: one })),
            ...(below === undefined ? [] : [{ kind: 'at no step' as const, place, below }]),
          ],
        };
      },
    ),
  );
  const groundOf = (isIn: (i: number) => boolean) => {
    const known = places.flatMap((place, i) => {
      const { shape } = read[i] as (typeof read)[number];
      return shape && isIn(i) ? [{ ...place, i, shape }] : [];
    });
    const of = namedFrom(
      () =>
        grindNames(
          `engine.${field}`,
          known.map(({ i }) => paths[i] as string),
        ),
      () => groundFrom(kind, known, journals, steps, judged),
    );
    return { known, of };
  };
  const isWhole = (i: number) => read[i]?.soFar.lacks === undefined;
  const whole = groundOf(isWhole);
  const misread = read.flatMap((each) => each.misread);
  const unread = unreadPlaces(
    kind === 'rods' ? 'rod journals' : 'main journals',
    places.map(({ name }, i) => ({ name, soFar: (read[i] as (typeof read)[number]).soFar })),
  );
  if (unread.length === 0 && misread.length === 0) return whole.of;
  const sure = waysOf(whole.of);
  // What was measured to the end condemns the crankshaft, whatever the other journals measure.
  if (misread.length === 0 && sure.length === 0) return whole.of;
  const begun = groundOf(() => true);
  const likely = waysOf(begun.of);
  const [from, best] = likely.length > 0 ? [begun.known, likely] : [whole.known, sure];
  // The size of a journal that was not measured to the end is open, whatever was read of it.
  const open = best.map((way) => ({
    ...way,
    sizes: places.map((_, i) =>
      isWhole(i) ? way.sizes[from.findIndex((each) => each.i === i)] : undefined,
    ),
  }));
  // A fault is there before anything is measured.
  const notRead = places.filter((_, i) => !isWhole(i));
  const faulty = notRead.filter(({ faults }) => faultsOn(faults, judged.seen).length > 0);
  const work = { work: grinding(kind), standard: journals.standard } as const;
  // Of misread journals nothing is decided, and no finding given, before they are read again.
  return {
    ways: [],
    atBest: machining(
      open,
      faulty.map(({ name }) => name),
      work,
    ),
    findings: misread.length > 0 ? [] : whole.of.findings,
    because: [
      ...misread,
      ...read.flatMap(({ far }) => far),
      ...unread,
      ...notRead.flatMap(faultsOfPlace),
      ...(misread.length > 0 ? [] : measuredSoFar(whole)),
    ],
  };
}

/** What the journals that were measured to the end ask for. */
const measuredSoFar = ({
  known,
  of,
}: {
  readonly known: readonly unknown[];
  readonly of: Journals;
}): readonly TriageReason[] =>
  known.length === 0
    ? []
    : of.because.map((reason) => {
        if (reason.kind !== 'journals') return reason;
        // What the others will ask for is not known.
        const { sound, ...its } = reason;
        return { ...its, soFar: true as const };
      });
