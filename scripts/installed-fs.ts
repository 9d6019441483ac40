import fs from 'node:fs';

/** What a block reads with: whoever installed the package has its examples in node_modules; here they stand in the checkout. */
export const installedFs = {
  ...fs,
  readFileSync: (path: string, encoding: BufferEncoding) =>
    fs.readFileSync(path.replace(/^node_modules\/crankwright\//, ''), encoding),
};
