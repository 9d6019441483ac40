import { copyFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    shelf: 'src/shelf/index.ts',
    teaching: 'src/teaching/index.ts',
  },
  format: ['esm', 'cjs'],
  dts: true,
  clean: true,
  target: 'node20',
  platform: 'neutral',
  splitting: true,
  treeshake: false,
  // The CJS build of a default import from convert-units 3 beta is not callable
  // when left external, so it is bundled, and its notice travels with it.
  noExternal: ['convert-units'],
  async onSuccess() {
    copyFileSync('node_modules/convert-units/LICENSE', 'dist/convert-units.LICENSE');
  },
});
