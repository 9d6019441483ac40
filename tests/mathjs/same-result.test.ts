import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { functions } from '../../src/mathjs/functions.js';
import { importInto } from '../../src/mathjs/import.js';
import { readValue } from '../../src/mathjs/read-value.js';
import { registry } from '../fuzz/registry.js';
import { callAsText } from './as-text.js';

const math = create(all as FactoryFunctionMap);
const { exact, names } = importInto(math, () => 'inch');
math.import(names);

describe('every sound call, typed with units, gives what the function gives', () => {
  it.each([...functions.keys()])('%s', (name) => {
    const { signature, run } = functions.get(name) ?? expect.fail(name);
    for (const args of registry[name]?.sound ?? expect.fail(name)) {
      const direct = run(...structuredClone(args));
      const typed = math.evaluate(callAsText(name, signature, args));
      expect(readValue(exact, typed, signature.gives, 'result', {})).toEqual(direct);
    }
  });
});
