import { BaseSequencer, type TestSpecification } from 'vitest/node';
import settings from './vitest.config.js';

// For `npm run mutate`, which names the room: its own tests, then the published checks. Types are
// left out, since what does not compile is no mutant.
const room = process.env['MUTATED_ROOM'];

const ours = settings({ command: 'serve', mode: 'test' });

/** A mutant is most likely killed by a test of its own room, and the first that kills it is the last. */
class RoomFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]) {
    const isOurs = ({ moduleId }: TestSpecification) => moduleId.includes(`/tests/${room}/`);
    return [...files].sort((a, b) => Number(isOurs(b)) - Number(isOurs(a)));
  }
}

export default {
  ...ours,
  test: {
    ...ours.test,
    include: [`tests/${room}/**/*.test.ts`, 'tests/published/**/*.test.ts'],
    typecheck: { enabled: false },
    setupFiles: ['scripts/mutate-setup.ts'],
    sequence: { sequencer: RoomFirst },
    // One thread loads the library once for all files: three times as fast.
    isolate: false,
  },
};
