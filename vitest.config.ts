import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const source = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^crankwright$/, replacement: source('index.ts') },
      { find: /^crankwright\/(\w+)$/, replacement: source('$1/index.ts') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    typecheck: { enabled: true, include: ['tests/types/**/*.test-d.ts'] },
    testTimeout: 60_000,
    coverage: {
      provider: 'v8',
      include: ['src/**'],
      reporter: ['text'],
      thresholds: { lines: 95, branches: 95 },
    },
  },
});
