import { readShed, writeShed } from 'crankwright/shed';
import { expect, it } from 'vitest';
import { oddFile } from './odd-files.js';

it('writes files, typed as no program would, as they were read: 400 of them', () => {
  const files = 400;
  let read = 0;
  for (let seed = 0; read < files; seed++) {
    const typed = oddFile(seed);
    if (typed === undefined) continue;
    expect(writeShed(readShed(typed)) === typed, `seed ${seed}`).toBe(true);
    read++;
  }
}, 600_000);
