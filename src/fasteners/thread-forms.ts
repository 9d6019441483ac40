import { guardWord } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';

/** The shape of a thread: angle between its flanks, and how deep it is. */
export type ThreadForm = 'ISO metric' | 'unified' | 'Whitworth' | 'BSC' | 'BA';

/** What a thread measures. */
export interface ThreadSize {
  /** Its shape; an old American 60° thread counts as unified, a cycle thread is `BSC`. */
  readonly form: ThreadForm;
  /** Diameter over the crests, as its standard names it and not as it was worn or made [m]. */
  readonly diameter: Length;
  /** From one crest to the next [m]. */
  readonly pitch: Length;
}

/** By how many pitches a thread is smaller at its flanks and at its root, and half the angle of its flanks. */
export interface FormDepths {
  /** Diameter less pitch diameter, over pitch. */
  readonly flanks: number;
  /** Diameter less minor diameter of the bolt, over pitch. */
  readonly root: number;
  /** Half the angle between two flanks, in radians. */
  readonly halfAngle: number;
}

// H is the height of the sharp triangle over the pitch: √3/2 at 60°, 0.960 491 at 55°.
// source: ISO 68-1 and ISO 898-1 (3/4 H and 17/12 H); ASME B1.1 (3/4 H and 3/2 H); BS 84 (2/3 H and 4/3 H);
// BS 811 (0.5327 and 1.0654); BS 93 (0.6 and 1.2).
const FORMS: Readonly<Record<ThreadForm, FormDepths>> = {
  'ISO metric': {
    flanks: 0.649_519_052_838_329,
    root: 1.226_869_322_027_954_7,
    halfAngle: 0.523_598_775_598_298_8,
  },
  unified: {
    flanks: 0.649_519_052_838_329,
    root: 1.299_038_105_676_658,
    halfAngle: 0.523_598_775_598_298_8,
  },
  Whitworth: {
    flanks: 0.640_327_375_657_055_3,
    root: 1.280_654_751_314_110_7,
    halfAngle: 0.479_965_544_298_440_6,
  },
  BSC: { flanks: 0.5327, root: 1.0654, halfAngle: 0.523_598_775_598_298_8 },
  BA: { flanks: 0.6, root: 1.2, halfAngle: 0.414_515_697_348_653_2 },
};

/** Every form of thread. */
/** Every form. */
export const THREAD_FORMS = [
  'ISO metric',
  'unified',
  'Whitworth',
  'BSC',
  'BA',
] as const satisfies readonly ThreadForm[];

/** Refuses what is no form of thread, and gives how deep threads of a form are. */
export function depthsOf(parameter: string, form: ThreadForm): FormDepths {
  if (typeof form === 'string' && Object.hasOwn(FORMS, form)) return FORMS[form];
  return FORMS[guardWord(parameter, form, THREAD_FORMS)];
}
