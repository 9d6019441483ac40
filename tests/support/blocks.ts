import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { filesUnder, fromRoot, root } from './repo.js';

/** A code block of the documentation. */
export interface Block {
  /** File it stands in, below the root. */
  readonly file: string;
  /** Line of that file on which its first line of code stands, from 1. */
  readonly line: number;
  /** `ts` is checked and run, `js` only run. */
  readonly language: 'ts' | 'js';
  /** Marked `no-run`: it is only type-checked. */
  readonly noRun: boolean;
  /** Whether every export is in scope without an import, as in a TSDoc example. */
  readonly inScope: boolean;
  /** The code itself, its margin taken off. */
  readonly code: string;
}

/** Something wrong with a block before it is even read. */
export interface BlockProblem {
  /** `file:line`. */
  readonly at: string;
  readonly problem: string;
}

const LANGUAGES: Readonly<Record<string, 'ts' | 'js'>> = {
  ts: 'ts',
  typescript: 'ts',
  js: 'js',
  javascript: 'js',
  cjs: 'js',
};

/** The fenced blocks in lines of Markdown. `firstLine` is the number of the first of them. */
export function fencedBlocks(
  lines: readonly string[],
  { file, firstLine, inScope }: { file: string; firstLine: number; inScope: boolean },
): readonly Block[] {
  const blocks: Block[] = [];
  let open:
    | { fence: string; margin: number; info: string; line: number; code: string[] }
    | undefined;
  lines.forEach((text, index) => {
    const fence = /^(\s*)(`{3,}|~{3,})\s*(.*)$/.exec(text);
    if (!open) {
      if (!fence) return;
      const [, margin = '', mark = '', info = ''] = fence;
      open = { fence: mark, margin: margin.length, info, line: firstLine + index + 1, code: [] };
    } else if (fence && fence[3] === '' && fence[2]?.startsWith(open.fence)) {
      const [name = '', ...flags] = open.info.trim().split(/\s+/);
      const language = LANGUAGES[name.toLowerCase()];
      const { line, code } = open;
      open = undefined;
      if (!language) return;
      blocks.push({
        file,
        line,
        language,
        noRun: flags.includes('no-run'),
        inScope,
        code: code.join('\n'),
      });
    } else {
      const margin = /^\s*/.exec(text)?.[0].length ?? 0;
      open.code.push(text.slice(Math.min(margin, open.margin)));
    }
  });
  if (open) throw new Error(`${file}:${open.line - 1}: this fence is never closed`);
  return blocks;
}

/** The blocks of README.md and of the guides in docs/, without the generated API pages. */
export function markdownBlocks(): readonly Block[] {
  const guides = filesUnder('docs', '.md').filter((path) => !path.startsWith(`${root}/docs/api/`));
  const readme = ts.sys.fileExists(`${root}/README.md`) ? [`${root}/README.md`] : [];
  return [...readme, ...guides].flatMap((path) =>
    fencedBlocks(readFileSync(path, 'utf8').split(/\r?\n/), {
      file: fromRoot(path),
      firstLine: 1,
      inScope: false,
    }),
  );
}

/** The blocks of every `@example` in a source file, and the examples that have none. */
export function exampleBlocks(
  file: string,
  text: string,
): { readonly blocks: readonly Block[]; readonly problems: readonly BlockProblem[] } {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const blocks: Block[] = [];
  const problems: BlockProblem[] = [];
  const seen = new Set<number>();
  const visit = (node: ts.Node): void => {
    for (const tag of ts.getJSDocTags(node)) {
      if (tag.tagName.text !== 'example' || seen.has(tag.pos)) continue;
      seen.add(tag.pos);
      const firstLine = source.getLineAndCharacterOfPosition(tag.pos).line + 1;
      const lines = text.slice(tag.pos, tag.end).split(/\r?\n/).map(withoutStar);
      const found = fencedBlocks(lines, { file, firstLine, inScope: true });
      blocks.push(...found);
      if (found.length > 0) continue;
      problems.push({ at: `${file}:${firstLine}`, problem: '@example has no ```ts block' });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return { blocks, problems };
}

/** The examples of every file in src/. */
export function sourceBlocks(): {
  readonly blocks: readonly Block[];
  readonly problems: readonly BlockProblem[];
} {
  const all = filesUnder('src', '.ts').map((path) =>
    exampleBlocks(fromRoot(path), readFileSync(path, 'utf8')),
  );
  return {
    blocks: all.flatMap(({ blocks }) => blocks),
    problems: all.flatMap(({ problems }) => problems),
  };
}

const withoutStar = (line: string): string => line.replace(/^\s*\* ?/, '');
