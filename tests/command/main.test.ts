import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { root } from '../support/repo.js';

/** Starts the command itself as a process of its own. */
const start = (...argv: readonly string[]) =>
  spawn(process.execPath, ['--import', 'tsx', 'src/command/main.ts', ...argv], { cwd: root });

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
    const child = start('report');
    child.stdin.end('{ "version": 1, "engine": "pump set", "units": "inch" }');
    const { code, out, err } = await end(child);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')[0]).toBe('INSPECTION: pump set');
  });

  it('complains on standard error', async () => {
    const { code, out, err } = await end(start('pln'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('did you mean "plan"?');
  });

  it('knows the version of the package', async () => {
    const { version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'));
    expect(await end(start('--version'))).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });

  it('ends in peace when its reader has seen enough', async () => {
    const child = start('report', 'examples/pump-set-inch.json');
    child.stdout.destroy();
    const [err, [code]] = await Promise.all([text(child.stderr), once(child, 'exit')]);
    expect([code, err]).toEqual([0, '']);
  });
});
