import { guardFields, guardLength, guardText, guardTruth, guardWord } from '../judging/internal.js';
import { threadDiameter, threadPitch } from './domains.js';
import { depthsOf, type FormDepths, type ThreadSize } from './thread-forms.js';
import { THREAD_SERIES, type Thread } from './thread-series.js';

const THREAD = ['designation', 'series', 'form', 'diameter', 'pitch', 'leftHand'] as const;

/** What the fields of a thread are called where it is the argument itself, and where it is the field of one. */
const ALONE = {
  form: 'form',
  diameter: 'diameter',
  pitch: 'pitch',
  designation: 'designation',
  series: 'series',
  leftHand: 'leftHand',
} as const;
const WITHIN = {
  form: 'thread.form',
  diameter: 'thread.diameter',
  pitch: 'thread.pitch',
  designation: 'thread.designation',
  series: 'thread.series',
  leftHand: 'thread.leftHand',
} as const;

/**
 * Refuses what is no thread, and gives how deep threads of its form are. It may be as `threadOf` gives it, with its names,
 * or only its form and its two sizes.
 */
export function guardThread(thread: ThreadSize, place: 'alone' | 'within'): FormDepths {
  guardFields('thread', thread as Thread, THREAD);
  const named = place === 'alone' ? ALONE : WITHIN;
  const { designation, series, leftHand } = thread as Partial<Thread>;
  const depths = depthsOf(named.form, thread.form);
  const diameter = threadDiameter(named.diameter, thread.diameter);
  const pitch = threadPitch(named.pitch, thread.pitch);
  // The coarsest of any series, 1/16 BSW, has 0.27 of its diameter.
  guardLength(named.pitch, pitch, [threadPitch.least, 0.3 * diameter], threadPitch.example);
  if (designation !== undefined) guardText(named.designation, designation);
  if (series !== undefined) guardWord(named.series, series, THREAD_SERIES);
  if (leftHand !== undefined) guardTruth(named.leftHand, leftHand);
  return depths;
}
