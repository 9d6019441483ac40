import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';

const source = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

/**
 * What a mode runs: `deep` the tests named `.deep.`, which `npm test` does without, and those named `.tries.`, which try
 * few cases there; `site` those of the built site in a browser.
 */
const INCLUDED: Readonly<Record<string, string>> = {
  deep: 'tests/**/*.{deep,tries}.test.ts',
  site: 'tests/site/*.browser.ts',
};

export default defineConfig(({ mode }) => ({
  resolve: {
    alias: [
      { find: /^crankwright$/, replacement: source('index.ts') },
      { find: /^crankwright\/([\w-]+)$/, replacement: source('$1/index.ts') },
    ],
  },
  test: {
    include: [INCLUDED[mode] ?? 'tests/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(mode in INCLUDED ? [] : ['tests/**/*.deep.test.ts'])],
    provide: { deep: mode === 'deep' },
    typecheck: {
      enabled: !(mode in INCLUDED),
      include: ['tests/types/**/*.test-d.ts'],
      // `npm run types` checks everything else.
      tsconfig: './tests/types/tsconfig.json',
    },
    testTimeout: mode === 'deep' ? 300_000 : 60_000,
    maxWorkers: 2,
    // Half of the time went into importing the same modules for every file. Tests that mock a module reset them.
    isolate: false,
    coverage: {
      provider: 'v8',
      include: ['src/**'],
      reporter: ['text'],
      thresholds: { lines: 95, branches: 95 },
    },
  },
}));
