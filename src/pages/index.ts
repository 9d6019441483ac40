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
export { asHtml, type Pictures } from './html.js';
export { asMarkdown } from './markdown.js';
export { escapedMarkup } from './markup.js';
export { numberedNotes, whoSetTheLimits } from './notes.js';
export { asPlainText } from './plain-text.js';
export {
  asText,
  columns,
  type PageLine,
  type PageSection,
  section,
  task,
  wrap,
} from './sections.js';
export { capital, printable, WIDTH } from './text.js';
