import { readShed, writeShed } from 'crankwright/shed';
import { expect, it } from 'vitest';
import { oddFile } from './odd-files.js';

it('writes 1 000 files, typed as no program would, as they were read', () => {
  let read = 0;
  for (let seed = 0; read < 1000; seed++) {
    const typed = oddFile(seed);
    if (typed === undefined) continue;
    expect(writeShed(readShed(typed)) === typed, `seed ${seed}`).toBe(true);
    read++;
  }
}, 600_000);
