import { expect, it } from 'vitest';
import { checkInShed, checkOnSheet, slipsOfShed, slipsOfSheet } from './slipped-digits.js';

it.each([
  ['sheet', slipsOfSheet, checkOnSheet],
  ['shed', slipsOfShed, checkInShed],
] as const)('no slip of any digit of any diameter of the %s condemns a part', (_, slips, check) => {
  const answers = slips().map(check);
  for (const answer of ['refused', 'read again', 'silent']) expect(answers).toContain(answer);
});
