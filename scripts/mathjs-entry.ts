// What the build puts into one file, `dist/bundled-mathjs.js`: a thousand files take five times as long to load.
export { all, create } from 'mathjs';
