import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { distFile } from './built.js';
import type { Section } from './report.js';

const ENTRIES: readonly (readonly [name: string, source: string])[] = [
  ['crankwright  oilClearance', "export { oilClearance } from 'crankwright-dist'"],
  ['crankwright  inch', "export { inch } from 'crankwright-dist'"],
  ['crankwright  inch, mm, valueIn', "export { inch, mm, valueIn } from 'crankwright-dist'"],
  ['crankwright  convert', "export { convert } from 'crankwright-dist'"],
  ['crankwright  everything in the core', "export * from 'crankwright-dist'"],
  ['convert 8  convert', "export { convert } from 'convert'"],
  ['convert-units 2', "export { default } from 'convert-units-2'"],
  ['js-quantities', "export { default } from 'js-quantities'"],
  ['mathjs  unit', "export { unit } from 'mathjs'"],
];

/** Bundles one import at a time, minifies and gzips it. */
export async function weighBundles(): Promise<Section> {
  const sizes = await Promise.all(
    ENTRIES.map(async ([name, source]) => ({ name, bytes: await bundledSize(source) })),
  );
  const kB = (bytes: number) => (bytes / 1000).toFixed(2);
  const [oilClearance] = sizes;
  return {
    title: 'bundle of one import, minified and gzipped',
    rows: [['', 'kB'], ...sizes.map(({ name, bytes }) => [name, kB(bytes)])],
    targets: [
      {
        name: 'oilClearance',
        measured: (oilClearance?.bytes ?? Number.NaN) / 1000,
        atMost: 1.2,
        unit: 'kB',
      },
    ],
  };
}

async function bundledSize(source: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: source, resolveDir: fileURLToPath(new URL('.', import.meta.url)) },
    alias: { 'crankwright-dist': fileURLToPath(distFile) },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    write: false,
    logLevel: 'error',
  });
  return outputFiles.reduce(
    (bytes, file) => bytes + gzipSync(file.contents, { level: 9 }).length,
    0,
  );
}
