import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as streams from 'node:stream';
import fc from 'fast-check';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { complete } from '../../src/command/prompt/complete.js';
import { historyFile } from '../../src/command/prompt/history-file.js';
import { runText } from '../../src/command/prompt/run-text.js';
import { Session } from '../../src/command/prompt/session.js';
import { toTypeScript } from '../../src/command/prompt/to-typescript.js';
import { writeNewNow } from '../../src/command/whole-file.js';
import { programOf } from '../support/compiler.js';
import { root } from '../support/repo.js';
import { captured } from './captured.js';

const sizes = '{housingBore: 2.251 inch, journal: 2.105 inch, shellWall: 62 thou}';
const prompt = async (...lines: readonly string[]) => {
  const { out } = await captured(['repl'], { prompted: lines.map((line) => `${line}\n`) });
  return out.slice(out.indexOf('> '));
};

describe('crankwright repl', () => {
  it('answers, goes on over lines, and remembers the last answer', async () => {
    const out = await prompt(
      'c = oilClearance({housingBore: 2.251 inch,',
      'journal: 2.105 inch,',
      'shellWall: 62 thou});',
      'ans to mm',
    );
    expect(out).toContain('0.5588 mm');
  });

  it('shows results in the other units from then on', async () => {
    const out = await prompt(`c = oilClearance(${sizes})`, '.units metric', 'c', '.units feet');
    expect(out).toContain('22 thou: above');
    expect(out).toContain('0.559 mm: above');
    expect(out).toContain('.units inch or .units metric');
  });

  it('tells what a function takes', async () => {
    const out = await prompt('.about oilClearance', '.about inch', '.about oilClearence');
    expect(out).toContain('journal      a length in inch');
    expect(out).toMatch(/ type oilClearance\(\{.*journal: … inch.*\}\)/);
    expect(out).toContain('a unit of length, printed as in');
    expect(out).toContain('did you mean oilClearance?');
  });

  it('prints a mistake as a line of text, and goes on', async () => {
    const out = await prompt('1/0', 'jurnal', '2 in to mm');
    expect(out).toContain('no finite value');
    expect(out).toContain('jurnal: there is no such name');
    expect(out).toContain('50.8 mm');
    expect(out).not.toMatch(/\bat .*:\d+|Error:/);
  });

  it('saves what was typed, and the session as TypeScript', async () => {
    const written: Record<string, string> = {};
    const { out } = await captured(['repl'], {
      prompted: ['x = 2 in\n', '.save my.txt\n', '.ts my.ts\n'],
      ...withWriting(written),
    });
    expect(written['my.txt']).toBe('x = 2 in\n');
    expect(written['my.ts']).toContain('export const x = inch(2);');
    expect(out).toBe('');
  });

  it('writes before it reads the next line, and leaves a file that is there as it is', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'crankwright-'));
    const path = join(folder, 'my.txt');
    let out = '';
    const lines = [
      'x = 2 in',
      '1/0',
      `.save ${path}`,
      `.save ${path}`,
      'x = 3 in',
      `.load ${path}`,
    ];
    await captured(['repl'], {
      prompt: {
        input: streams.Readable.from([`${lines.join('\n')}\nx to mm\n`]),
        output: new streams.Writable({
          write: (chunk, _encoding, done) => {
            out += String(chunk);
            done();
          },
        }),
        readFile: (from) => readFileSync(from, 'utf8'),
        writeFile: writeNewNow,
        version: '1.2.3',
      },
    });
    expect(readFileSync(path, 'utf8')).toBe('x = 2 in\n');
    rmSync(folder, { recursive: true });
    expect(out).toContain(`written to ${path}`);
    expect(out).toContain(`${path} is there already; name another file`);
    expect(out).toContain('50.8 mm');
  });

  it('names the line at which a file that is loaded goes wrong, and keeps what was right', async () => {
    const files = {
      'my.txt': 'x = 2 in\n# the bore\ny = x +\n  1\nz = 5 in\n',
      'good.txt': 'w = 1 in;\n',
    };
    const { out } = await captured(['repl'], {
      files,
      prompted: [
        '.load my.txt\n',
        'x to mm\n',
        'z\n',
        '.load good.txt\n',
        'w\n',
        '.load none.txt\n',
        '.load\n',
      ],
    });
    const [, loaded = ''] = out.split('> ');
    expect(loaded).toBe(
      '2 in\nline 3 of my.txt: 1 has no unit: write 1 thou or 1 in\nThe lines above it were worked out; it and those below it were not.\n',
    );
    expect(out).toContain('50.8 mm');
    expect(out).toContain('z: there is no such name');
    expect(out).toContain('read from good.txt');
    expect(out).toContain('1 in');
    expect(out).toContain('none.txt: no such file');
    expect(out).toContain('name a file: .load my-engine.txt');
  });

  it('saves what was right of a file that was loaded', async () => {
    const written: Record<string, string> = {};
    const { prompt: io } = withWriting(written);
    const lines = ['.load my.txt\n', '.save again.txt\n'];
    await captured(['repl'], {
      prompt: { ...io, input: streams.Readable.from(lines), readFile: () => 'x = 2 in\n1/0\n' },
    });
    expect(written['again.txt']).toBe('x = 2 in\n');
  });

  it('keeps its history in the folder of the system', () => {
    expect(historyFile('linux', { XDG_STATE_HOME: '/s' }, '/home/a')).toBe(
      '/s/crankwright/history',
    );
    expect(historyFile('linux', {}, '/home/a')).toBe('/home/a/.local/state/crankwright/history');
    expect(historyFile('win32', { LOCALAPPDATA: 'C:\\l' }, 'C:\\a')).toBe(
      'C:\\l\\crankwright\\history',
    );
  });
});

describe('completion', () => {
  const names = ['oilClearance', 'oilClearanceSpan', 'journal'];
  it.each([
    ['oilCl', ['oilClearance', 'oilClearanceSpan']],
    ['oilClearance({', ['housingBore: ', 'journal: ', 'shellWall: ']],
    ['oilClearance({housingBore: 2.251 inch, ', ['journal: ', 'shellWall: ']],
    ['oilClearance({housingBore: 2.251 inch, j', ['journal: ']],
    ['matchShells({shells: [{name: "a", u', ['undersize: ']],
    ['judge({dimension: "len', ['"length"']],
    ['oilClearance({journal: jo', ['journal']],
    ['.un', ['.units']],
    ['.about oilClearanceS', ['oilClearanceSpan']],
  ])('of %s', (line, expected) => {
    expect(complete(line, names)[0]).toEqual(expected);
  });
});

describe('a session', () => {
  let session: Session;
  beforeAll(async () => {
    session = await Session.begin('inch');
  });

  it('as TypeScript compiles and gives the same numbers to the bit', async () => {
    const own = await Session.begin('inch');
    const text = [
      'housingBore = 2.251 inch',
      'journal = 2-1/8 in - 20 thou',
      'clearance = oilClearance({housingBore: housingBore, journal: journal, shellWall: 62 thou})',
      'clearance = clearance / 2 + 0.1 mm',
      'rise = 85 degC - 77 degF',
      'speed = 1500 rpm',
      'shelf = [{name: "20 under", undersize: 20 thou, wall: 72 thou}]',
      'best = matchShells({journal: journal, housingBore: 2.25 inch + 1 thou, shells: shelf})',
      'share = 0.3 * clearance / journal',
      'hot = dripFlow({drops: 6, time: 60 s})',
      'ans',
      'best[1].shell.name',
    ].join('\n');
    expect(runText(own, text).wrong).toBeUndefined();
    const code = toTypeScript(own);
    expect(code.match(/^\/\/ .*/gm)).toEqual([
      '// best[1].shell.name: a part of a result is not written',
    ]);
    const path = `${root}/tests/session-in-memory.ts`;
    const program = programOf([], new Map([[path, code]]));
    const wrong = ts.getPreEmitDiagnostics(program, program.getSourceFile(path) as ts.SourceFile);
    expect(wrong.map(({ messageText }) => messageText)).toEqual([]);
    const js = ts.transpile(code, {
      module: ts.ModuleKind.CommonJS,
      target: ts.ScriptTarget.ES2022,
    });
    const exports: Record<string, unknown> = {};
    const library = await import('crankwright');
    new Function('exports', 'require', js)(exports, () => library);
    const { exact } = own.loaded;
    const si = (name: string) => {
      const value = own.scope.get(name) as never;
      return exact.valueOf(value, exact.dimensionOf(value) ?? 'ratio');
    };
    expect(exports['journal']).toBe(si('journal'));
    expect(exports['clearance2']).toBe(si('clearance'));
    expect(exports['rise']).toBe(si('rise'));
    expect(exports['share']).toBe(own.scope.get('share'));
    expect(exports['best']).toEqual(own.callOf(own.scope.get('best') as object)?.result);
  });

  it('never crashes, prints no NaN and leaks no stack, whatever is typed', () => {
    const word = fc.constantFrom(
      ...[
        '2.105',
        'inch',
        'oilClearance',
        '(',
        ')',
        '{',
        '}',
        '[',
        ']',
        'journal:',
        ',',
        '+',
        '-',
        '/',
      ],
      ...['degC', '"', "'", '=', 'x', '1e308', '%', '^', 'to', ';', '0', 'undefined', 'null', ':'],
      ...['f(x)', '\\', '#', '.', '1e999', 'mm', '!', '1/8', '2-1/8', 'in', 'NaN', 'Infinity', 'i'],
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(word).map((words) => words.join(' ')),
        ),
        (text) => {
          const { done, wrong } = runText(session, text);
          const shown = done.map(({ value }) => (value === undefined ? '' : session.show(value)));
          const said = [...shown, wrong?.message ?? ''].join('\n');
          const isTyped = /NaN|Infinity|Error|\bat\b/.test(text);
          if (!isTyped) expect(said).not.toMatch(/\bNaN\b|Infinity|\bError\b|^\s+at /m);
        },
      ),
      { numRuns: 150 },
    );
  });
});

/** A prompt that writes files into an object. */
function withWriting(written: Record<string, string>) {
  const { Readable, Writable } = streams;
  return {
    prompt: {
      input: Readable.from(['x = 2 in\n', '.save my.txt\n', '.ts my.ts\n']),
      output: new Writable({ write: (_chunk, _encoding, done) => done() }),
      readFile: () => '',
      writeFile: async (path: string, text: string) => {
        written[path] = text;
      },
      version: '1.2.3',
    },
  };
}
