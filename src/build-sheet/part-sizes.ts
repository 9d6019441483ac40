import type { BasedLimits, Wording } from '../judging/index.js';
import type { Block, Entry } from '../pages/index.js';
import { blank, paragraph, table } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import type { EngineKind } from '../reading/index.js';
import type { Section } from '../shed/index.js';
import { MEASURED, type MeasuredField, type WholeField } from '../shed/internal.js';
import { based } from './allowed-sizes.js';
import { limitCells, NOT_STATED } from './limit-cells.js';

/** A size of a part as a whole. */
export interface PartSize extends MeasuredField<WholeField> {
  readonly section: Section;
  readonly part: string;
  readonly what: string;
  /** Its limits, if the shed file states any. */
  readonly limits?: BasedLimits<'length'>;
  /** The clearance that has limits, where a size alone has none. */
  readonly see?: string;
}

/** What each is in words, and the limits of the engine that it or its clearance is held to. */
interface Said {
  readonly what: string;
  readonly limits: 'headFlatness' | 'guideClearance' | 'valveMargin' | 'endPlay';
  /** The clearance that the limits are of. */
  readonly see?: string;
}

const GUIDES = { limits: 'guideClearance', see: 'see the guide clearance' } as const;
const PLAY = { limits: 'endPlay', see: 'see the end play' } as const;

/** The walls of shells are asked for bearing by bearing. */
const SAID: { readonly [F in Exclude<WholeField, 'wall'>]: (section: Section) => Said } = {
  thrustWidth: (section) => ({
    what:
      section === 'blocks' ? 'width over the thrust faces' : 'distance between the thrust faces',
    ...PLAY,
  }),
  thickness: () => ({ what: 'thickness', ...PLAY }),
  flatness: () => ({ what: 'largest gap under a straight edge', limits: 'headFlatness' }),
  guideBore: () => ({ what: 'bore of the valve guides', ...GUIDES }),
  stem: () => ({ what: 'diameter of the stems', ...GUIDES }),
  margin: () => ({ what: 'thinnest margin of a valve', limits: 'valveMargin' }),
};

/** Every size that the shed file can hold of the parts of an engine as a whole, but for the walls of its shells. */
export function partSizes({ parts }: Build, engine: EngineKind): readonly PartSize[] {
  return parts.flatMap(({ section, name }) =>
    MEASURED[section].flatMap(({ field, holds }): readonly PartSize[] => {
      if (field === 'wall') return [];
      const { what, limits: of, see } = SAID[field](section);
      const [limits] = based(engine[of]);
      const size = { section, part: name, field, holds, what };
      if (limits === undefined) return [size];
      return [see === undefined ? { ...size, limits } : { ...size, see }];
    }),
  );
}

/** A line for each of them. */
export function partSizeBlocks(
  build: Build,
  engine: EngineKind,
  wording: Wording,
): readonly Block[] {
  const rows = partSizes(build, engine).map(({ part, what, limits, see }): readonly Entry[] => [
    `${part}, ${what}`,
    blank,
    ...(limits ? limitCells(limits, wording) : see === undefined ? NOT_STATED : [see, '']),
  ]);
  if (rows.length === 0) return [];
  return [
    paragraph(
      'Other sizes; of guides, stems and valves the smallest and the largest of all of them:',
    ),
    table(['place', 'measured', 'limits', 'limits by'], rows, 1),
  ];
}

/** Whether an engine takes a head and valves, which have a clearance between them. */
export const hasGuides = ({ parts }: Pick<Build, 'parts'>): boolean =>
  ['heads', 'valveSets'].every((each) => parts.some(({ section }) => section === each));
