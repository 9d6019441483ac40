/** Thrown when a file cannot be read. */
export class UnreadableFile extends Error {
  override readonly name = 'UnreadableFile';
}

/** The file cannot be read, and why. */
export const unreadable = (path: string, error: unknown): UnreadableFile =>
  new UnreadableFile(`${path}: ${whyNot(error)}`);

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'it is a folder',
  EACCES: 'you have no permission to read it',
};

function whyNot(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ''] ?? `it cannot be read: ${message}`;
}
