import { type ChildProcessWithoutNullStreams, type StdioOptions, spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  closeSync,
  copyFileSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';

/** A package that holds nothing but the command, in a few files: seven processes need not translate it one by one. */
const project = mkdtempSync(join(tmpdir(), 'crankwright-'));
const command = join(project, 'crankwright.mjs');

beforeAll(async () => {
  copyFileSync(join(root, 'package.json'), join(project, 'package.json'));
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'));
  await build({
    entryPoints: [join(root, 'src/command/main.ts')],
    entryNames: 'crankwright',
    outdir: project,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    // What is loaded on first use stays in files of its own.
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
  });
});

afterAll(() => rmSync(project, { recursive: true }));

/** Starts the command itself as a process of its own, with these for its three streams. */
const start = (stdio: StdioOptions, ...argv: readonly string[]) =>
  spawn(process.execPath, [command, ...argv], { cwd: root, stdio });

/** The same with pipes. */
const piped = (...argv: readonly string[]) =>
  start('pipe', ...argv) as ChildProcessWithoutNullStreams;

/** Its exit code and what it wrote. */
async function end(child: ChildProcessWithoutNullStreams) {
  const [out, err, [code]] = await Promise.all([
    text(child.stdout),
    text(child.stderr),
    once(child, 'close'),
  ]);
  return { code, out, err };
}

describe('the command as a process', () => {
  it('reads what is piped into it, prints, and ends with its code', async () => {
    const child = piped('report');
    child.stdin.end('{ "version": 1, "engine": "pump set", "units": "inch" }');
    const { code, out, err } = await end(child);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')[0]).toBe('INSPECTION: pump set');
  });

  it('answers a pipe at its prompt until it is left, and ends with its code', async () => {
    const env = { ...process.env, HOME: project, XDG_STATE_HOME: project };
    for (const lines of ['1 in + 1 thou\n.exit\n2 in\n', '1 in + 1 thou\n']) {
      const child = spawn(process.execPath, [command, 'repl'], { cwd: root, stdio: 'pipe', env });
      child.stdin.end(lines);
      const { code, out } = await end(child);
      expect(code).toBe(0);
      expect(out).toContain('> 1.001 in\n');
      expect(out).not.toContain('2 in');
    }
  });

  it('complains on standard error', async () => {
    const { code, out, err } = await end(piped('pln'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('did you mean "plan"?');
  });

  it('knows the version of the package', async () => {
    const { version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
    expect(await end(piped('--version'))).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });

  const full = existsSync('/dev/full');

  it.skipIf(!full)('ends with a line and a code of its own on a full disk', async () => {
    const disk = openSync('/dev/full', 'w');
    const sheet = 'examples/pump-set-inch.json';
    const child = start(['ignore', disk, 'pipe'], 'report', sheet);
    const [err, [code]] = await Promise.all([text(child.stderr as Readable), once(child, 'exit')]);
    expect([code, err]).toEqual([
      4,
      'crankwright: cannot write the output: no space is left there\n',
    ]);
    closeSync(disk);
  });

  it.skipIf(process.platform === 'win32')('tells of a report that is cut off', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'crankwright-'));
    const path = join(folder, 'report.txt');
    // A file of at most some kilobytes takes the beginning of the report, as a disk does that fills up.
    const line = `ulimit -f 4; exec "${process.execPath}" "${command}" report examples/pump-set-inch.json > "${path}"`;
    const child = spawn('sh', ['-c', line], { cwd: root });
    const { code, err } = await end(child);
    expect([code, err]).toEqual([
      4,
      'crankwright: cannot write the output: the file would be too large\n',
    ]);
    expect(statSync(path).size).toBeGreaterThan(0);
    rmSync(folder, { recursive: true });
  });

  it.skipIf(!full)('keeps its code where there is nowhere to complain to', async () => {
    const disk = openSync('/dev/full', 'w');
    const [code] = await once(start(['ignore', 'ignore', disk], 'pln'), 'exit');
    expect(code).toBe(2);
    closeSync(disk);
  });

  it('ends in peace when its reader has seen enough', async () => {
    const child = piped('report', 'examples/pump-set-inch.json');
    child.stdout.destroy();
    const [err, [code]] = await Promise.all([text(child.stderr), once(child, 'exit')]);
    expect([code, err]).toEqual([0, '']);
  });
});
