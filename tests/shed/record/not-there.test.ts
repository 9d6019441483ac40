import { expect, it } from 'vitest';
import { notThere } from '../../../src/shed/record/change-part.js';

it('says that there is none where nothing has a name', () => {
  expect(notThere(undefined, [], 'a part')).toBe('"" is not a part; there is none');
  expect(notThere('rod', [undefined, 'rod 1'], 'a part')).toContain('there are rod 1');
});
