import { RebuildInputError } from '../quantities/index.js';
import type { Part, Shed } from '../shed/index.js';

/** Refuses blocks that must be built and that no plan may take: kept back by an option or in the shed. */
export function guardMustBuild(
  { blocks = [] }: Shed,
  mustBuild: readonly string[],
  reserved: readonly string[],
): void {
  mustBuild.forEach((name, i) => {
    const block = blocks.find((each) => each.name === name);
    const because = reserved.includes(name) ? BY_OPTION : keptBack(block);
    if (because === undefined) return;
    const [problem, hint] = because;
    throw new RebuildInputError({
      parameter: `options.mustBuild[${i}]`,
      value: name,
      expected: 'a block that is not reserved',
      problem,
      hint,
    });
  });
}

type Because = readonly [problem: string, hint: string];

const BY_OPTION: Because = [
  'is reserved, so no plan may take it',
  'Name it in only one of the two.',
];

/** Why the shed keeps a block back, if it does. */
function keptBack(block?: Part): Because | undefined {
  if (block?.builtInto !== undefined) {
    return [
      `is built into ${block.builtInto} already, as the shed says`,
      'Take "builtInto" out of the shed if it is free again.',
    ];
  }
  if (block?.reserved === undefined) return undefined;
  return [
    `is reserved in the shed (${block.reserved}), so no plan may take it`,
    'Take "reserved" out of the shed if it may be built.',
  ];
}
