import { readShed, writeShed } from 'crankwright/shed';
import { expect, it } from 'vitest';
import { tries } from '../support/tries.js';
import { oddFile } from './odd-files.js';

it('writes files, typed as no program would, as they were read: 400 of them where there is time', () => {
  const files = tries(10, 400);
  let read = 0;
  for (let seed = 0; read < files; seed++) {
    const typed = oddFile(seed);
    if (typed === undefined) continue;
    expect(writeShed(readShed(typed)) === typed, `seed ${seed}`).toBe(true);
    read++;
  }
}, 600_000);
