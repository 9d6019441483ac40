import { closeSync, fsyncSync, linkSync, openSync, unlinkSync, writeFileSync } from 'node:fs';
import { link, open, realpath, rename, stat, unlink } from 'node:fs/promises';

/**
 * Writes a file as a whole or not at all: it is written beside its place first and then put there, so that a full disk
 * or a power cut leaves what was there as it was. One that is there already is replaced only with `force`.
 */
export async function writeWhole(
  path: string,
  text: string,
  { force }: { readonly force: boolean },
): Promise<void> {
  // A link to a file stays a link to it.
  const place = force ? await realpath(path).catch(() => path) : path;
  const mode = force ? (await stat(place).catch(() => undefined))?.mode : undefined;
  const beside = `${place}.${process.pid}.new`;
  try {
    const file = await open(beside, 'wx', mode);
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    // Unlike a new name, a link is refused where a file is.
    if (force) await rename(beside, place);
    else await link(beside, place);
  } finally {
    await unlink(beside).catch(() => {});
  }
}

/** Writes a new file as a whole or not at all, and is done when it returns: the prompt reads its next line then. */
export function writeNewNow(path: string, text: string): void {
  const beside = `${path}.${process.pid}.new`;
  const file = openSync(beside, 'wx');
  try {
    try {
      writeFileSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    linkSync(beside, path);
  } finally {
    unlinkSync(beside);
  }
}
