/** A block of a printed document. A list of blocks is printed as plain text or as Markdown. */
export type Block =
  | { readonly kind: 'page break' }
  | { readonly kind: 'heading'; readonly level: 1 | 2; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'checks' | 'list'; readonly items: readonly Entry[] }
  | {
      readonly kind: 'table';
      readonly heading: readonly string[];
      readonly rows: readonly (readonly Entry[])[];
      /** How many columns of words come before the columns of numbers. */
      readonly left: number;
    };

/** One step of the work, under a heading of its own. */
export interface TaskStep {
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** Text, or room to write in after a label. */
export type Entry = string | { readonly write: string };

/** Room to write in. */
export const BLANK = '________';

/** A cell for a measurement to be written into. */
export const blank: Entry = { write: '' };

export const heading = (level: 1 | 2, text: string): Block => ({
  kind: 'heading',
  level,
  text,
});
export const paragraph = (text: string): Block => ({ kind: 'paragraph', text });
export const caution = (text: string): Block => ({ kind: 'caution', text });
export const checks = (items: readonly Entry[]): Block => ({ kind: 'checks', items });
export const bulletList = (items: readonly Entry[]): Block => ({ kind: 'list', items });
export const table = (
  columns: readonly string[],
  rows: readonly (readonly Entry[])[],
  left: number,
): Block => ({ kind: 'table', heading: columns, rows, left });
