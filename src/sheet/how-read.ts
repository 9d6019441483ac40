import type { NamedRule } from '../judging/index.js';
import { readingUncertainty, type Shape, shareOfOvalSeen } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { type Accuracy, INSTRUMENTS, type InstrumentName } from '../reading/index.js';
import type { BearingGroupReport } from './inspect-bearings.js';
import type { CylinderReport } from './inspect-cylinder.js';
import type { Sheet } from './sheet.js';

/** How well the sizes of a sheet were read. */
export interface HowRead {
  /** The instruments that are described, with how far one reading of each may be off, about 95 times in 100. */
  readonly within: readonly {
    /** Which. */
    readonly instrument: InstrumentName;
    /** How far [m]. */
    readonly expanded: Length;
  }[];
  /** The instruments that something was read with and nobody described: their readings count as exact. */
  readonly undescribed: readonly InstrumentName[];
  /** The rule that verdicts go by, if one is named. */
  readonly rule?: NamedRule;
  /** What was read warm and is not said what it is made of: its size at 20 °C may be that of any metal it may be. */
  readonly notAt20C: readonly (keyof Accuracy['growth'])[];
  /** Journals and cylinders of which the angles they were read at may hide most of an oval. */
  readonly ovalHidden: readonly string[];
}

/** Angles that are sure to show less of an oval than this hide most of it: any two do. */
const MOST_OF_OVAL = 0.5;

/** Tells how well the sizes of a sheet were read. */
export function howRead(
  sheet: Sheet,
  accuracy: Accuracy,
  groups: readonly BearingGroupReport[],
  cylinders: readonly CylinderReport[],
): HowRead {
  const used = new Set(instrumentsOf(sheet));
  const parts = [...groups.flatMap(({ bearings }) => bearings), ...cylinders];
  const { warmth } = sheet;
  return {
    within: INSTRUMENTS.flatMap((instrument) => {
      const budget = accuracy.reads[instrument];
      return budget && used.has(instrument)
        ? [{ instrument, expanded: readingUncertainty(budget).size }]
        : [];
    }),
    undescribed: INSTRUMENTS.filter((each) => used.has(each) && !accuracy.reads[each]),
    ...(accuracy.rule !== undefined && { rule: accuracy.rule }),
    notAt20C: warmth ? warmPartsOf(sheet).filter((part) => warmth[part] === undefined) : [],
    ovalHidden: parts.filter(({ shape }) => hidesOval(shape)).map(({ name }) => name),
  };
}

const hidesOval = ({ lines }: Shape): boolean =>
  shareOfOvalSeen(lines.map(({ angle }) => angle)) < MOST_OF_OVAL;

/** The instruments that the sizes of a sheet were read with. */
function instrumentsOf({
  rods = [],
  mains = [],
  shells = [],
  cylinders = [],
  crankshaft,
}: Sheet): readonly InstrumentName[] {
  const bearings = [...rods, ...mains];
  const pistons = cylinders.filter(({ piston }) => piston !== undefined);
  const rings = cylinders.flatMap((each) => each.rings ?? []);
  const dials = [
    ...bearings.flatMap(({ journal }) => journal.runout ?? []),
    ...(crankshaft?.endPlay ? [crankshaft.endPlay] : []),
  ];
  const used: readonly (readonly [InstrumentName, readonly unknown[]])[] = [
    ['micrometer', [...bearings, ...pistons]],
    ['boreGauge', [...bearings, ...cylinders]],
    ['wallGauge', bearings.length > 0 ? shells : []],
    ['feelerGauge', rings],
    ['dialIndicator', dials],
  ];
  return used.flatMap(([instrument, read]) => (read.length > 0 ? [instrument] : []));
}

function warmPartsOf({
  rods = [],
  mains = [],
  cylinders = [],
}: Sheet): readonly (keyof Accuracy['growth'])[] {
  return [
    ...(rods.length + mains.length > 0 ? (['journals', 'housings'] as const) : []),
    ...(cylinders.length > 0 ? (['bores'] as const) : []),
    ...(cylinders.some(({ piston }) => piston !== undefined) ? (['pistons'] as const) : []),
  ];
}
