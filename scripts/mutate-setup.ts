import { afterAll } from 'vitest';

// Stryker turns a mutant on before the tests of a file. It is turned off after them, so that the
// next file is loaded with sound code, as it would be in a thread of its own.
afterAll(() => {
  const stryker = (globalThis as { __stryker__?: { activeMutant?: string | undefined } })
    .__stryker__;
  if (stryker !== undefined) stryker.activeMutant = undefined;
});
