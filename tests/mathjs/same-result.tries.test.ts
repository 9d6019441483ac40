import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, inject, it } from 'vitest';
import { functions } from '../../src/mathjs/functions.js';
import { importInto } from '../../src/mathjs/import.js';
import { readValue } from '../../src/mathjs/read-value.js';
import { registry } from '../fuzz/registry.js';
import { callAsText } from './as-text.js';

const math = create(all as FactoryFunctionMap);
const { exact, names } = importInto(math, () => 'inch');
math.import(names);

// The rest of the calls, a few of which take a second each, are tried by `npm run test:deep`.
describe('a sound call, typed with units, gives what the function gives', () => {
  it.each([...functions.keys()])('%s', (name) => {
    const { signature, run } = functions.get(name) ?? expect.fail(name);
    const all = registry[name]?.sound ?? expect.fail(name);
    for (const args of inject('deep') ? all : all.slice(0, 1)) {
      const direct = run(...structuredClone(args));
      const typed = math.evaluate(callAsText(name, signature, args));
      expect(readValue(exact, typed, signature.gives, 'result', {})).toEqual(direct);
    }
  });
});
