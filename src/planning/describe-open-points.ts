import type { Wording } from '../judging/index.js';
import { type PageLine, wrap } from '../pages/index.js';
import type { NotJudged } from '../shed/index.js';
import { NO_LIMIT_STATED, sayNotJudged } from '../shed/internal.js';
import type { Build } from './plan-types.js';

type What = Extract<NotJudged, { readonly what: unknown }>['what'];

/** What the lines of the end play and the table of the cylinders tell. */
const OF_CLEARANCES: readonly What[] = ['thrust width', 'thickness', 'diameters'];
/** What the line of the guide clearance tells, where there is one. */
const OF_GUIDES: readonly What[] = ['guides', 'stems'];

/** What is not known of the parts of an engine that are in it all the same: a line for each kind of doubt. */
export function openPointLines(build: Build, wording: Wording): readonly PageLine[] {
  const { parts, tests, guides } = build;
  const first = tests.filter(({ when }) => when === 'first').map(({ part }) => part);
  const untested = parts.filter(({ name, untested: is }) => is && !first.includes(name));
  const toldElsewhere = guides ? [...OF_CLEARANCES, ...OF_GUIDES] : OF_CLEARANCES;
  const open = (hasReading: boolean) =>
    parts.flatMap(({ name, notJudged = [] }) => {
      const its = notJudged
        .filter(({ why }) => (why === 'no limit') === hasReading)
        .filter((one) => !('what' in one && toldElsewhere.includes(one.what)))
        .map((one) => sayNotJudged(one, wording));
      return its.length === 0 ? [] : [`${name} (${its.join(', ')})`];
    });
  const line = (title: string, names: readonly string[]) =>
    names.length === 0 ? [] : wrap(`${title}: ${names.join(', ')}.`, 2);
  return [
    ...line(
      'Not crack-tested',
      untested.map(({ name }) => name),
    ),
    ...line('Not measured, so not judged', open(false)),
    ...line(`Not judged, as ${NO_LIMIT_STATED.replace(':', ';')}`, open(true)),
  ];
}

/** Why there is no end play of an engine. */
export function noEndPlay({ parts }: Build): string {
  const open = parts.filter(({ notJudged = [] }) =>
    notJudged.some((one) => one.why === 'not measured' && one.what === 'thrust width'),
  );
  const why =
    open.length === 0
      ? 'no limit is stated'
      : `the thrust width of these was not measured: ${open.map(({ name }) => name).join(', ')}`;
  return `End play: not planned, as ${why}.`;
}
