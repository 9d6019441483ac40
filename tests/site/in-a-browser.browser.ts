import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { root } from '../support/repo.js';
import { visit } from './browser.js';

/** The code blocks of the guide in a language. */
const blocks = (language: string): readonly string[] => {
  const guide = readFileSync(join(root, 'docs', 'in-a-browser.md'), 'utf8');
  const all = guide.matchAll(new RegExp(`^\`\`\`${language}.*\\n([\\s\\S]*?)^\`\`\`$`, 'gm'));
  return [...all].map(([, code = '']) => code);
};

it('runs the code of the guide, worker and policy included', async () => {
  const [worker = '', script = ''] = blocks('js');
  const [html = ''] = blocks('html');
  const folder = mkdtempSync(join(tmpdir(), 'crankwright-'));
  const solver = join(root, 'node_modules', 'highs', 'build');
  for (const file of ['highs.mjs', 'highs.wasm']) cpSync(join(solver, file), join(folder, file));
  await build({
    stdin: { contents: worker, resolveDir: root },
    outfile: join(folder, 'planner.js'),
    bundle: true,
    format: 'esm',
    external: ['./highs.mjs'],
    logLevel: 'error',
  });
  writeFileSync(join(folder, 'page.js'), script);
  writeFileSync(join(folder, 'index.html'), html);
  const shed = readFileSync(join(root, 'examples', 'untidy-shed.json'), 'utf8');
  writeFileSync(join(folder, 'shed.json'), shed);

  const { page, base, faults, end } = await visit(folder);
  await page.goto(`${base}index.html`);
  const wanted = planReport(await planBuilds(readShed(shed)));
  await page.waitForSelector('#plan:has-text("BEFORE YOU ACT")');
  expect(await page.textContent('#plan')).toBe(wanted);
  expect(faults).toEqual([]);
  await end();
});
