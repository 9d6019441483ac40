import { describe, expect, it } from 'vitest';
import { type Block, exampleBlocks, fencedBlocks } from '../support/blocks.js';
import { clashes, type ScopedName, typeErrors } from '../support/check-blocks.js';
import { failuresOf } from '../support/run-block.js';

const TOOLS = 'tools';
class ToolError extends RangeError {}
const modules = new Map([
  [
    TOOLS,
    {
      twice: (x: number) => 2 * x,
      refuse: () => {
        throw new ToolError('part: is not a part.\n  Look again.');
      },
    },
  ],
]);
const prelude = `import { twice, refuse } from '${TOOLS}';\n`;

const blockOf = (code: string, more: Partial<Block> = {}): Block => ({
  file: 'guide.md',
  line: 10,
  language: 'ts',
  noRun: false,
  inScope: true,
  code,
  ...more,
});
const run = (code: string, more: Partial<Block> = {}) =>
  failuresOf(blockOf(code, more), modules, prelude);

describe('a block passes', () => {
  it.each([
    ['a literal on the line', 'twice(2); // 4'],
    ['a literal below', "[twice(2), 'a'];\n// [4, 'a']"],
    [
      'a literal over several lines',
      '({ a: twice(2), b: [1] });\n// {\n//   a: 4,\n//   b: [1],\n// }',
    ],
    ['no semicolon', 'twice(2) // 4\ntwice(3) // 6'],
    ['undefined', 'undefined; // undefined'],
    ['a negative number', '-twice(2); // -4'],
    ['a variable', 'const x = twice(2); // 4\nx; // 4'],
    ['await', 'await Promise.resolve(twice(2)); // 4'],
    ['a literal in a loop', 'for (const x of [1, 1]) {\n  twice(x); // 2\n}'],
    ['prose before the code', '// Twice is two times.\ntwice(2); // 4\n// Again:\ntwice(3); // 6'],
    ['text that is printed', "console.log('a', twice(2)); // a 4"],
    ['lines that are printed', "console.log('a\\nb');\n// a\n// b"],
    ['a loop that prints', 'for (const x of [1, 2]) console.log(x);\n// 1\n// 2'],
    ['printing, then prose', 'console.log(1); // 1\n// Now two:\nconsole.log(2); // 2'],
    ['an error', 'refuse(); // throws ToolError'],
    ['an error by its parent class', 'const x = refuse(); // throws RangeError'],
    ['a message', 'refuse();\n// throws ToolError: part: is not a part. Look again.'],
    [
      'a message on two lines',
      'refuse(); // throws ToolError: part: is\n// not a part. Look again.',
    ],
    ['only definitions', 'const x = twice(2);\nfunction f() { return x; }'],
  ])('with %s', async (_, code) => {
    expect(await run(code)).toEqual([]);
  });

  it('when it is not to be run', async () => {
    expect(await run('refuse();', { noRun: true })).toEqual([]);
  });

  it('in CommonJS', async () => {
    const code = `const { twice } = require('${TOOLS}');\ntwice(2); // 4`;
    expect(await failuresOf(blockOf(code, { language: 'js' }), modules)).toEqual([]);
  });

  it('with a library that an entry point is made for', async () => {
    const code = "import units from 'convert-units';\ntypeof units; // 'function'";
    expect(await failuresOf(blockOf(code, { inScope: false }), modules)).toEqual([]);
  });

  it('with a module of Node', async () => {
    const code = "import { join } from 'node:path/posix';\njoin('a', 'b'); // 'a/b'";
    expect(await failuresOf(blockOf(code, { inScope: false }), modules)).toEqual([]);
  });

  it('that reads an example of the package as whoever installed it does', async () => {
    const code =
      "import { readFileSync } from 'node:fs';\n" +
      "readFileSync('node_modules/crankwright/examples/untidy-shed.json', 'utf8')[0]; // '{'";
    expect(await failuresOf(blockOf(code, { inScope: false }), modules)).toEqual([]);
  });
});

describe('a block fails', () => {
  it.each([
    [
      'a wrong literal',
      'twice(1); // 2\n\ntwice(2); // 5',
      'guide.md:12: gives 4, the comment says 5',
    ],
    [
      'a wrong field',
      '({ a: twice(2) }); // { a: 4, b: undefined }',
      'guide.md:10: gives { a: 4 }',
    ],
    ['a wrong literal on a variable', 'const x = twice(2); // 5', 'guide.md:10: gives 4'],
    ['a wrong literal below', 'twice(2);\n// 5', 'guide.md:11: gives 4, the comment says 5'],
    ['a number for text', "'4'; // 4", "guide.md:10: gives '4', the comment says 4"],
    ['the wrong zero', '-0; // 0', 'guide.md:10: gives -0, the comment says 0'],
    ['no expectation', 'twice(2);', 'guide.md:10: this block says nowhere'],
    ['prose behind an expression', 'twice(2); // about 4', '"about 4" is not a literal'],
    [
      'prose below an expression',
      'twice(2);\n// Now more:\ntwice(3); // 6',
      'guide.md:11: the comment',
    ],
    ['prose behind a variable', 'const x = twice(2); // so much', 'is not a literal'],
    ['a calculation for a literal', 'twice(2); // 2 * 2', 'is not a literal'],
    ['a call for a literal', 'twice(2); // twice(2)', 'is not a literal'],
    ['half a literal', 'twice(2); // [4', 'is not a literal'],
    [
      'wrong text printed',
      "console.log('a'); // b",
      "guide.md:10: prints 'a', the comment says 'b'",
    ],
    ['a line too few printed', "console.log('a\\nb'); // a", 'guide.md:10: prints'],
    ['a line too many claimed', "console.log('a');\n// a\n// b", 'guide.md:11: prints'],
    ['no error', 'twice(2); // throws ToolError', 'guide.md:10: does not throw'],
    ['another error', 'refuse(); // throws TypeError', 'guide.md:10: throws RangeError'],
    ['another message', 'refuse(); // throws ToolError: no', 'guide.md:10: throws "part: is not'],
    ['an error nobody speaks of', 'twice(2); // 4\nrefuse();', 'guide.md:10: the block throws'],
    [
      'code that never runs',
      'if (twice(1) > 2) {\n  twice(2); // 4\n}',
      'guide.md:11: the code before',
    ],
    ['an unknown module', "import { x } from 'elsewhere';\nx; // 1", 'not "elsewhere"'],
  ])('with %s', async (_, code, failure) => {
    const failures = await run(code);
    expect(failures).toHaveLength(1);
    expect(failures[0]).toContain(failure);
  });

  it('with a type error, at its line', () => {
    const inch: ScopedName = { name: 'inch', from: 'crankwright', isType: false };
    const plain = blockOf('const a: number = 1;\nconst b: string = a;', { inScope: false });
    const scoped = blockOf("inch(2);\n\ninch('2');");
    const explicit = blockOf("import { nothing } from 'crankwright';\nnothing;", {
      inScope: false,
    });
    const found = typeErrors([plain, scoped, explicit], [inch]);
    expect(found.map(({ at }) => at)).toEqual(['guide.md:11', 'guide.md:12', 'guide.md:10']);
    expect(found[0]?.problem).toContain("'number' is not assignable to type 'string'");
  });

  it('when a quantity is of the wrong dimension', () => {
    const names = ['newtonMetre', 'recommendedOilClearance', 'lbfFoot'].map((name) => ({
      name,
      from: 'crankwright',
      isType: false,
    }));
    expect(typeErrors([blockOf('recommendedOilClearance(newtonMetre(2));')], names)).toHaveLength(
      1,
    );
  });
});

describe('blocks are found', () => {
  const text = ['Text', '```ts', 'a; // 1', '```', '- item', '  ```ts no-run', '    b;', '  ```'];

  it('with their line, language, margin and marks', () => {
    const blocks = fencedBlocks([...text, '```sh', 'ls', '```', '~~~js', 'c;', '~~~'], {
      file: 'guide.md',
      firstLine: 1,
      inScope: false,
    });
    expect(blocks.map(({ line, language, noRun, code }) => [line, language, noRun, code])).toEqual([
      [3, 'ts', false, 'a; // 1'],
      [7, 'ts', true, '  b;'],
      [13, 'js', false, 'c;'],
    ]);
  });

  it('only if they are closed', () => {
    const options = { file: 'guide.md', firstLine: 1, inScope: false };
    expect(() => fencedBlocks(['```ts', 'a;'], options)).toThrow('guide.md:1');
  });

  it('in the examples of a source file', () => {
    const code = [
      '/**',
      ' * Doubles.',
      ' * @example',
      ' * ```ts',
      ' * twice(2); // 4',
      ' * ```',
      ' * @example Prose alone.',
      ' */',
      'export function twice(x: number) { return 2 * x; }',
    ];
    const { blocks, problems } = exampleBlocks('src/twice.ts', code.join('\n'));
    expect(blocks.map(({ line, code }) => [line, code])).toEqual([[5, 'twice(2); // 4']]);
    expect(problems).toEqual([{ at: 'src/twice.ts:7', problem: '@example has no ```ts block' }]);
  });

  it('and a name that stands for two things at two entry points is an error', () => {
    const names = ['a', 'b'].map((from) => ({ name: 'inch', from, isType: false }));
    expect(clashes([...names, { name: 'mm', from: 'a', isType: false }])).toEqual([
      'inch: a and b',
    ]);
  });
});
