import { type FileKind, fileKind, IS_FILE, readJson } from '../reading/index.js';
import { UnreadableFile } from './unreadable-file.js';

/** The command for each kind of file. */
const RUN: Readonly<Record<FileKind, (file: string) => string>> = {
  sheet: (file) => `run crankwright report ${file}`,
  shed: (file) => `run crankwright plan ${file}, or crankwright report ${file}`,
  work: (file) => `run crankwright done SHED ${file}`,
};

/** Refuses a file of another kind, by the name it was typed with. */
export function guardFile(wanted: FileKind, file: string | undefined, text: string): void {
  const kind = fileKind(readJson(text, wanted).value);
  if (kind === undefined || kind === wanted) return;
  const [typed, name] =
    file === undefined || file === '-' ? ['standard input', 'FILE'] : [file, file];
  const what = `${typed} is ${IS_FILE[kind]}, not ${IS_FILE[wanted]}`;
  throw new UnreadableFile(`${what}: ${RUN[kind](name)}`);
}
