import { RebuildInputError } from '../quantities/index.js';
import type { Shed } from '../shed/index.js';

/** Refuses blocks that must be built and may not be taken: kept back here or in the shed, or built in already. */
export function guardMustBuild(
  { blocks = [] }: Shed,
  mustBuild: readonly string[],
  reserved: readonly string[],
): void {
  mustBuild.forEach((name, i) => {
    const block = blocks.find((each) => each.name === name);
    const { builtInto, reserved: forWhom } = block ?? {};
    const refuse = (expected: string, problem: string, hint: string) => {
      const parameter = `options.mustBuild[${i}]`;
      throw new RebuildInputError({ parameter, value: name, expected, problem, hint });
    };
    if (reserved.includes(name)) {
      refuse(
        'a block that is not reserved',
        'is reserved, so no plan may take it',
        'Name it in only one of the two.',
      );
    }
    if (forWhom !== undefined) {
      refuse(
        'a block that is not reserved',
        `is reserved in the shed (${forWhom}), so no plan may take it`,
        'Leave out "reserved" in the shed first.',
      );
    }
    if (builtInto !== undefined) {
      refuse(
        'a block that is not built in',
        `is built into ${builtInto} already, so no plan may take it`,
        'Leave out "builtInto" in the shed first.',
      );
    }
  });
}
