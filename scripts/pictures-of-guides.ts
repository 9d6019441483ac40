import { readdirSync, readFileSync } from 'node:fs';
import * as cw from 'crankwright';
import * as planning from 'crankwright/planning';
import * as plots from 'crankwright/plots';
import * as shed from 'crankwright/shed';
import * as sheet from 'crankwright/sheet';
import ts from 'typescript';
import { installedFs } from './installed-fs.js';

const DOCS = new URL('../docs/', import.meta.url);
/** A block that makes `picture`, and the image that stands right behind it. */
const DRAWN =
  /```ts\n((?:(?!```)[\s\S])*?const picture = (?:(?!```)[\s\S])*)```\n+!\[[^\]]*\]\((?:\.\.\/)?pictures\/([\w-]+\.svg)\)/g;

const modules: Readonly<Record<string, unknown>> = {
  'node:fs': installedFs,
  crankwright: cw,
  'crankwright/planning': planning,
  'crankwright/plots': plots,
  'crankwright/shed': shed,
  'crankwright/sheet': sheet,
};

/** The guides that show pictures, as paths in the folder of the documents. */
export const guidesWithPictures = (): readonly string[] => [
  'pictures.md',
  ...readdirSync(new URL('lessons/', DOCS))
    .filter((name) => name.endsWith('.md'))
    .map((name) => `lessons/${name}`),
];

/**
 * The pictures of the guides and lessons, by file name. Each is what the block of code before it draws, so that a picture
 * cannot show other readings than the text beside it.
 */
export async function picturesOfGuides(): Promise<ReadonlyMap<string, string>> {
  const pictures = new Map<string, string>();
  for (const guide of guidesWithPictures()) {
    const text = readFileSync(new URL(guide, DOCS), 'utf8');
    for (const [, code = '', name = ''] of text.matchAll(DRAWN)) {
      if (pictures.has(name)) throw new Error(`${guide}: ${name} is drawn twice`);
      pictures.set(name, await pictureOf(code));
    }
  }
  return pictures;
}

type Block = (require: (name: string) => unknown, exports: { picture?: string }) => Promise<void>;
const AsyncFunction = (async () => {}).constructor as new (...args: string[]) => Block;

async function pictureOf(code: string): Promise<string> {
  const { outputText } = ts.transpileModule(`${code}\nexports.picture = picture;`, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const made: { picture?: string } = {};
  await new AsyncFunction('require', 'exports', outputText)((name) => modules[name], made);
  if (made.picture === undefined) throw new Error('a block of a guide draws nothing');
  return made.picture;
}
