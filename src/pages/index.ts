// What the other rooms use of this one. It is no entry point: users never see it.
export {
  type Block,
  blank,
  caution,
  checks,
  type Entry,
  heading,
  list,
  paragraph,
  type Step,
  table,
} from './blocks.js';
export { markdownPage } from './markdown.js';
export { numberedNotes, whoSetTheLimits } from './notes.js';
export { plainTextPage } from './plain-text.js';
export { capital, columns, section, wrap } from './text.js';
