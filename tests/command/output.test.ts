import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { toFile, toStream, UnwritableOutput } from '../../src/command/output.js';

/** A stream that takes nothing, for the reason given. */
const broken = (code: string) =>
  new Writable({
    write: (_chunk, _encoding, done) => done(Object.assign(new Error(`${code}: so`), { code })),
  });

describe('output to a stream', () => {
  it('is there when the promise is kept', async () => {
    let written = '';
    const slow = new Writable({
      write: (chunk, _encoding, done) => {
        setImmediate(() => {
          written += chunk;
          done();
        });
      },
    });
    await toStream(slow)('a page\n');
    expect(written).toBe('a page\n');
  });

  it.each([
    ['ENOSPC', 'no space is left there'],
    ['EFBIG', 'the file would be too large'],
    ['EIO', 'EIO: so'],
  ])('that fails with %s says why', async (code, reason) => {
    const failure = toStream(broken(code))('a page');
    await expect(failure).rejects.toBeInstanceOf(UnwritableOutput);
    await expect(failure).rejects.toThrow(reason);
  });

  it('whose reader has seen enough ends in peace', async () => {
    await expect(toStream(broken('EPIPE'))('a page')).resolves.toBeUndefined();
  });
});

describe('output to a file', () => {
  it('is written to its end, however long', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'crankwright-'));
    const path = join(folder, 'report.txt');
    const file = openSync(path, 'w');
    const long = 'a line of a report: 2.1050 in, 40 °C\n'.repeat(50_000);
    await toFile(file)(long);
    await toFile(file)('the end');
    closeSync(file);
    expect(readFileSync(path, 'utf8')).toBe(`${long}the end`);
    const readOnly = openSync(path, 'r');
    await expect(toFile(readOnly)('more')).rejects.toBeInstanceOf(UnwritableOutput);
    closeSync(readOnly);
    rmSync(folder, { recursive: true });
  });
});
