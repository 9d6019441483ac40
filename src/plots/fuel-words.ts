import { sayClosely } from '../judging/internal.js';
import type { SumpStory } from '../oil/index.js';
import { perHour, type Rate, valueIn } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import type { Stretch } from './fuel-story.js';
import type { Drawn } from './options.js';

/** What leaks into a sump and what evaporates from it in a state of the engine, from the least to the most. */
export interface Flowing {
  readonly state: Stretch['state'];
  /** For the key of the picture: `running: no fuel leaks in`. */
  readonly label: string;
  /** What it does to the line: `While the engine stands, … so the line rises.` */
  readonly told: string;
}

interface Ends {
  readonly min: number;
  readonly max: number;
}

/** What fuel does while the engine runs and while it stands, and why the line goes as it does. */
export function flowingIn(
  state: Stretch['state'],
  stories: readonly SumpStory[],
  { units }: Drawn,
): Flowing {
  const leak = endsOf(stories.map((story) => valueFor(state, story.leak)));
  const lost = endsOf(stories.map((story) => valueFor(state, story.evaporation)));
  const flow = (value: number) => sayClosely(value, 'flow', units);
  const share = (rate: number) => sayClosely(valueIn(rate as Rate, perHour), 'ratio', units);
  const leaks = leak.max === 0 ? 'no fuel leaks in' : `${spanned(leak, flow)} of fuel leaks in`;
  const evaporates =
    lost.max === 0
      ? 'none is taken to evaporate'
      : `${spanned(lost, share)} of the fuel in the oil evaporates in an hour`;
  return {
    state,
    label: `${state}: ${leaks}`,
    told: `While the engine ${state === 'running' ? 'runs' : 'stands'}, ${leaks} and ${evaporates}${soThat(leak, lost)}.`,
  };
}

function soThat(leak: Ends, lost: Ends): string {
  if (leak.max === 0 && lost.max === 0) return ', so the line is flat';
  if (leak.min > 0 && lost.max === 0) return ', so the line rises';
  if (leak.max === 0) return ', so the line falls if there is fuel in the oil';
  if (leak.min > 0 && lost.min > 0) {
    return ', so the line goes towards the share at which as much evaporates as leaks in';
  }
  return '';
}

const valueFor = (
  state: Stretch['state'],
  given: number | Readonly<Record<Stretch['state'], number>> | undefined = 0,
): number => (typeof given === 'object' ? given[state] : given);

const endsOf = (values: readonly number[]): Ends => ({
  min: smallestOf(values),
  max: largestOf(values),
});

const spanned = ({ min, max }: Ends, said: (value: number) => string): string =>
  min < max ? `${said(min)} to ${said(max)}` : said(max);
