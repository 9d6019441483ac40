import { createRequire } from 'node:module';
import { format, inspect, isDeepStrictEqual } from 'node:util';
import ts from 'typescript';
import { installedFs } from '../../scripts/installed-fs.js';
import type { Block } from './blocks.js';
import { type Expectation, type ReadBlock, readExpectations } from './expectations.js';
import type { ModuleValues } from './repo.js';

/** Libraries that an entry point is made to be used with. */
const SERVED = /^(?:convert-units|mathjs)(\/|$)/;

/** Runs a block and gives everything in which it is not what its comments say, with file and line. */
export async function failuresOf(
  block: Block,
  modules: ReadonlyMap<string, ModuleValues>,
  prelude = '',
): Promise<readonly string[]> {
  const at = (line: number) => `${block.file}:${block.line + line}`;
  if (block.noRun) return [];
  const read = readExpectations(block.code, block.language);
  const problems = read.problems.map(({ line, problem }) => `${at(line)}: ${problem}`);
  if (read.expectations.length + problems.length === 0 && !read.onlyDefines) {
    return [
      `${at(0)}: this block says nowhere what comes out of it; mark it no-run if nothing does`,
    ];
  }
  const recorder = new Recorder(read.expectations);
  try {
    await execute(prelude + read.code, block.language, recorder, modules);
    recorder.finish();
  } catch (error) {
    recorder.fail(0, `the block throws ${showError(error)}`);
  }
  return [...problems, ...recorder.failures.map(({ line, failure }) => `${at(line)}: ${failure}`)];
}

/** Takes what the code of a block reports and compares it with the comments. */
class Recorder {
  readonly failures: { readonly line: number; readonly failure: string }[] = [];
  readonly #expectations: ReadBlock['expectations'];
  readonly #reached = new Set<number>();
  readonly #printed: string[][] = [[]];

  constructor(expectations: ReadBlock['expectations']) {
    this.#expectations = expectations;
  }

  fail(line: number, failure: string): void {
    this.failures.push({ line, failure });
  }

  value(index: number, value: unknown): unknown {
    const { kind, line, ...expected } = this.#reach(index);
    if (kind === 'value' && 'value' in expected && !isDeepStrictEqual(value, expected.value)) {
      this.fail(line, `gives ${show(value)}, the comment says ${show(expected.value)}`);
    }
    return value;
  }

  log(...values: readonly unknown[]): void {
    this.#printed.at(-1)?.push(format(...values));
  }

  listen(index: number): void {
    this.#reach(index);
    this.#printed.push([]);
  }

  heard(index: number): void {
    const expectation = this.#reach(index);
    const text = trimLines(this.#printed.pop()?.join('\n') ?? '');
    if (expectation.kind !== 'prints' || expectation.texts.includes(text)) return;
    const wanted = expectation.texts.at(-1) ?? '';
    this.fail(expectation.line, `prints ${show(text)}, the comment says ${show(wanted)}`);
  }

  passed(index: number): void {
    const expectation = this.#reach(index);
    if (expectation.kind !== 'throws') return;
    this.fail(expectation.line, `does not throw, the comment says it throws ${expectation.error}`);
  }

  caught(index: number, error: unknown): void {
    const expectation = this.#reach(index);
    if (expectation.kind !== 'throws') return;
    const { line, error: name, messages } = expectation;
    if (!classNames(error).includes(name)) {
      this.fail(line, `throws ${showError(error)}, the comment says ${name}`);
    }
    const message = squash(error instanceof Error ? error.message : '');
    if (!messages || messages.some((wanted) => squash(wanted) === message)) return;
    this.fail(line, `throws "${message}", the comment says "${messages.at(-1)}"`);
  }

  /** A comment on code that never ran was not checked. */
  finish(): void {
    this.#expectations.forEach(({ line }, index) => {
      if (!this.#reached.has(index)) this.fail(line, 'the code before this comment never ran');
    });
  }

  #reach(index: number): Expectation {
    const expectation = this.#expectations[index];
    if (!expectation) throw new Error(`There is no expectation ${index}.`);
    this.#reached.add(index);
    return expectation;
  }
}

type Parameters = readonly [
  docs: Recorder,
  console: Pick<Console, 'log'>,
  require: (name: string) => unknown,
  module: { exports: unknown },
  exports: unknown,
];
const AsyncFunction = (async () => {}).constructor as new (
  ...parts: readonly string[]
) => (...values: Parameters) => Promise<void>;

async function execute(
  code: string,
  language: 'ts' | 'js',
  recorder: Recorder,
  modules: ReadonlyMap<string, ModuleValues>,
): Promise<void> {
  const { outputText } = ts.transpileModule(code, {
    fileName: `block.${language}`,
    compilerOptions: {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
      esModuleInterop: true,
      allowJs: true,
    },
  });
  const nodeRequire = createRequire(import.meta.url);
  const module = { exports: {} };
  const run = new AsyncFunction(
    '__docs',
    'console',
    'require',
    'module',
    'exports',
    `'use strict';\n${outputText}`,
  );
  const load = (name: string): unknown => {
    const found = modules.get(name);
    if (found) return found;
    if (name === 'node:fs') return installedFs;
    if (name.startsWith('node:') || SERVED.test(name)) return nodeRequire(name);
    throw new Error(`A block may import the entry points and node: modules, not "${name}".`);
  };
  const log = (...values: readonly unknown[]) => recorder.log(...values);
  await run(recorder, { log }, load, module, module.exports);
}

function classNames(error: unknown): readonly string[] {
  const names: string[] = [];
  for (let at = error; at instanceof Error; at = Object.getPrototypeOf(at)) {
    names.push(at.constructor.name);
  }
  return names;
}

const show = (value: unknown): string => inspect(value, { depth: 8, breakLength: 200 });
const squash = (text: string): string => text.replace(/\s+/g, ' ').trim();
const trimLines = (text: string): string => text.replace(/[ \t]+$/gm, '').replace(/\n+$/, '');
const showError = (error: unknown): string =>
  error instanceof Error ? `${error.name}: ${error.message}` : show(error);
