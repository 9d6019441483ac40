import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Metafile, Plugin } from 'esbuild';

/** Where a package says its licence that ships no file of it. */
const SAID_IN: Readonly<Record<string, (read: (file: string) => string) => string>> = {
  seedrandom: (read) => read('README.md').replace(/^[\s\S]*?LICENSE \(MIT\)\n-+\n+/, ''),
  // It names the licence and its author only, so the words are those of ours, which is the same.
  'javascript-natural-sort': (read) => {
    const [header = ''] = /^\/\*[\s\S]*?\*\//.exec(read('naturalSort.js')) ?? [];
    const words = readFileSync('LICENSE', 'utf8');
    return `${header}\n\n${words.slice(words.indexOf('Permission is hereby granted'))}`;
  },
};

/** A file that says under which terms a package may be passed on. */
const IS_LICENCE = /^(?:licen[cs]e|copying|notice)(?:[.-].*)?$/i;

/** The folder of the package that a bundled file is of; undefined for files of ours. */
const packageOf = (file: string): string | undefined =>
  /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];

/** The folders of all packages that stand in the output of a build. */
export function packagesIn({ outputs }: Metafile): ReadonlySet<string> {
  const files = Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) =>
      bytesInOutput > 0 ? [file] : [],
    ),
  );
  return new Set(files.flatMap((file) => packageOf(file) ?? []));
}

/** Name, version and licence of a package, with the full text. Throws where there is none. */
export function licenceOf(folder: string): string {
  const read = (file: string) => readFileSync(join(folder, file), 'utf8');
  const { name, version, license } = JSON.parse(read('package.json')) as Readonly<
    Record<'name' | 'version' | 'license', string>
  >;
  const files = readdirSync(folder).filter((file) => IS_LICENCE.test(file));
  const texts = files.length > 0 ? files.sort().map(read) : [SAID_IN[name]?.(read) ?? ''];
  const text = texts.join('\n\n').trim();
  if (text === '') throw new Error(`${name} is bundled, and has no text of its licence.`);
  return `${name} ${version} (${license})\n\n${text.replaceAll('\r\n', '\n')}\n`;
}

/** All that any build has bundled so far. */
const bundled = new Set<string>();

/** Writes the licences of all packages that were bundled beside what they were bundled into. */
export const licences: Plugin = {
  name: 'licences',
  setup(build) {
    build.initialOptions.metafile = true;
    build.onEnd(({ metafile }) => {
      if (!metafile) return;
      for (const folder of packagesIn(metafile)) bundled.add(folder);
      const file = 'dist/third-party-licences.txt';
      const rule = `\n${'-'.repeat(78)}\n\n`;
      const texts = [...bundled].map(licenceOf).sort();
      const head = 'These packages are part of the built files. Thanks to all who wrote them.\n';
      if (!existsSync(dirname(file))) mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, [head, ...texts].join(rule));
    });
  },
};

/** Imports the one file of mathjs where the code imports the package. */
export const oneFileOfMathjs: Plugin = {
  name: 'one file of mathjs',
  setup(build) {
    build.onResolve({ filter: /^mathjs$/ }, () => {
      const ending = build.initialOptions.outExtension?.['.js'] ?? '.js';
      return { path: `./bundled-mathjs${ending}`, external: true };
    });
  },
};

/** The files that `dist/crankwright.js` loads when they are asked for, by what the code imports. */
const PIECES: Readonly<Record<string, string>> = {
  './calc.js': './command-calc.js',
  './prompt/repl.js': './command-repl.js',
  './run-session.js': './command-session.js',
  './run-on-files.js': './command-files.js',
  './worksheet.js': './command-worksheet.js',
};

/** Leaves what the command loads only when it is asked for in files of their own. */
export const piecesOfCommand: Plugin = {
  name: 'pieces of the command',
  setup(build) {
    build.onResolve({ filter: /^\.\// }, ({ kind, path }) => {
      const piece = kind === 'dynamic-import' ? PIECES[path] : undefined;
      return piece === undefined ? undefined : { path: piece, external: true };
    });
  },
};
