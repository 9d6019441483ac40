import * as bearings from '../../src/bearings/index.js';
import * as crankshaft from '../../src/crankshaft/index.js';
import * as cylinders from '../../src/cylinders/index.js';
import * as fasteners from '../../src/fasteners/index.js';
import * as fits from '../../src/fits/index.js';
import * as measuring from '../../src/measuring/index.js';
import * as motion from '../../src/motion/index.js';
import * as oil from '../../src/oil/index.js';
import * as timing from '../../src/timing/index.js';
import * as valves from '../../src/valves/index.js';
import { type CardName, cardNames, cards } from '../cards.js';

const ROOMS: Readonly<Record<string, object>> = {
  measuring,
  crankshaft,
  bearings,
  cylinders,
  fits,
  fasteners,
  motion,
  timing,
  valves,
  oil,
};

/** What a reader looks for under a topic. */
const TITLES: Readonly<Record<string, string>> = {
  measuring: 'Measuring: size and shape',
  crankshaft: 'Crankshaft: grinding and end play',
  bearings: 'Bearings: shells, clearance and the oil film',
  cylinders: 'Cylinders: boring, pistons, rings, compression',
  fits: 'Fits: pressed and shrunk parts',
  fasteners: 'Bolts and nuts',
  motion: 'Motion of the piston, gas and loads',
  timing: 'Timing: valves and spark',
  valves: 'Valves and their springs',
  oil: 'Oil, and fuel in it',
};

/** The formulas about one thing. */
export interface Topic {
  readonly topic: string;
  readonly title: string;
  readonly names: readonly CardName[];
}

/** The topic of a card: the room of the house that its function stands in. */
export function topicOf(name: CardName): string {
  const { of } = cards[name];
  const [topic] = Object.entries(ROOMS).find(([, room]) => Object.values(room).includes(of)) ?? [];
  if (topic === undefined) throw new Error(`${name}: its function stands in no room`);
  return topic;
}

/** All formulas by topic. */
export const topics: readonly Topic[] = Object.entries(TITLES).map(([topic, title]) => ({
  topic,
  title,
  names: cardNames.filter((name) => topicOf(name) === topic),
}));
