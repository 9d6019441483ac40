import { describe, expect, it } from 'vitest';
import { markdownBlocks, sourceBlocks } from '../support/blocks.js';
import { clashes, exportedNames, preludeOf, typeErrors } from '../support/check-blocks.js';
import { importEntries } from '../support/repo.js';
import { failuresOf } from '../support/run-block.js';

const { blocks: examples, problems } = sourceBlocks();
const blocks = [...markdownBlocks(), ...examples];
const names = exportedNames();
const modules = await importEntries();

describe('code in the documentation', () => {
  it('is there, in a block', () => {
    expect(examples.length).toBeGreaterThan(0);
    expect(problems).toEqual([]);
  });

  it('can name every export without saying from which entry point', () => {
    expect(clashes(names)).toEqual([]);
  });

  it('compiles', () => {
    const typed = blocks.filter(({ language }) => language === 'ts');
    expect(typeErrors(typed, names)).toEqual([]);
  });

  it.each(blocks.map((block) => ({ block, at: `${block.file}:${block.line}` })))(
    'does what its comments say: $at',
    async ({ block }) => {
      expect(await failuresOf(block, modules, preludeOf(block, names))).toEqual([]);
    },
  );
});
