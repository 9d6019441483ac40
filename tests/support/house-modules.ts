import { readdirSync } from 'node:fs';

const src = new URL('../../src/', import.meta.url);

/** Every file of the house; that of the command is left out, since loading it runs it. */
export const houseFiles: readonly string[] = readdirSync(src, {
  recursive: true,
  encoding: 'utf8',
}).filter((file) => file.endsWith('.ts') && file !== 'command/main.ts');

/** What every file of the house exports, by file. */
export const loadHouse = () =>
  Promise.all(
    houseFiles.map(async (file) => ({
      file,
      exports: (await import(new URL(file, src).href)) as Readonly<Record<string, unknown>>,
    })),
  );
