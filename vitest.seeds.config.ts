import { defineConfig, mergeConfig } from 'vitest/config';
import settings from './vitest.config.js';

/** The tests as ever, but every property with many seeds, to find one that fails now and then. */
export default mergeConfig(
  settings({ command: 'serve', mode: 'test' }),
  defineConfig({
    test: {
      setupFiles: ['tests/support/many-seeds.ts'],
      typecheck: { enabled: false },
      testTimeout: 3_600_000,
    },
  }),
);
