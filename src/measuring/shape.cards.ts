import { card, diameter, within } from '../judging/internal.js';
import { type Angle, type Length, metre, mm, radian } from '../quantities/index.js';
import { boreShape } from './bore.js';
import { journalShape } from './journal.js';

const largest = { written: 'largest', domain: diameter, usual: [0.0501, 0.0502] } as const;
const smallest = { written: 'smallest', domain: diameter, usual: [0.05, 0.0501] } as const;
const SLIPPED = 'a reading stands out against the others';
const DEFINITION = 'definition of the trade';

const read = (station: Length, angle: Angle, diameter: Length) => ({ station, angle, diameter });
const [top, bottom, along, across] = [metre(0), metre(0.02), radian(0), radian(1)];

/** Formulas of size and shape. */
export const shapeCards = {
  outOfRound: card({
    of: journalShape,
    name: 'out-of-round at a station',
    gives: { symbol: 'o', meaning: 'out-of-round', dimension: 'length' },
    letters: {
      D_max: {
        field: 'readings[0].diameter',
        meaning: 'largest diameter at the station',
        ...largest,
      },
      D_min: {
        field: 'readings[1].diameter',
        meaning: 'smallest diameter at the station',
        ...smallest,
      },
    },
    call: ({ D_max, D_min }) => [
      [
        read(top, along, D_max),
        read(top, across, D_min),
        read(bottom, along, D_min),
        read(bottom, across, D_min),
      ],
    ],
    read: ({ outOfRound }) => outOfRound,
    expression: 'D_max - D_min',
    refuses: { [SLIPPED]: { with: { D_max: 0.053 }, names: 'readings[0].diameter' } },
    example: { D_max: mm(50.02), D_min: mm(49.98) },
    source: DEFINITION,
  }),
  taper: card({
    of: journalShape,
    name: 'taper along an angle',
    gives: { symbol: 't', meaning: 'taper', dimension: 'length' },
    letters: {
      D_max: {
        field: 'readings[0].diameter',
        meaning: 'largest diameter along the angle',
        ...largest,
      },
      D_min: {
        field: 'readings[2].diameter',
        meaning: 'smallest diameter along the angle',
        ...smallest,
      },
    },
    call: ({ D_max, D_min }) => [
      [
        read(top, along, D_max),
        read(top, across, within(diameter, D_max)),
        read(bottom, along, D_min),
        read(bottom, across, within(diameter, D_max)),
      ],
    ],
    read: ({ lines }) => lines[0]?.taper,
    expression: 'D_max - D_min',
    example: { D_max: mm(50.01), D_min: mm(49.98) },
    source: DEFINITION,
  }),
  boreWear: card({
    of: boreShape,
    name: 'wear of a bore',
    gives: { symbol: 'w', meaning: 'wear', dimension: 'length' },
    letters: {
      D_max: {
        field: 'readings[1].diameter',
        meaning: 'largest diameter in the ring travel',
        ...largest,
      },
      D_u: {
        field: 'readings[0].diameter',
        written: 'unworn',
        meaning: 'unworn diameter outside of the ring travel',
        domain: diameter,
        usual: [0.05, 0.0501],
      },
    },
    call: ({ D_max, D_u }) => [
      [
        read(metre(-0.02), along, D_u),
        read(top, along, D_max),
        read(top, across, within(diameter, D_max)),
        read(bottom, along, within(diameter, D_max)),
        read(bottom, across, within(diameter, D_max)),
      ],
      { ringTravel: { min: top, max: bottom } },
    ],
    read: ({ wear }) => wear,
    expression: 'D_max - D_u',
    refuses: { [SLIPPED]: { with: { D_u: 0.047 }, names: 'readings[0].diameter' } },
    source: DEFINITION,
  }),
};
