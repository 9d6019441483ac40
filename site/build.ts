import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build, type Metafile } from 'esbuild';
import { cardNames } from './cards.js';
import { licencesOf } from './licences.js';
import { formulaIndex } from './pages/formula-index.js';
import { formulaPage } from './pages/formula-page.js';
import { partsPage } from './pages/parts-page.js';
import { type Reference, writeReference } from './reference/write-reference.js';

const here = dirname(fileURLToPath(import.meta.url));
const out = join(here, '..', 'docs', 'api');

/** Where the guides to the files stand on the site. */
const GUIDES = {
  sheet: 'documents/The_inspection_sheet.html',
  shed: 'documents/The_shed_file.html',
};

/** The most that a formula page may load before it computes [gzipped bytes]. */
const MOST = 250_000;

/** Writes the pages that compute, which link to what the reference says of their functions. */
function writePages(reference: Reference): void {
  mkdirSync(join(out, 'formulas'), { recursive: true });
  mkdirSync(join(out, 'examples'), { recursive: true });
  mkdirSync(join(out, 'pages'), { recursive: true });
  for (const name of cardNames) {
    writeFileSync(join(out, 'formulas', `${name}.html`), formulaPage(name, reference(name)));
  }
  writeFileSync(join(out, 'formulas', 'index.html'), formulaIndex());
  writeFileSync(join(out, 'your-parts.html'), partsPage(GUIDES));
  const examples = ['pump-set-inch.json', 'pump-set-shed.json', 'pump-set-shed-readings.csv'];
  for (const file of examples) {
    cpSync(join(here, '..', 'examples', file), join(out, 'examples', file));
  }
  for (const file of ['style.css', 'reference.css', 'icon.svg'])
    cpSync(join(here, file), join(out, 'pages', file));
}

/** Bundles the scripts of the pages. What several pages use stands in files of its own, and is loaded once. */
async function bundle(entries: readonly string[]): Promise<Metafile['outputs']> {
  const { metafile } = await build({
    entryPoints: entries.map((entry) => join(here, 'client', `${entry}.ts`)),
    outdir: join(out, 'pages'),
    absWorkingDir: join(here, '..'),
    bundle: true,
    splitting: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    legalComments: 'none',
    metafile: true,
    logLevel: 'warning',
  });
  return metafile.outputs;
}

/** The solver stands beside the worker that loads it, with its licence. */
function copySolver(): void {
  const built = dirname(createRequire(import.meta.url).resolve('highs/runtime'));
  for (const file of ['highs.mjs', 'highs.wasm'])
    cpSync(join(built, file), join(out, 'pages', file));
  cpSync(join(built, '..', 'LICENSE'), join(out, 'pages', 'highs.LICENSE.txt'));
}

/** Prints what each page loads, and fails if a formula page loads too much. */
function tellSizes(outputs: Metafile['outputs']): void {
  const weight = (file: string) => gzipSync(readFileSync(join(here, '..', file))).length;
  const loaded = (file: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(file)) return seen;
    seen.add(file);
    for (const { path, kind, external } of outputs[file]?.imports ?? []) {
      if (kind === 'import-statement' && !external) loaded(path, seen);
    }
    return seen;
  };
  const style = gzipSync(readFileSync(join(out, 'pages', 'style.css'))).length;
  for (const [file, { entryPoint }] of Object.entries(outputs)) {
    if (!entryPoint?.startsWith('site/client/')) continue;
    const script = [...loaded(file)].reduce((sum, each) => sum + weight(each), 0);
    const heaviest = entryPoint.endsWith('/formula.ts') ? heaviestPage() : 0;
    const all = script + style + heaviest;
    console.log(`${entryPoint}: ${(all / 1000).toFixed(0)} kB gzipped`);
    if (heaviest > 0 && all > MOST) {
      throw new Error(`a formula page loads ${all} bytes; it may load ${MOST}`);
    }
  }
}

/** The gzipped size of the largest formula page. */
function heaviestPage(): number {
  const pages = readdirSync(join(out, 'formulas'));
  const sizes = pages.map((file) => gzipSync(readFileSync(join(out, 'formulas', file))).length);
  return sizes.reduce((a, b) => Math.max(a, b));
}

// `npm run docs -- --pages` writes the pages that compute alone, which takes a third of the time.
writePages(process.argv.includes('--pages') ? () => undefined : await writeReference(out));
// The worker shares nothing: what it needs would swell what the pages load.
const scripts = await bundle(['formula', 'formula-index', 'parts', 'search']);
const workers = await bundle(['planner']);
copySolver();
const bundled = { ...scripts, ...workers };
writeFileSync(join(out, 'pages', 'licences.txt'), licencesOf(bundled, join(here, '..')));
tellSizes(bundled);
