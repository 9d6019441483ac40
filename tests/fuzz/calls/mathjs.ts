import { crankwright, type MathOptions } from 'crankwright/mathjs';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { calls, refused } from './calls.js';

const math = create(all as FactoryFunctionMap);

/** An instance is too large to be spoilt piece by piece: a word stands for it. */
const names = (instance: 'an instance', options?: MathOptions): readonly string[] =>
  Object.keys(crankwright(instance === 'an instance' ? math : instance, options));

export const mathjsCalls = {
  crankwright: calls(names, {
    sound: [['an instance'], ['an instance', { units: 'metric' }]],
    provoked: {
      'there is no such instance': refused('math', {}),
      'a field is misspelt': refused('options.unit', 'an instance', { unit: 'inch' }),
      'the unit system is unknown': refused('options.units', 'an instance', { units: 'feet' }),
    },
  }),
};
