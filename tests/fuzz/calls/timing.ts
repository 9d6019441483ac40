import { degree, inch, pistonTravel, rimAngle, rimDistance } from 'crankwright';
import { calls, refused } from './calls.js';

const rim = { diameter: inch(10), angle: degree(18) };
const crank = { stroke: inch(3.25), rodLength: inch(6) };

export const timingCalls = {
  rimDistance: calls(rimDistance, {
    sound: [[rim]],
    provoked: {},
  }),
  rimAngle: calls(rimAngle, {
    sound: [[{ diameter: inch(10), arc: inch(1.5) }], [{ diameter: inch(10), chord: inch(1.5) }]],
    provoked: {
      'neither distance': refused('arc', { diameter: inch(10) }),
      'both are given': refused('chord', {
        diameter: inch(10),
        arc: inch(1.5),
        chord: inch(1.5),
      }),
    },
  }),
  pistonTravel: calls(pistonTravel, {
    sound: [[{ ...crank, angle: degree(18) }]],
    provoked: {},
  }),
};
