import { card } from '../judging/internal.js';
import { celsius, centistokes } from '../quantities/index.js';
import {
  D341,
  LINE,
  lineAt,
  lineOfLetters,
  noLine,
  ON_LINE,
  TOO_STEEP,
  wantedAt,
} from './card-letters.js';
import { extrapolatedViscosity, viscosityAt } from './viscosity.js';

const gives = {
  symbol: 'nu',
  meaning: 'kinematic viscosity at T',
  dimension: 'kinematicViscosity',
} as const;

/** Formulas of an oil's viscosity line. */
export const viscosityCards = {
  viscosityAt: card({
    of: viscosityAt,
    name: 'viscosity at a temperature',
    gives,
    letters: { ...lineAt('line'), T: wantedAt(285, 420) },
    call: (points) => [lineOfLetters(points), points.T],
    where: LINE,
    expression: ON_LINE,
    refuses: {
      ...noLine('line'),
      ...TOO_STEEP,
      'the line would have to be taken too far': { with: { T: 430 }, names: 'temperature' },
    },
    example: {
      nu_1: centistokes(100),
      T_1: celsius(40),
      nu_2: centistokes(11),
      T_2: celsius(100),
      T: celsius(80),
    },
    source: D341,
  }),
  extrapolatedViscosity: card({
    of: extrapolatedViscosity,
    name: 'viscosity beyond the range of the line',
    gives,
    letters: { ...lineAt('line'), T: wantedAt(424, 480) },
    call: (points) => [lineOfLetters(points), points.T],
    read: ({ viscosity }) => viscosity,
    where: LINE,
    expression: ON_LINE,
    refuses: { ...noLine('line'), ...TOO_STEEP },
    example: {
      nu_1: centistokes(100),
      T_1: celsius(40),
      nu_2: centistokes(11),
      T_2: celsius(100),
      T: celsius(130),
    },
    source: D341,
  }),
};
