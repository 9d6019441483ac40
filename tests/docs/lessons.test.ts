import { readdirSync, readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../docs/lessons/', import.meta.url);
const lessons = readdirSync(folder).map((file) => ({
  file,
  text: readFileSync(new URL(file, folder), 'utf8'),
}));
const lesson = (file: string) => lessons.find((one) => one.file === file)?.text ?? '';

const guides = readdirSync(new URL('../', folder))
  .filter((file) => file.endsWith('.md'))
  .map((file) => ({ file, text: readFileSync(new URL(`../${file}`, folder), 'utf8') }));

describe('a lesson or a guide', () => {
  it('reads the examples where whoever installed the package has them', () => {
    const paths = [...lessons, ...guides].flatMap(({ text }) =>
      [...text.matchAll(/```[\s\S]*?```/g)].flatMap(([block]) =>
        [...block.matchAll(/[\w/]*examples\//g)].map(([path]) => path),
      ),
    );
    expect(paths.length).toBeGreaterThan(14);
    for (const path of paths) expect(path).toBe('node_modules/crankwright/examples/');
  });
});

describe('a lesson', () => {
  it.each(lessons)('tells how to run its code, as a module: $file', ({ text }) => {
    expect(text).toMatch(/^```ts$/m);
    expect(text.replaceAll(/\s+/g, ' ')).toMatch(
      /save it as `lesson\.mjs` in the folder .*?, and type `node lesson\.mjs`/,
    );
  });

  it.each(lessons)(
    'has code that Node takes without the help of another program: $file',
    ({ text }) => {
      const blocks = [...text.matchAll(/^```ts\n([\s\S]*?)^```$/gm)].map(([, code = '']) => code);
      expect(blocks.length).toBeGreaterThan(1);
      // A type would be an error in JavaScript.
      for (const code of blocks) {
        expect(() => transformSync(code, { loader: 'js', format: 'esm' })).not.toThrow();
      }
    },
  );

  it.each(lessons)('tells how to keep its picture, by the name it has: $file', ({ text }) => {
    const [, name] = /writeFileSync\('picture\.svg', (\w+)\)/.exec(text) ?? [];
    expect(text).toContain(`const ${name} = `);
  });

  it('on a crankshaft says from which size the plan counts what is short', () => {
    const text = lesson('one-crankshaft.md').replaceAll(/\s+/g, ' ');
    const [, short] = /\(clean at 1\.6212 in, (\S+) in short\)/.exec(text) ?? [];
    expect(Number(short)).toBeCloseTo(1.625 - 1.6212, 10);
    expect(text).toContain(`1.6250 in less 1.6212 in is the ${short} in that it calls short`);
  });
});
