import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const repo = new URL('../../', import.meta.url).pathname;

/** The tarball that npm would publish, unpacked in an empty project as an install would leave it. */
export interface Packed {
  /** The tarball. */
  readonly tarball: Uint8Array;
  /** The empty project. */
  readonly project: string;
  /** The package in it. */
  readonly packageDir: string;
}

/**
 * Builds, packs and unpacks. Only the dependencies that the package declares are put beside it. A build that is
 * newer than all that it was made from, as `.ci/run` leaves one, is packed as it is: another takes most of a minute.
 */
export function pack(): Packed {
  const project = mkdtempSync(join(tmpdir(), 'crankwright-'));
  const built = isFresh() ? ['--ignore-scripts'] : [];
  const output = run('npm', ['pack', '--json', ...built, '--pack-destination', project], repo);
  const [{ filename }] = JSON.parse(output.slice(output.indexOf('[\n')));
  const tarball = join(project, filename);
  const packageDir = join(project, 'node_modules', 'crankwright');
  mkdirSync(packageDir, { recursive: true });
  run('tar', ['-xzf', tarball, '-C', packageDir, '--strip-components=1'], project);
  write(project, 'package.json', '{ "type": "module" }');
  const { dependencies } = JSON.parse(readFileSync(join(packageDir, 'package.json'), 'utf8'));
  for (const name of Object.keys(dependencies)) putBeside(project, name);
  return { tarball: readFileSync(tarball), project, packageDir };
}

/** What `npm run build` reads. A file that is taken away changes the time of its folder. */
const SOURCES = [
  'src',
  'scripts/schemas.ts',
  'scripts/types-of-require.ts',
  'tsup.config.ts',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
];

/** Whether the build is whole and newer than its sources. It ends with its schemas and begins with an empty folder. */
function isFresh(): boolean {
  if (!existsSync(join(repo, 'dist', 'work.schema.json'))) return false;
  return Math.min(...timesUnder('dist')) > Math.max(...SOURCES.flatMap(timesUnder));
}

/** When a file, or all that is in a folder and the folder itself, was last written. */
function timesUnder(path: string): readonly number[] {
  const at = join(repo, path);
  const isFolder = statSync(at).isDirectory();
  const within = isFolder ? readdirSync(at, { recursive: true, encoding: 'utf8' }) : [];
  return ['', ...within].map((name) => statSync(join(at, name)).mtimeMs);
}

/** Puts a package of the repository into the project, as if its user had installed it. */
export function putBeside(project: string, name: string): void {
  symlinkSync(join(repo, 'node_modules', name), join(project, 'node_modules', name));
}

/** Writes a file into the project and gives its path. */
export function write(project: string, name: string, text: string): string {
  const path = join(project, name);
  writeFileSync(path, text);
  return path;
}

/** Runs a program to its end and gives what it printed; throws with both outputs if it fails. */
export function run(program: string, args: readonly string[], cwd: string): string {
  try {
    return execFileSync(program, args, { cwd, encoding: 'utf8', stdio: 'pipe' });
  } catch (error) {
    const { stdout, stderr } = error as { stdout: string; stderr: string };
    throw new Error(`${program} ${args.join(' ')}\n${stdout}\n${stderr}`);
  }
}

/** The TypeScript compiler of the repository. */
export const tsc = join(repo, 'node_modules', 'typescript', 'bin', 'tsc');
