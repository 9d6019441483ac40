import { guardFields, guardWhole } from '../judging/internal.js';
import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';

/** How to draw a picture. */
export interface PictureOptions {
  /** The units to print in. */
  readonly units: UnitSystem;
  /**
   * How wide it is drawn, in pixels of the page; 640 if left out. Letters are of one size at every width, so draw for
   * the width it is shown at: 320 for a phone.
   */
  readonly width?: number;
  /** What its ids begin with; give each picture on a page one of its own. */
  readonly id?: string;
}

/** The options with nothing left open. */
export type Drawn = Required<PictureOptions>;

const OPTIONS = ['units', 'width', 'id'] as const;
/** The widths that a picture can be laid out in, in pixels. */
const WIDTHS = [280, 2000] as const;

/** Refuses options that no picture can be drawn with; `id` is what its ids begin with if nothing is said. */
export function guardPicture(options: PictureOptions, idOr: string): Drawn {
  guardFields('options', options, OPTIONS);
  const { units, width = 640, id = idOr } = options;
  guardSystem('options.units', units);
  guardWhole('options.width', width, WIDTHS, 'It is in pixels, e.g. 640; 320 for a phone.');
  if (typeof id !== 'string' || !/^[A-Za-z][\w-]{0,60}$/.test(id)) {
    throw new RebuildInputError({
      parameter: 'options.id',
      value: id,
      expected: 'a letter and then letters, digits, - or _, 61 at the most',
      hint: 'The ids of the picture begin with it, e.g. "rod-1".',
    });
  }
  return { units, width, id };
}
