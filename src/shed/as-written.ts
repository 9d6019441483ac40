import { NEW_FILE, printJson } from '../reading/index.js';

/** The file that a shed was read from, as it was written. */
export interface AsWritten {
  /** The text of the shed file. Of a value that was parsed already, the text of a file that holds it. */
  readonly text: string;
  /** The text of the CSV with its readings, if they came from one. */
  readonly readings?: string;
}

/** The text of a file that holds a value. */
export const printedFile = (value: unknown): string => `${printJson(value, NEW_FILE)}\n`;

/** The files that a shed is read from. */
export const asWritten = (input: unknown, readings: string | undefined): AsWritten => ({
  text: typeof input === 'string' ? input : printedFile(JSON.parse(JSON.stringify(input))),
  ...(readings !== undefined && { readings }),
});
