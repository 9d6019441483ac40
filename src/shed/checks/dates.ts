import { type FileProblem, type Given, isObject, rawItems } from '../../reading/index.js';
import { rawParts } from './names.js';

/** Dates after today, in the records of parts and of engines not taken apart. */
export function futureDates(given: Given, today: string | undefined): readonly FileProblem[] {
  if (today === undefined) return [];
  const cores = rawItems(given['cores']).map((part, i) => ({ path: `cores[${i}]`, part }));
  return [...rawParts(given), ...cores].flatMap(({ path, part }) =>
    datesIn(part, path).flatMap(({ at, date }) => afterToday(at, date, today)),
  );
}

/** Dates after today in a record of work: its own, and those of its parts. */
export function futureWork(
  on: string | undefined,
  parts: readonly Given[],
  today: string | undefined,
): readonly FileProblem[] {
  if (today === undefined) return [];
  return [
    ...afterToday('on', on, today),
    ...parts
      .flatMap((part, i) => datesIn(part, `parts[${i}]`))
      .flatMap(({ at, date }) => afterToday(at, date, today)),
  ];
}

function afterToday(path: string, date: unknown, today: string): readonly FileProblem[] {
  if (typeof date !== 'string' || !isAfter(date.trim(), today)) return [];
  return [
    {
      path,
      message: `is ${date.trim()}, which is after today, ${today} (put a plan or a guess in notes)`,
    },
  ];
}

/** Every date in the record of a part, with its path. */
function datesIn(part: Given, path: string) {
  const { condition, dates, history } = part;
  return [
    ...(isObject(condition) ? [{ at: `${path}.condition.on`, date: condition['on'] }] : []),
    ...(isObject(dates)
      ? Object.entries(dates).map(([what, date]) => ({ at: `${path}.dates.${what}`, date }))
      : []),
    ...rawItems(history).map((entry, i) => ({
      at: `${path}.history[${i}].on`,
      date: entry['on'],
    })),
  ];
}

/** Whether a year, month or day is later than the one of today. What is no date is refused elsewhere. */
const isAfter = (date: string, today: string) =>
  /^\d{4}(?:-\d\d){0,2}$/.test(date) && date > today.slice(0, date.length);
