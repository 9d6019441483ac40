import { guardFields } from '../judging/internal.js';
import { RebuildInputError } from '../quantities/index.js';

/** The day given as an option, checked; undefined if none is given. */
export function guardToday(options: { readonly today?: string }): string | undefined {
  guardFields('options', options, ['today']);
  const { today } = options;
  if (today === undefined) return undefined;
  const isDay = typeof today === 'string' && /^\d{4}-\d\d-\d\d$/.test(today);
  const day = isDay ? new Date(`${today}T00:00:00Z`) : undefined;
  if (day && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(today)) return today;
  throw new RebuildInputError({
    parameter: 'options.today',
    value: today,
    expected: 'a day, written as year-month-day',
    hint: 'For example "2026-11-26".',
  });
}
