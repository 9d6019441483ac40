import type { Io } from './io.js';
import type { Source } from './request.js';
import { unreadable } from './unreadable-file.js';
import { WrongCommand } from './wrong-command.js';

/** The input texts of a command. */
export interface Texts {
  readonly text: string;
  readonly readings?: string;
}

/** Reads the file, or standard input, and its CSV of readings. */
export async function readSource({ file, readings }: Source, io: Io): Promise<Texts> {
  const csv = readings === undefined ? undefined : await textOf(readings, io);
  return { text: await mainText(file, io), ...(csv !== undefined && { readings: csv }) };
}

async function mainText(file: string | undefined, io: Io): Promise<string> {
  if (file !== undefined && file !== '-') return textOf(file, io);
  if (file === undefined && io.inputIsTerminal) throw new WrongCommand('no file given');
  return io.readInput();
}

async function textOf(path: string, io: Io): Promise<string> {
  try {
    return await io.readFile(path);
  } catch (error) {
    throw unreadable(path, error);
  }
}
