import { type CardName, type CardTopic, cardNames, cards } from '../cards.js';

/** What a reader looks for under a topic. */
const TITLES: Readonly<Record<CardTopic, string>> = {
  measuring: 'Measuring: size and shape',
  crankshaft: 'Crankshaft: grinding and end play',
  bearings: 'Bearings: shells and clearance',
  'oil film': 'The oil film of a bearing',
  cylinders: 'Cylinders: boring, pistons, rings, compression',
  fits: 'Fits: pressed and shrunk parts',
  fasteners: 'Bolts and nuts',
  motion: 'Motion of the piston, gas and loads',
  timing: 'Timing: valves and spark',
  valves: 'Valves and their springs',
  oil: 'Oil, and fuel in it',
};

/** The title of a topic. */
export const titleOf = (topic: CardTopic): string => TITLES[topic];

/** Where a topic stands on the page of all formulas. */
export const anchorOf = (topic: CardTopic): string => topic.replace(' ', '-');

/** All formulas by topic. */
export const topics = (Object.keys(TITLES) as CardTopic[]).map((topic) => ({
  topic,
  title: TITLES[topic],
  names: cardNames.filter((name: CardName) => cards[name].topic === topic),
}));
