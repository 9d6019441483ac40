import { RebuildInputError } from '../quantities/index.js';

/** Refuses blocks that must be built and may not be taken. */
export function guardMustBuild(mustBuild: readonly string[], reserved: readonly string[]): void {
  mustBuild.forEach((name, i) => {
    if (!reserved.includes(name)) return;
    throw new RebuildInputError({
      parameter: `options.mustBuild[${i}]`,
      value: name,
      expected: 'a block that is not reserved',
      problem: 'is reserved, so no plan may take it',
      hint: 'Name it in only one of the two.',
    });
  });
}
