import type { Io } from './io.js';
import { codeOf, unwritable } from './output.js';
import { WrongCommand } from './wrong-command.js';

/** Writes a file. One that is there already is written over only with `force`. */
export async function writeNew(
  path: string,
  text: string,
  { force }: { readonly force: boolean },
  io: Pick<Io, 'writeFile'>,
): Promise<void> {
  try {
    await io.writeFile(path, text, { force });
  } catch (error) {
    if (codeOf(error as Error) === 'EEXIST') {
      throw isThereAlready(path);
    }
    throw unwritable(error as Error, path);
  }
}

/** Refuses a file that is there already, before the work for it is done. */
export async function refuseThere(
  { output, force = false }: { readonly output?: string; readonly force?: boolean },
  io: Pick<Io, 'readFile'>,
): Promise<void> {
  if (output === undefined || force) return;
  const isThere = await io.readFile(output).then(
    () => true,
    () => false,
  );
  if (isThere) throw isThereAlready(output);
}

const isThereAlready = (path: string): WrongCommand =>
  new WrongCommand(`${path} is there already; --force writes over it`);

/** Prints text, or writes it to the file that `--output` or `--html` names and says so. */
export async function deliver(
  text: string,
  { output, force = false }: { readonly output?: string; readonly force?: boolean },
  io: Pick<Io, 'print' | 'complain' | 'writeFile'>,
): Promise<void> {
  if (output === undefined) {
    await io.print(text);
    return;
  }
  await writeNew(output, text, { force }, io);
  io.complain(`crankwright: wrote ${output}\n`);
}
