import { filmCards } from '../src/bearings/film/film.cards.js';
import { filmThickness } from '../src/bearings/index.js';
import { card } from '../src/judging/internal.js';
import { onTopic } from '../src/teaching/formula-card.js';

const written = card({
  of: filmThickness,
  name: 'oil film of a bearing',
  gives: { symbol: 'h', meaning: 'least film', dimension: 'length' },
  letters: filmCards.sommerfeldNumber.letters,
  call: ({ D, L, C, mu, omega, W }) => [
    { journal: D, length: L, clearance: C, viscosity: mu, speed: omega, load: W } as never,
  ],
  read: (film) => (film.outcome === 'no film' ? undefined : film.film),
  expression: 'C / 2 * (1 - e)',
  refuses: filmCards.petroffTorque.refuses,
  source: 'the Reynolds equation, as finiteBearing solves it',
});

/** The film of a bearing, which no formula gives: it has a page like a card, but no working. */
export const { leastFilm } = onTopic('oil film', { leastFilm: written });

/** What its page says of the formula, and of what it leaves out. */
export const FILM_NOTES: readonly string[] = [
  'e is the eccentricity: how far the journal stands from the middle, over the most it can. No formula gives it. It is found by solving the equation of the oil film for this bearing.',
  'The load is steady and the oil has one viscosity all through the film. A groove across the load, a worn or a split bearing carry less. A looser bearing can show a thicker film here; that does not make it safe, as it knocks and leaks more oil.',
];
