// What the other rooms use of this one. It is not an entry point: users never see it.
export {
  type Block,
  blank,
  bulletList,
  caution,
  checks,
  type Entry,
  heading,
  paragraph,
  type TaskStep,
  table,
} from './blocks.js';
export { asMarkdown } from './markdown.js';
export { escapedMarkup } from './markup.js';
export { numberedNotes, whoSetTheLimits } from './notes.js';
export { asPlainText } from './plain-text.js';
export { capital, columns, printable, section, WIDTH, wrap } from './text.js';
