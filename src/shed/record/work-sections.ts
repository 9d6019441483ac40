import { z } from 'zod';
import { parseLength, RebuildInputError } from '../../quantities/index.js';
import { complaintOf } from '../../quantities/internal.js';
import { count, fields, list, name } from '../../reading/index.js';
import { date, workDone } from '../record-schema.js';

const words = z.string('must be text, in quotes').trim();
/** A reading, or an empty box. It stays text: the history of a part is what was written. */
const measured = words.superRefine((text, context) => {
  if (text === '') return;
  try {
    parseLength(text);
  } catch (error) {
    if (!(error instanceof RebuildInputError)) throw error;
    context.addIssue({ code: 'custom', message: `${complaintOf(error)}. ${error.hint}` });
  }
});
/** A date, or an empty box. */
const day = words.superRefine((text, context) => {
  const read = text === '' ? undefined : date.safeParse(text);
  for (const { message } of read?.error?.issues ?? []) {
    context.addIssue({ code: 'custom', message });
  }
});
/** What is said of the work on a part. */
export const saidOfWork = {
  name,
  what: words.exactOptional(),
  done: list(workDone).exactOptional(),
  repaired: list(name).exactOptional(),
};
/** A part that came back, with whatever fields. */
export const partOfWork = z.looseObject(saidOfWork);
const box = fields({
  part: name,
  feature: name,
  station: words.exactOptional(),
  angle: words.exactOptional(),
  at: words.exactOptional(),
  shouldBe: words.exactOptional(),
  mayBe: words.exactOptional(),
  reading: words,
});
const check = fields({ what: words, limits: words.exactOptional(), reading: measured });

/** The sections of a record of work. What was measured of its parts is read once it is in the shed. */
export const workSections = {
  version: z.literal(1, { error: 'must be 1, the version of this layout' }),
  shed: words.optional(),
  engine: words.optional(),
  builtInto: words.optional(),
  takes: list(fields({ name, count: count('pieces', 1).exactOptional() }), 0).optional(),
  on: day.optional(),
  by: words.optional(),
  parts: list(partOfWork, 0).optional(),
  boxes: list(box, 0).optional(),
  checks: list(check, 0).optional(),
};
