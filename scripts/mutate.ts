// Breaks one line of a room after the other and sees whether a test of that room fails:
//
//     npm run mutate -- judging
//     npm run mutate -- bearings/film
//
// A mutant is a line so broken. The score is the share of mutants that a test kills, by failing
// or by never coming to an end. Mutants that no test reaches count as survivors.
import { Stryker } from '@stryker-mutator/core';

const [place, ...rest] = process.argv.slice(2);
if (place === undefined || rest.length > 0) {
  throw new Error('Name one room, or a part of one: npm run mutate -- judging');
}
const [room] = place.split('/');
const mutate = place.endsWith('.ts') ? `src/${place}` : `src/${place}/**/*.ts`;
// Only the tests of the room and the published checks run; the settings of vitest read this.
process.env['MUTATED_ROOM'] = room;

await new Stryker({
  // Coefficients that a script computed hold nothing to break, and cards are tested by tests/cards.
  mutate: [mutate, '!src/**/*-data.ts', '!src/**/{*.cards,card-letters}.ts'],
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutate.config.ts', related: false },
  plugins: ['@stryker-mutator/vitest-runner', './scripts/leave-messages-alone.mjs'],
  // Strings are mutated, because words such as 'above' are what a caller decides by. The texts of
  // a refusal are for people, and no test should hold their wording: see that file.
  ignorers: ['messages'],
  coverageAnalysis: 'perTest',
  // A line that runs only while a module loads would want every test anew: left out, and shown as
  // ignored.
  ignoreStatic: true,
  concurrency: 2,
  // Generous, so that a busy machine does not pass for an endless loop.
  timeoutMS: 15_000,
  thresholds: { high: 95, low: 90, break: 90 },
  reporters: ['progress-append-only', 'clear-text', 'html', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: 'coverage/mutation.html' },
  jsonReporter: { fileName: 'coverage/mutation.json' },
  tempDirName: '.stryker-tmp',
  allowConsoleColors: false,
}).runMutationTest();
